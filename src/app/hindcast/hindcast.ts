/**
 * The old logbook run again: on past days the forecast is made from what was known by then, and held
 * against what was seen in the week after. What is held against it must be an observation of what was
 * forecast: flies in a cup, counted, put in a word or emptied out, and the first sight of a stage.
 */
import { addDays, type Day, daysBetween, said, told } from '../../foundation/index.ts';
import { type CupEvidence, TableMemory } from '../../learning/index.ts';
import type { Entry } from '../../logbook/index.ts';
import { believe, cupEvidence, cupHistories } from '../evidence.ts';
import { householdModel } from '../household-model.ts';
import type { Question } from '../question.ts';
import { wordsOf } from '../words/words.ts';
import { CupForetold } from './cup-foretold.ts';
import type { HindcastAnswer } from './hindcast-answer.ts';
import { factsThen, type KnownBy, knownByOf } from './known-then.ts';
import { scoresOf, type ScoredNote } from './note-scoring.ts';

export type HindcastQuestion = Pick<Question, 'on' | 'seed' | 'weeks' | 'language' | 'degrees'>;

const usualWeeks = 13;
const leadDays = 7;
/** Draws a forecast; enough for bands, few enough for a quarter of a year. */
const draws = 250;

export function hindcast(entries: readonly Entry[], question: HindcastQuestion): HindcastAnswer {
  const { on, seed, weeks = usualWeeks } = question;
  const knownBy = knownByOf(entries);
  const now = evidenceNow(entries, on);
  // Cups that had ended keep their tables from one past day to the next.
  const memory = new TableMemory();
  const days = Array.from({ length: weeks }, (_, k) => addDays(on, -leadDays * (weeks - k)));
  const notes = days.flatMap((madeOn) => weekOf(factsThen(entries, knownBy, madeOn), madeOn, { seed, now, memory }));
  const answer = {
    on,
    seed,
    weeks,
    leadDays,
    knownBy,
    why: whySaid(knownBy),
    notes: notes.flatMap((n) => (n.shown ? [n.shown] : [])),
    byWeek: days.map((madeOn) => ({ madeOn, ...scoresOf(notes.filter((n) => n.madeOn === madeOn)) })),
    total: scoresOf(notes),
    harvests: {
      taken: notes.filter((n) => n.harvest !== undefined).length,
      beyondTheBand: notes.filter((n) => n.harvest === 'beyond').length,
    },
  };
  return told(answer, wordsOf(question));
}

const comparedSaid = said`Held against each forecast is what says how many flies a cup held: counts, words, cups emptied, and the first sight of a stage. A harvest that leaves flies behind is not the supply; it says only that there were at least so many.`;

function whySaid(knownBy: KnownBy) {
  return knownBy === 'recorded'
    ? said`${comparedSaid} Each forecast knows what had been recorded by its day.`
    : said`${comparedSaid} Most of this log was written long after the day; each forecast knows what had happened by its day.`;
}

/** What is known today of every cup, by culture. */
type EvidenceNow = Map<string, CupEvidence>;

function evidenceNow(entries: readonly Entry[], on: Day): EvidenceNow {
  const model = householdModel(factsThen(entries, 'happened', on), on, 1);
  const cups = [...cupHistories(model).values()].flat();
  return new Map(cups.map((cup) => [cup.culture.culture, cupEvidence(model, cup, undefined)]));
}

interface Asking {
  seed: number;
  now: EvidenceNow;
  memory: TableMemory;
}

/** All that can be said of one past day's forecast of the cups that lived then. */
function weekOf(facts: ReturnType<typeof factsThen>, madeOn: Day, { seed, now, memory }: Asking): ScoredNote[] {
  const model = householdModel(facts, madeOn, leadDays + 1);
  const histories = cupHistories(model);
  const beliefs = believe(model, histories, seed, draws, memory);
  return [...histories].flatMap(([strain, cups]) =>
    cups.flatMap((cup) => {
      const belief = beliefs.cups.get(cup.culture.culture);
      const later = now.get(cup.culture.culture);
      const household = beliefs.byStrain.get(strain);
      // A cup whose start was corrected since has another age now.
      if (!belief || !later || !household || daysBetween(cup.culture.startedOn, madeOn) < 0) return [];
      const earlier = cupEvidence(model, cup, undefined);
      if (later.session !== earlier.session) return [];
      const survival = model.strains.get(strain)?.adultDailySurvival ?? 0;
      return new CupForetold({ culture: cup.culture, earlier, later, belief, household, survival, madeOn, seed }).notes(
        leadDays,
      );
    }),
  );
}
