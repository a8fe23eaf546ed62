/** The stages that a group will pass through by the books: when each may begin, and what it takes then. */
import { type Stage, stagePlan } from '../../animals/index.ts';
import { type DayNumber, dayNumber, daysBetween } from '../../foundation/index.ts';
import type { Facts, GroupFacts, GroupPeriod } from '../../logbook/index.ts';
import type { PublishedRation } from '../../reference/index.ts';
import { kindOf, stageQ10, stageTemperatureC, usualFlies } from './animal-kinds.ts';

export interface StageToCome {
  /** Key of the kind, or `larger-prey`. */
  animal: string;
  name: string;
  /** By the books, from the day on which the present stage began. */
  books: { earliest: DayNumber; middle: DayNumber; latest: DayNumber };
  /** The same, knowing that it has not begun by today. */
  begins: { earliest: DayNumber; middle: DayNumber; latest: DayNumber };
  /** Null for larger prey. */
  row: PublishedRation | null;
  /** Strain of the household that fits, and flies of ordinary size for one animal at a feeding. */
  strain: string;
  fliesPerFeeding: number;
}

/** A stage whose time is over by the books may begin on any day of the coming week. */
const dueWithinDays = 7;
/** Larger prey is planned for only when the animals were weighed lately, and weigh enough. */
const measured = { withinDays: 45, shareOfMass: 0.7 };

/**
 * Stages after the one of `period`, in order; empty for a kind without. The last may be larger prey, which
 * `takesLargerPrey` says whether to count on.
 * @param from no stage of the list has begun before this day.
 */
export function stagesToCome(facts: Facts, group: GroupFacts, period: GroupPeriod, from: DayNumber): StageToCome[] {
  const now = kindOf(period.animal);
  if (!now || now.next === '' || period.count === 0) return [];
  const chain = chainFrom(now);
  const begun = stageBegan(group, period);
  const spread = period.arrival ? dayNumber(period.arrival.latest) - dayNumber(period.arrival.earliest) : 0;
  const plan = stagePlan({
    stages: chain.map(stageOf),
    onDay: period.arrival ? dayNumber(period.arrival.earliest) : begun,
    daysInStage: 0,
    count: 1,
    degreesWarmer: (period.temperatureC ?? stageTemperatureC) - stageTemperatureC,
    q10: stageQ10,
    moultPause: null,
  });
  return plan.slice(1).map(({ begins }, i) => {
    const books = {
      earliest: begins.earliest,
      middle: begins.middle + Math.round(spread / 2),
      latest: begins.latest + spread,
    };
    const link = chain[i + 1] as Link;
    return { ...link, books, begins: notBefore(books, from), ...fedThen(facts, period, now, link.row) };
  });
}

function notBefore(books: StageToCome['books'], from: DayNumber): StageToCome['begins'] {
  const earliest = Math.max(books.earliest, from + 1);
  const latest = books.latest <= from ? from + dueWithinDays : Math.max(books.latest, earliest);
  return { earliest, middle: Math.round((earliest + latest) / 2), latest };
}

/** First day of the group as the kind that it is in `period`. */
export function stageBegan({ periods }: GroupFacts, period: GroupPeriod): DayNumber {
  let began = period.from;
  for (const one of periods.filter(({ from }) => from <= period.from).reverse()) {
    if (one.animal !== period.animal || one.count === 0 || (one.arrival && one !== period)) break;
    began = one.from;
  }
  return dayNumber(began);
}

/** The keeper's own ration goes on in proportion: who gives half of what the books say goes on doing so. */
function fedThen(facts: Facts, period: GroupPeriod, now: PublishedRation, then: PublishedRation | null) {
  if (!then) return { strain: period.strain, fliesPerFeeding: 0 };
  const strain = strainFor(facts, period.strain, then.fly);
  const ownShare = period.fliesPerFeeding / usualFlies(now, speciesOf(facts, period.strain)).middle;
  return { strain, fliesPerFeeding: ownShare * usualFlies(then, speciesOf(facts, strain)).middle };
}

export function speciesOf(facts: Facts, strain: string): string {
  return facts.strains.find((one) => one.strain === strain)?.base ?? strain;
}

/** The present strain where it is of that species, else one that the household keeps; the present one without. */
function strainFor(facts: Facts, present: string, species: string): string {
  if (speciesOf(facts, present) === species) return present;
  const kept = new Set(facts.cultures.filter(({ ended }) => ended === null).map(({ strain }) => strain));
  return facts.strains.find((one) => one.base === species && kept.has(one.strain))?.strain ?? present;
}

interface Link {
  animal: string;
  name: string;
  row: PublishedRation | null;
}

/** The stage and those after it; one without a known length is the last. */
function chainFrom(first: PublishedRation): Link[] {
  const chain: Link[] = [];
  let row: PublishedRation | null = first;
  while (row) {
    chain.push({ animal: row.animal, name: row.name, row });
    const { next, stageDaysLow }: PublishedRation = row;
    if (next === '' || stageDaysLow === null) break;
    if (next === 'larger-prey') chain.push({ animal: next, name: 'Larger prey', row: null });
    row = kindOf(next);
  }
  return chain;
}

function stageOf({ animal, row }: Link): Stage {
  return {
    stage: animal,
    daysLow: row?.stageDaysLow ?? null,
    daysHigh: row?.stageDaysHigh ?? null,
    survival: 1,
    fliesPerFeeding: row?.fliesHigh ?? 0,
    strain: row?.fly ?? '',
    feedingWeekdays: [],
  };
}

/** Weighed lately, and heavy enough for larger prey: only then is the need for flies let go. */
export function takesLargerPrey(facts: Facts, { group }: GroupFacts, row: PublishedRation, on: string): boolean {
  const last = facts.weighings.findLast((one) => one.group === group && one.massG !== null && one.on <= on);
  if (!last || last.massG === null) return false;
  const isFresh = daysBetween(last.on, on as typeof last.on) <= measured.withinDays;
  return isFresh && last.massG >= measured.shareOfMass * row.massHighG;
}
