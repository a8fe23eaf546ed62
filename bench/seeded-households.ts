/**
 * Households by seed, as logbooks: one or two strains, a room, animals, two to four weekdays with time,
 * a shelf of cups started on those weekdays at the pace that the need asks, some with a hatch to come.
 */
import {
  addDays,
  type Day,
  day,
  type RandomStream,
  randomStream,
  type Weekday,
  weekdayOf,
  weekdays,
} from '../src/foundation/index.ts';
import type { PlanningProblem } from '../src/planner/index.ts';
import { type Entry, type EntryDraft, type Facts, fold } from '../src/logbook/index.ts';

export const benchDay = day('2026-11-25');

interface StrainPlan {
  strain: string;
  base: 'melanogaster' | 'hydei';
  need: number;
  fliesPerCup: number;
  cupDays: number;
}

/** The facts of household `seed` on `benchDay`. */
export function seededFacts(seed: number): Facts {
  return factsOf(seededDrafts(seed));
}

/** Facts from drafts, with ids and times made up in order. */
export function factsOf(drafts: EntryDraft[]): Facts {
  const entries = drafts.map((draft, i) => ({
    ...draft,
    id: `0190a000-0000-7000-8000-${String(i).padStart(12, '0')}`,
    recordedAt: `${draft.on}T20:00:00Z`,
    by: 'bench',
  })) as Entry[];
  return fold(entries);
}

export function seededDrafts(seed: number): EntryDraft[] {
  const stream = randomStream(seed, 'household');
  const began = addDays(benchDay, -70);
  const workWeekdays = someWeekdays(stream);
  const strains = someStrains(stream);
  return [
    ...settings(stream, began, workWeekdays),
    ...strains.flatMap((plan) => strainEntries(stream, plan, began)),
    ...strains.flatMap((plan) => shelf(stream, plan, workWeekdays)),
  ] as EntryDraft[];
}

function someWeekdays(stream: RandomStream): Weekday[] {
  const wanted = 2 + stream.below(3);
  const chosen = new Set<Weekday>();
  while (chosen.size < wanted) chosen.add(weekdays[stream.below(7)] as Weekday);
  return weekdays.filter((w) => chosen.has(w));
}

function someStrains(stream: RandomStream): StrainPlan[] {
  const logUniform = (low: number, high: number) => Math.round(low * (high / low) ** stream.uniform());
  const quick: StrainPlan = {
    strain: 'quick',
    base: 'melanogaster',
    need: logUniform(30, 400),
    fliesPerCup: 900,
    cupDays: 30,
  };
  const slow: StrainPlan = { strain: 'slow', base: 'hydei', need: logUniform(20, 120), fliesPerCup: 380, cupDays: 45 };
  const kind = stream.uniform();
  return kind < 0.45 ? [quick] : kind < 0.6 ? [slow] : [quick, slow];
}

function settings(stream: RandomStream, began: Day, workWeekdays: Weekday[]) {
  const temperatureC = Math.round((21.5 + 3.5 * stream.uniform()) * 10) / 10;
  return [
    {
      kind: 'household',
      on: began,
      name: 'Bench',
      workWeekdays,
      serviceLevel: 0.99,
      maxCupsPerSession: 14,
      shelfCups: 120,
      purchase: { leadDays: 3, deliveryWeekdays: ['wed', 'fri'], quarantineDays: 14, pricePerCup: 8 },
      weights: { perCup: 1.5, perSession: 1.5, perBoughtCup: 8 },
      currency: 'EUR',
      hemisphere: 'north',
      timeZone: 'Europe/Paris',
    },
    { kind: 'place', on: began, place: 'shelf', name: 'Shelf', temperatureC },
    {
      kind: 'container',
      on: began,
      container: 'cup',
      name: 'Cup',
      volumeMl: 900,
      mediumMassG: 150,
      surfaceCm2: 82,
      founders: 50,
    },
  ];
}

function strainEntries(stream: RandomStream, plan: StrainPlan, began: Day) {
  const { strain, base, need } = plan;
  const animals = Math.max(1, Math.round(need / 12));
  const group = { kind: 'group', on: began, strain, fliesPerFeeding: need / animals, canWaitDays: 1 };
  const steady = { ...group, group: `${strain}-eaters`, name: `Eaters of ${strain}`, count: animals, from: began };
  const hatch = {
    ...group,
    group: `${strain}-hatch`,
    name: `A hatch for ${strain}`,
    count: Math.max(1, Math.round(animals * (0.3 + 0.5 * stream.uniform()))),
    from: addDays(benchDay, 45 + stream.below(40)),
    until: addDays(benchDay, 120 + stream.below(40)),
  };
  const strainEntry = { kind: 'strain', on: began, strain, name: strain, base };
  return stream.uniform() < 0.4 ? [strainEntry, steady, hatch] : [strainEntry, steady];
}

/** Cups of the last weeks, at the pace at which a household that is fed safely runs. */
function shelf(stream: RandomStream, plan: StrainPlan, workWeekdays: Weekday[]) {
  const perSession = (plan.need * 7 * (plan.base === 'hydei' ? 2 : 1.7)) / plan.fliesPerCup / workWeekdays.length;
  const entries: object[] = [];
  let owed = stream.uniform();
  for (let ago = plan.cupDays; ago >= 1; ago--) {
    const on = addDays(benchDay, -ago);
    if (!workWeekdays.includes(weekdayOf(on))) continue;
    for (owed += perSession; owed >= 1; owed--) {
      const culture = `${plan.strain}-${entries.length + 1}`;
      const { strain } = plan;
      entries.push({
        kind: 'started',
        on,
        culture,
        label: culture,
        strain,
        place: 'shelf',
        container: 'cup',
        founders: 50,
      });
    }
  }
  return entries;
}

/**
 * The same problem for a keeper whose records have taught the household's yield and pace: their
 * remaining spread is two fifths of that before any record.
 */
export function afterRecords(problem: PlanningProblem): PlanningProblem {
  const strains = problem.strains.map((strain) => ({
    ...strain,
    existing: strain.existing.map((cup) => ({
      ...cup,
      draws: { ...cup.draws, logPace: drawnIn(cup.draws.logPace, 0.6), logYield: drawnIn(cup.draws.logYield, 0.8) },
    })),
    uncertainty: {
      ...strain.uncertainty,
      yieldLogSd: { ...strain.uncertainty.yieldLogSd, cup: 0.26 },
      householdDraws: {
        logYield: drawnIn(strain.uncertainty.householdDraws.logYield, 0.4),
        logPace: drawnIn(strain.uncertainty.householdDraws.logPace, 0.4),
      },
    },
  }));
  return { ...problem, strains };
}

function drawnIn(draws: Float64Array, factor: number): Float64Array {
  const mean = draws.reduce((a, b) => a + b, 0) / Math.max(1, draws.length);
  return draws.map((x) => mean + factor * (x - mean));
}
