/** What the logbook shows of each cup, in learning's terms. */
import { dayNumber } from '../foundation/index.ts';
import type { CultureFacts, EndReason, SeenStage } from '../logbook/index.ts';
import { type Beliefs, type CupEvidence, type CupLook, learn } from '../learning/index.ts';
import { type HouseholdModel, type StrainModel, usualPlace } from './household-model.ts';
import { nominalCup } from './nominal-cup.ts';
import { bookPrior } from './priors.ts';
import { addTakes, type CupHistory } from './takes.ts';

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
  return {
    culture,
    nominal: nominalCup(model, strain, culture),
    start: dayNumber(culture.startedOn),
    end: ended ? dayNumber(ended.on) : null,
    takes: [],
  };
}

export function believe(model: HouseholdModel, histories: Histories, seed: number, draws: number): Beliefs {
  const strains = [...histories].map(([strain, cups]) => ({
    strain,
    adultDailySurvival: (model.strains.get(strain) as StrainModel).adultDailySurvival,
    cups: cups.map((cup) => cupEvidence(model, cup)),
  }));
  return learn({ seed, draws, prior: bookPrior, strains });
}

function cupEvidence(model: HouseholdModel, cup: CupHistory): CupEvidence {
  const { culture, nominal, start } = cup;
  return {
    id: culture.culture,
    ageDays: (cup.end ?? model.today) - start,
    session: start,
    recipe: model.facts.batches.find((b) => b.batch === culture.batch)?.recipe ?? null,
    place: culture.places.at(-1)?.place ?? usualPlace(model, culture.strain),
    generation: null,
    emergedByAge: Float32Array.from(nominal.course.emerged),
    firstSeenAge: {
      larvae: nominal.dates.firstLarvae,
      pupae: nominal.dates.firstPupae,
      adults: nominal.dates.firstAdults,
    },
    spentAge: nominal.dates.spent,
    looks: culture.seen.filter((s) => dayNumber(s.on) <= model.today).map((s) => cupLook(s, start)),
    takes: cup.takes
      .filter((t) => t.day <= model.today)
      .map(({ day, flies, taps, emptied, presumed }) => ({ ageDays: day - start, flies, taps, emptied, presumed })),
    ended: cup.end === null ? null : { ageDays: cup.end - start, failed: isFailure(culture.ended?.reason) },
  };
}

function cupLook(seen: CultureFacts['seen'][number], start: number): CupLook {
  return {
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
