/**
 * Each cup's life as believed today, for drawing: when its stages begin, and the flies it holds on each
 * day of its age with ordinary harvesting, at the pace and yield that its own log speaks for.
 */
import { type Band, bandOf, dayFromNumber } from '../foundation/index.ts';
import type { CupBelief } from '../learning/index.ts';
import type { Facts } from '../logbook/index.ts';
import { believe, cupHistories } from './evidence.ts';
import { householdModel } from './household-model.ts';
import type { Question } from './question.ts';
import type { CupHistory } from './cup-history.ts';

/** Ages in days since `from`, fractions allowed. */
export interface CupLife {
  id: string;
  label: string;
  strain: string;
  place: string | null;
  /** The day its founders went in. */
  from: string;
  /** The day it ended, or is expected to be spent. */
  until: string;
  ended: boolean;
  larvaeAt: number;
  pupaeAt: number;
  fliesAt: number;
  /** Flies on hand by whole days of age, founders left out. */
  flies: number[];
}

/** Draws that the middle of a belief is read from. */
const beliefDraws = 200;

/** All cups that the log remembers, ended ones too, oldest first. */
export function cupLives(facts: Facts, question: Question): CupLife[] {
  const model = householdModel(facts, question.on, 1);
  const histories = cupHistories(model);
  const { cups } = believe(model, histories, question.seed, beliefDraws);
  return [...histories.values()].flat().map((history) => cupLife(history, cups.get(history.culture.culture)));
}

/** Flies on hand by whole days of a cup's age, with the band that its own log leaves. */
export type CupBand = Band[];

/** The band of one cup's life, or null when the log does not remember the cup. */
export function cupBand(facts: Facts, question: Question, cup: string): CupBand | null {
  const model = householdModel(facts, question.on, 1);
  const histories = cupHistories(model);
  const { cups } = believe(model, histories, question.seed, beliefDraws);
  const history = [...histories.values()].flat().find(({ culture }) => culture.culture === cup);
  const belief = cups.get(cup);
  if (!history || !belief) return null;
  const { logPace, logYield } = belief.draws;
  const days = cupLife(history, belief).flies.length;
  return Array.from({ length: days }, (_, age) =>
    bandOf(
      Float64Array.from(logPace, (pace, s) => held(history, age, Math.exp(pace), Math.exp(logYield[s] as number))),
    ),
  );
}

/** Flies on hand at an age, had the cup that pace and yield against the books. */
function held({ nominal: { course } }: CupHistory, age: number, pace: number, yields: number): number {
  const at = Math.min(course.days - 1, Math.round(age * pace));
  return Math.max(0, (course.adults[at] as number) - (course.foundersAlive[at] as number)) * yields;
}

function cupLife(history: CupHistory, belief: CupBelief | undefined): CupLife {
  const { culture, nominal, start, end } = history;
  const pace = Math.exp(belief ? bandOf(belief.draws.logPace).p50 : 0);
  const yields = Math.exp(belief ? bandOf(belief.draws.logYield).p50 : 0);
  const { dates } = nominal;
  const spent = Math.max(1, Math.floor(dates.spent / pace));
  return {
    id: culture.culture,
    label: culture.label,
    strain: culture.strain,
    place: culture.places.at(-1)?.place ?? null,
    from: dayFromNumber(start),
    until: dayFromNumber(end ?? start + spent),
    ended: end !== null,
    larvaeAt: dates.firstLarvae / pace,
    pupaeAt: dates.firstPupae / pace,
    fliesAt: dates.firstAdults / pace,
    flies: Array.from({ length: spent + 1 }, (_, age) => Math.round(held(history, age, pace, yields))),
  };
}
