/** Step 3: the household, its places with their readings, strains, containers, recipes and batches. */
import type { Day } from '../../foundation/index.ts';
import { containerDefaults, homePlace, householdDefaults, publishedStrain, strainDefaults } from './defaults.ts';
import { overridden, type ReportOf, type Reports, sortedBy } from './draft-facts.ts';
import type {
  BatchFacts,
  ContainerFacts,
  HouseholdFacts,
  LoggerFacts,
  PlaceFacts,
  RecipeFacts,
  StrainFacts,
} from './facts.ts';

export function householdFacts(reports: Reports): HouseholdFacts {
  let household = householdDefaults();
  for (const { purchase, weights, backup, leastFounders, ...plain } of reports.of('household')) {
    household = {
      ...overridden(household, plain),
      purchase: overridden(household.purchase, purchase ?? {}),
      weights: overridden(household.weights, weights ?? {}),
      ...(leastFounders === undefined ? {} : { leastFounders }),
      ...(backup ? { backup: overridden(household.backup ?? noBackup, backup) } : {}),
    };
  }
  return household;
}

const noBackup = { cupsPerStrain: 0, inTwoPlaces: false };

/** At least one place: the first is where a cup stands when nothing else is said. */
export function placeFacts(reports: Reports): PlaceFacts[] {
  const places = new Map<string, PlaceFacts>();
  for (const entry of reports.of('place')) {
    const before = places.get(entry.place) ?? { ...homePlace(), place: entry.place, name: entry.place };
    places.set(entry.place, {
      ...overridden(before, { name: entry.name, cupOffsetC: entry.cupOffsetC }),
      expected: expectedOf(entry) ?? before.expected,
      ...(entry.limitsC ? { limitsC: entry.limitsC } : {}),
    });
  }
  if (places.size === 0) places.set('home', homePlace());
  for (const [place, readings] of readingsByPlace(reports)) {
    const facts = places.get(place);
    if (facts) facts.readings = sortedBy(readings.values(), (r) => r.on).map(readingOf);
    else for (const { entries } of readings.values()) for (const e of entries) unknownPlace(reports, e);
  }
  addCupPairs(reports, places);
  addHumidity(reports, places);
  return [...places.values()];
}

/** False of an entry that has a cup's warmth alone. */
function hasRoomReading({ meanC, minC }: ReportOf<'temperature'>): boolean {
  return meanC !== undefined || minC !== undefined;
}

function addHumidity(reports: Reports, places: Map<string, PlaceFacts>): void {
  for (const entry of reports.of('temperature')) {
    const { on, humidityPercent: percent } = entry;
    if (percent === undefined) continue;
    const facts = places.get(entry.place);
    if (facts) facts.humidity = [...(facts.humidity ?? []), { on, percent }].toSorted((a, b) => (a.on < b.on ? -1 : 1));
    else if (!hasRoomReading(entry) && entry.cupC === undefined) unknownPlace(reports, entry);
  }
}

function addCupPairs(reports: Reports, places: Map<string, PlaceFacts>): void {
  for (const entry of reports.of('temperature')) {
    const { on, cupC, shelfC } = entry;
    if (cupC === undefined || shelfC === undefined) continue;
    const facts = places.get(entry.place);
    if (!facts) {
      if (!hasRoomReading(entry)) unknownPlace(reports, entry);
      continue;
    }
    facts.cupPairs = [...(facts.cupPairs ?? []), { on, cupC, shelfC }];
  }
}

function expectedOf(entry: ReportOf<'place'>): PlaceFacts['expected'] | null {
  if (entry.temperatureC !== undefined) return { allYearC: entry.temperatureC };
  const s = entry.seasonsC;
  return s ? { winterC: s.winter, springC: s.spring, summerC: s.summer, autumnC: s.autumn } : null;
}

function unknownPlace(reports: Reports, entry: ReportOf<'temperature'>): void {
  reports.unknown(entry, 'place', entry.place, 'place');
}

interface DayReadings {
  on: Day;
  entries: ReportOf<'temperature'>[];
}

