/**
 * How heavy the household's flies are now: from pots that were counted and weighed; else the books' ordinary
 * fly, lighter or heavier as the living cups are more or less crowded than a usual one.
 */
import { type Range, rangeOf } from '../../animals/index.ts';
import { flyMassMg, ordinaryFounderAge } from '../../biology/index.ts';
import { type Day, dayFromNumber, daysBetween } from '../../foundation/index.ts';
import type { Facts } from '../../logbook/index.ts';
import { strainLife } from '../../reference/index.ts';
import {
  type HouseholdModel,
  householdModel,
  type StrainModel,
  usualContainer,
  usualPlace,
} from '../household-model.ts';
import { nominalAt, type NominalCup, nominalCup } from '../nominal-cup.ts';

export interface FlySizeNow {
  nowMg: Range;
  /** Of the fly that a ration is written in: the books' for an ordinary cup. */
  ordinaryMg: number;
  from: 'weighed' | 'crowding' | 'books';
}

/** Weighings older than this say little of the flies that come now. */
const freshDays = 60;
/** A mean from own pots is trusted to a tenth either way: counts and small scales err so. */
const ownDoubt = 0.1;
/** Crowding of a full cup, in multiples of the medium's capacity. */
const fullCup = 2;
/** Warmth that the books' ordinary fly grew up in, C. */
const ordinaryRearingC = 23;
/** Flies that come in these days around today are what animals are fed. */
const window = { before: 7, after: 14 };
const mostCups = 40;

/** Null for a strain that neither household nor books know. */
export function flySizeNow(facts: Facts, strain: string, on: Day, rearedC = ordinaryRearingC): FlySizeNow | null {
  const known = facts.strains.find((one) => one.strain === strain);
  const life = strainLife(known?.base ?? strain);
  if (!life) return null;
  const books = (temperatureC: number) =>
    rangeOf(flyMassMg(life, 'mixed', temperatureC, fullCup), flyMassMg(life, 'mixed', temperatureC, 0));
  const ordinaryMg = books(ordinaryRearingC).middle;
  const own = ownMeanMg(facts, strain, on);
  if (own !== null) return { nowMg: rangeOf(own * (1 - ownDoubt), own * (1 + ownDoubt)), ordinaryMg, from: 'weighed' };
  const crowding = rearedC === ordinaryRearingC ? crowdingRatio(facts, strain, on) : null;
  const factor = (known?.massFactor ?? 1) * (crowding ?? 1);
  const { low, high } = books(rearedC);
  return { nowMg: rangeOf(factor * low, factor * high), ordinaryMg, from: crowding === null ? 'books' : 'crowding' };
}

function ownMeanMg(facts: Facts, strain: string, on: Day): number | null {
  let flies = 0;
  let mg = 0;
  for (const culture of facts.cultures) {
    if (culture.strain !== strain) continue;
    for (const harvest of culture.harvests) {
      const age = daysBetween(harvest.on, on);
      if (harvest.flies === null || harvest.weightMg === null || age < 0 || age > freshDays) continue;
      flies += harvest.flies;
      mg += harvest.weightMg;
    }
  }
  return flies > 0 && mg > 0 ? mg / flies : null;
}

/** Mean mass of the flies that the living cups give about now, over that of a usual cup's; null without cups. */
function crowdingRatio(facts: Facts, strain: string, on: Day): number | null {
  const living = facts.cultures
    .filter((cup) => cup.strain === strain && cup.on <= on && (cup.ended === null || cup.ended.on > on))
    .filter((cup) => daysBetween(cup.startedOn, on) <= 60)
    .sort((a, b) => (a.startedOn < b.startedOn ? -1 : 1))
    .slice(-mostCups);
  if (living.length === 0) return null;
  const model = householdModel({ ...facts, cultures: living }, on, window.after);
  const known = model.strains.get(strain);
  if (!known) return null;
  const sum = { flies: 0, mg: 0 };
  for (const cup of living) addFlies(sum, nominalCup(model, known, cup), daysBetween(cup.startedOn, on));
  const usual = usualMg(model, facts, known);
  return sum.flies > 0 && usual > 0 ? beyondOrdinary(sum.mg / sum.flies / usual) : null;
}

/** Cups differ by so much from week to week without being crowded; only what goes beyond changes a ration. */
const ordinaryDifference = 0.1;

function beyondOrdinary(ratio: number): number {
  if (ratio > 1 + ordinaryDifference) return ratio / (1 + ordinaryDifference);
  return ratio < 1 - ordinaryDifference ? ratio / (1 - ordinaryDifference) : 1;
}

function addFlies(sum: { flies: number; mg: number }, { course }: NominalCup, age: number): void {
  for (let i = Math.max(0, age - window.before); i <= age + window.after; i++) {
    addDay(sum, course.emerged[i] ?? 0, course.emergedMassMg[i] ?? Number.NaN);
  }
}

/** Days without a fly have no mass. */
function addDay(sum: { flies: number; mg: number }, flies: number, massMg: number): void {
  if (!(flies > 0 && massMg > 0)) return;
  sum.flies += flies;
  sum.mg += flies * massMg;
}

/** Mean mass of all flies of a cup that is started today as usual. */
function usualMg(model: HouseholdModel, facts: Facts, strain: StrainModel): number {
  const key = strain.facts.strain;
  const stays = [{ from: facts.lastEntryOn ?? dayFromNumber(model.today), place: usualPlace(model, key) }];
  const conditions = { ...usualContainer(facts, key), founderAgeDays: ordinaryFounderAge(strain.life) };
  const { course } = nominalAt(model, strain, stays, model.today, conditions);
  const sum = { flies: 0, mg: 0 };
  course.emerged.forEach((flies, i) => addDay(sum, flies, course.emergedMassMg[i] ?? Number.NaN));
  return sum.flies > 0 ? sum.mg / sum.flies : 0;
}
