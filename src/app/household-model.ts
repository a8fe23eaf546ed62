/**
 * The household as the models see it on one day: each strain's life, and the temperature of each place
 * from the first living cup to the end of the horizon. Built once for a question; everything later
 * (evidence, need, curves, plans) reads it.
 */
import { heldDailySurvival, type PaceTable, paceTable, scaledStrain, type StrainLife } from '../biology/index.ts';
import { hourlyTemperatureC, type PlaceTemperature } from '../climate/index.ts';
import { type Day, dayFromNumber, type DayNumber, dayNumber } from '../foundation/index.ts';
import type { ContainerFacts, CultureFacts, Facts, PlaceFacts, StrainFacts } from '../logbook/index.ts';
import { strainLife } from '../reference/index.ts';
import { cupWarmth } from './temperature/cup-warmth.ts';

export interface HouseholdModel {
  facts: Facts;
  today: DayNumber;
  /** Day number of index 0 of every temperature series and pace table. */
  firstDay: DayNumber;
  /** Length of the series, days. */
  seriesDays: number;
  /** Every place is that much warmer from today on than is expected: 0 save for a what-if. */
  warmerFromTodayC: number;
  strains: Map<string, StrainModel>;
  places: Map<string, PlaceFacts>;
  hourlyByPlace: Map<string, Float64Array>;
  paces: Map<string, PaceTable>;
}

export interface StrainModel {
  facts: StrainFacts;
  life: StrainLife;
  /** Share of the flies held in a cup at the strain's usual place that are alive a day later. */
  adultDailySurvival: number;
}

/** Cups older than this teach nothing that newer ones do not, and are left out. */
const memoryDays = 400;
/** Series go on past the horizon by the longest life of a cup. */
const longestCupDays = 100;

/**
 * @param horizonDays days ahead of `on` in which cups may be started.
 * @param since the first day on which a cup may have been started, when no culture in the facts says it.
 * @param warmerFromTodayC what every place is warmer by, from today on, than is expected.
 */
export function householdModel(
  facts: Facts,
  on: Day,
  horizonDays: number,
  since: Day = on,
  warmerFromTodayC = 0,
): HouseholdModel {
  const today = dayNumber(on);
  const starts = facts.cultures.map((c) => dayNumber(c.startedOn)).filter((d) => d >= today - memoryDays);
  const firstDay = Math.min(dayNumber(since), ...starts) - 1;
  const model: HouseholdModel = {
    facts,
    today,
    firstDay,
    seriesDays: today - firstDay + horizonDays + longestCupDays,
    warmerFromTodayC,
    strains: new Map(),
    places: new Map(facts.places.map((p) => [p.place, p])),
    hourlyByPlace: new Map(),
    paces: new Map(),
  };
  for (const strain of facts.strains) {
    const base = strainLife(strain.base);
    if (!base) continue;
    const { paceFactor, yieldFactor, massFactor } = strain;
    const life = scaledStrain(base, { paceFactor, yieldFactor, massFactor });
    const adultDailySurvival = heldDailySurvival(life, meanAhead(model, usualPlace(model, strain.strain)));
    model.strains.set(strain.strain, { facts: strain, life, adultDailySurvival });
  }
  return model;
}

/** Temperature of a cup at that place, every hour of the series. An unknown place is taken to be 23 C. */
export function hourlyAt(model: HouseholdModel, place: string): Float64Array {
  let hourly = model.hourlyByPlace.get(place);
  if (!hourly) {
    hourly = hourlyTemperatureC(placeTemperature(model, place));
    const fromHour = 24 * (model.today - model.firstDay);
    for (let h = fromHour; h < hourly.length; h++) hourly[h] = (hourly[h] as number) + model.warmerFromTodayC;
    model.hourlyByPlace.set(place, hourly);
  }
  return hourly;
}

/** A place over the model's series, in the climate's terms: readings up to today. */
export function placeTemperature(model: HouseholdModel, place: string): PlaceTemperature {
  const facts = model.places.get(place);
  return {
    fromDay: model.firstDay,
    days: model.seriesDays,
    expected: facts?.expected ?? { allYearC: 23 },
    hemisphere: model.facts.household.hemisphere,
    readings: (facts?.readings ?? [])
      .map((r) => ({ day: dayNumber(r.on), meanC: r.meanC, minC: r.minC, maxC: r.maxC }))
      .filter((r) => r.day <= model.today),
    cupOffsetC: facts ? cupWarmth(facts, dayFromNumber(model.today)).meanC : 0,
  };
}

/** Mean temperature of the coming month at a place, C. */
function meanAhead(model: HouseholdModel, place: string): number {
  const from = 24 * (model.today - model.firstDay);
  const month = hourlyAt(model, place).subarray(from, from + 24 * 30);
  return month.reduce((sum, c) => sum + c, 0) / month.length;
}

/** Pace of a strain at one place, or along the places that a cup was moved through. */
export function paceOf(model: HouseholdModel, strain: StrainModel, stays: CultureFacts['places']): PaceTable {
  const key = `${strain.facts.strain}|${stays.map((s) => `${s.from}@${s.place}`).join('|')}`;
  const simple = stays.length <= 1 ? `${strain.facts.strain}|${stays[0]?.place ?? ''}` : key;
  let pace = model.paces.get(simple);
  if (!pace) {
    pace = paceTable(strain.life, hourlyAlong(model, stays));
    model.paces.set(simple, pace);
  }
  return pace;
}

/** Temperature of a cup along its stays, every hour of the series. */
export function hourlyAlong(model: HouseholdModel, stays: CultureFacts['places']): Float64Array {
  const first = hourlyAt(model, stays[0]?.place ?? '');
  if (stays.length <= 1) return first;
  const hourly = first.slice();
  for (const stay of stays.slice(1)) {
    const fromHour = Math.max(0, 24 * (dayNumber(stay.from) - model.firstDay));
    hourly.set(hourlyAt(model, stay.place).subarray(fromHour), fromHour);
  }
  return hourly;
}

/** Where new cups of a strain go: where most of its living cups stand, of equals where the latest does; or the first place. */
export function usualPlace(model: HouseholdModel, strain: string): string {
  const cultures = byStart(model.facts, strain);
  const living = cultures.filter((c) => c.ended === null);
  const counts = new Map<string, number>();
  let usual: string | undefined;
  for (const culture of living.length > 0 ? living : cultures.slice(-1)) {
    const place = culture.places.at(-1)?.place ?? '';
    counts.set(place, (counts.get(place) ?? 0) + 1);
    if ((counts.get(place) ?? 0) >= (counts.get(usual ?? '') ?? 0)) usual = place;
  }
  return usual ?? model.facts.places[0]?.place ?? '';
}

/** The cup that new cultures are started in. */
export function usualContainer(facts: Facts, strain: string): ContainerFacts {
  const used = byStart(facts, strain).findLast((c) => c.container !== null)?.container;
  return (
    facts.containers.find((c) => c.container === used) ??
    facts.containers[0] ?? {
      container: 'cup',
      name: '946 ml cup',
      volumeMl: 946,
      mediumMassG: 150,
      surfaceCm2: 85,
      founders: 50,
    }
  );
}

/** A strain's cultures, the latest started last. */
function byStart(facts: Facts, strain: string): CultureFacts[] {
  return facts.cultures
    .filter((c) => c.strain === strain)
    .sort((a, b) => dayNumber(a.startedOn) - dayNumber(b.startedOn));
}