function readingsByPlace(reports: Reports): Map<string, Map<Day, DayReadings>> {
  const byPlace = new Map<string, Map<Day, DayReadings>>();
  for (const entry of reports.of('temperature')) {
    const days = byPlace.get(entry.place) ?? new Map<Day, DayReadings>();
    byPlace.set(entry.place, days);
    if (!hasRoomReading(entry)) continue;
    const day = days.get(entry.on) ?? { on: entry.on, entries: [] };
    days.set(entry.on, day);
    day.entries.push(entry);
  }
  return byPlace;
}

/** Several readings on one day: the mean of their means, the least minimum, the greatest maximum. */
function readingOf({ on, entries }: DayReadings): PlaceFacts['readings'][number] {
  const means = entries.map((e) => e.meanC ?? ((e.minC as number) + (e.maxC as number)) / 2);
  const lows = entries.flatMap((e) => e.minC ?? []);
  const highs = entries.flatMap((e) => e.maxC ?? []);
  return {
    on,
    meanC: means.reduce((sum, c) => sum + c, 0) / means.length,
    minC: lows.length > 0 ? lows.reduce((a, b) => Math.min(a, b)) : null,
    maxC: highs.length > 0 ? highs.reduce((a, b) => Math.max(a, b)) : null,
  };
}

/** Strains with an entry, and published ones that a cup, a group or an order names without one. */
export function strainFacts(reports: Reports): StrainFacts[] {
  const strains = new Map<string, StrainFacts>();
  for (const entry of reports.of('strain')) {
    const { strain, base } = entry;
    const before = strains.get(strain) ?? { strain, name: strain, base, ...strainDefaults };
    strains.set(strain, overridden(before, entry));
  }
  for (const kind of ['started', 'bought', 'group', 'order', 'purchase'] as const) {
    for (const { strain } of reports.of(kind)) {
      const published = strains.has(strain) ? null : publishedStrain(strain);
      if (published) strains.set(strain, published);
    }
  }
  return sortedBy(strains.values(), (s) => s.strain);
}

export function containerFacts(reports: Reports): ContainerFacts[] {
  const containers = new Map<string, ContainerFacts>();
  for (const entry of reports.of('container')) {
    const { container } = entry;
    const before = containers.get(container) ?? { container, name: container, ...containerDefaults };
    containers.set(container, overridden(before, entry));
  }
  return sortedBy(containers.values(), (c) => c.container);
}

export function recipeFacts(reports: Reports): RecipeFacts[] {
  const recipes = new Map<string, RecipeFacts>();
  for (const entry of reports.of('recipe')) {
    const { recipe } = entry;
    const before = recipes.get(recipe) ?? { recipe, name: recipe, ingredients: [], waterMl: 0 };
    recipes.set(recipe, overridden(before, entry));
  }
  return sortedBy(recipes.values(), (r) => r.recipe);
}

export function batchFacts(reports: Reports): BatchFacts[] {
  const batches = new Map<string, BatchFacts>();
  for (const entry of reports.of('batch')) {
    const { batch, on, recipe, massG, goodUntil } = entry;
    const before: BatchFacts = batches.get(batch) ?? { batch, on, recipe: null, massG: 0, goodUntil: null };
    batches.set(batch, overridden(before, { recipe, massG, goodUntil }));
  }
  return sortedBy(batches.values(), (b) => b.batch);
}

const unknownLogger = { time: null, clock: null, temperature: null, timeOrder: null, unit: null, timeZone: null };

/** A later entry says all that is to be said of the logger's files; nothing of an earlier one is kept. */
export function loggerFacts(reports: Reports): LoggerFacts[] {
  const loggers = new Map<string, LoggerFacts>();
  for (const entry of reports.of('logger')) {
    const { logger, headings } = entry;
    loggers.set(logger, overridden<LoggerFacts>({ logger, headings, place: null, ...unknownLogger }, entry));
  }
  return sortedBy(loggers.values(), (l) => l.logger);
}
