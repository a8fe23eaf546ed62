/** What the logbook shows of each cup, in learning's terms. */
import { dayNumber } from '../foundation/index.ts';
import type { CultureFacts, EndReason, SeenStage } from '../logbook/index.ts';
import { type Beliefs, type CupEvidence, type CupLook, learn, ordinaryPrior, TableMemory } from '../learning/index.ts';
import { cupSigns } from './cup-signs.ts';
import { type HouseholdModel, type StrainModel, usualPlace } from './household-model.ts';
import { failingAges } from './failure-habits.ts';
import { conditionsOf, nominalCup } from './nominal-cup.ts';
import type { CupHistory } from './cup-history.ts';
import { addTakes } from './takes.ts';

/** Cups of each strain that the log still remembers, oldest first, with their takes. */
export type Histories = Map<string, CupHistory[]>;

export function cupHistories(model: HouseholdModel): Histories {
  const histories: Histories = new Map();
  for (const [key, strain] of model.strains) {
    const cups = model.facts.cultures
      .filter((c) => c.strain === key && dayNumber(c.startedOn) > model.firstDay && dayNumber(c.on) <= model.today)
      .sort((a, b) => (a.startedOn === b.startedOn ? compare(a.culture, b.culture) : compare(a.startedOn, b.startedOn)))
      .map((culture) => history(model, strain, culture));
    addTakes(model, strain, cups);
    histories.set(key, cups);
  }
  return histories;
}

function history(model: HouseholdModel, strain: StrainModel, culture: CultureFacts): CupHistory {
  const ended = culture.ended && dayNumber(culture.ended.on) <= model.today ? culture.ended : null;
  const nominal = nominalCup(model, strain, culture);
  const start = dayNumber(culture.startedOn);
  const conditions = conditionsOf(model, strain, culture);
  return {
    culture,
    nominal,
    failedBefore: failingAges(model, strain, culture.places, start, conditions, nominal.dates.spent),
    start,
    end: ended ? dayNumber(ended.on) : null,
    takes: [],
  };
}

/** Tables of cups whose notes have not changed since the last question; they change no answer. */
export const keptTables = new TableMemory();

export function believe(
  model: HouseholdModel,
  histories: Histories,
  seed: number,
  draws: number,
  memory: TableMemory = keptTables,
): Beliefs {
  const generationOf = generations(model);
  const strains = [...histories].map(([strain, cups]) => ({
    strain,
    adultDailySurvival: (model.strains.get(strain) as StrainModel).adultDailySurvival,
    cups: cups.map((cup) => cupEvidence(model, cup, generationOf.get(cup.culture.culture))),
  }));
  return learn({ seed, draws, prior: ordinaryPrior, strains }, memory);
}

/** One cup as learning sees it. */
export function cupEvidence(model: HouseholdModel, cup: CupHistory, generation: number | undefined): CupEvidence {
  const { culture, nominal, start } = cup;
  return {
    id: culture.culture,
    ageDays: (cup.end ?? model.today) - start,
    session: start,
    recipe: model.facts.batches.find((b) => b.batch === culture.batch)?.recipe ?? null,
    place: culture.places.at(-1)?.place ?? usualPlace(model, culture.strain),
    generation: generation ?? null,
    founders: culture.founders,
    signs: cupSigns(model, model.strains.get(culture.strain) as StrainModel, culture, cup.end ?? model.today),
    emergedByAge: Float32Array.from(nominal.course.emerged),
    firstSeenAge: {
      larvae: nominal.dates.firstLarvae,
      pupae: nominal.dates.firstPupae,
      adults: nominal.dates.firstAdults,
    },
    spentAge: nominal.dates.spent,
    failedBefore: cup.failedBefore,
    looks: culture.seen.filter((s) => dayNumber(s.on) <= model.today).map((s) => cupLook(s, start)),
    takes: cup.takes
      // Its last flies may be fed when it has ended; that teaches nothing of it any more.
      .filter((t) => t.day <= (cup.end ?? model.today))
      .map(({ day, flies, taps, emptied, presumed, wanted, entryId }) => ({
        ageDays: day - start,
        flies: wanted ?? flies,
        taps,
        emptied,
        presumed,
        ...(entryId !== undefined && { entryId }),
      })),
    ended: cup.end === null ? null : cupEnd(cup.end - start, culture.ended?.reason),
  };
}

/**
 * Generations by culture, counted from the first cup of its line, itself 0. A cup with neither parents
 * nor offspring in the log has none.
 */
function generations(model: HouseholdModel): Map<string, number> {
  const out = new Map<string, number>();
  const oldestFirst = [...model.facts.cultures].sort((a, b) => compare(a.startedOn, b.startedOn));
  for (const { culture, fromCultures } of oldestFirst) {
    if (fromCultures.length === 0) continue;
    for (const parent of fromCultures) if (!out.has(parent)) out.set(parent, 0);
    out.set(culture, 1 + Math.max(...fromCultures.map((parent) => out.get(parent) as number)));
  }
  return out;
}

function cupEnd(ageDays: number, reason: EndReason | undefined): CupEvidence['ended'] {
  return { ageDays, failed: isFailure(reason), spent: reason === 'spent' };
}

function cupLook(seen: CultureFacts['seen'][number], start: number): CupLook {
  return {
    entryId: seen.entryId,
    ageDays: dayNumber(seen.on) - start,
    present: seen.present.filter(isLaterStage),
    absent: seen.absent.filter(isLaterStage),
    amount: seen.amount,
    count: seen.count,
  };
}

/** Eggs are too small to be looked for from outside, so their absence says nothing. */
function isLaterStage(stage: SeenStage): stage is Exclude<SeenStage, 'eggs'> {
  return stage !== 'eggs';
}

function isFailure(reason: EndReason | undefined): boolean {
  return reason !== undefined && !['spent', 'given', 'other'].includes(reason);
}

function compare(a: string, b: string): number {
  return a < b ? -1 : a > b ? 1 : 0;
}
