/** Notes scored against their forecasts, and the scores summed up. */
import { bandOf, type Day, type RandomStream } from '../../foundation/index.ts';
import { crps, logScore, rankAmong } from '../../learning/index.ts';
import type { HindcastAnswer, HindcastNote } from './hindcast-answer.ts';
import type { LaterNote } from './later-notes.ts';

/** A note with its scores, or a harvest that can only be too large. */
export interface ScoredNote {
  madeOn: Day;
  shown: HindcastNote | null;
  logScore: number | null;
  booksLogScore: number | null;
  harvest?: 'within' | 'beyond';
}

type Labels = Pick<HindcastNote, 'madeOn' | 'seenOn' | 'strain' | 'culture' | 'label'> & { madeOn: Day };

/** Only a number has a distance to its forecast; words and brackets have a place in it. */
export function noteScore(
  note: LaterNote,
  labels: Labels,
  draws: Float64Array,
  books: Float64Array,
  random: RandomStream,
): ScoredNote {
  const { kind, low, high } = note;
  const isNumber = kind === 'count' || kind === 'emptied';
  const rank = rankAmong(draws, low, high, random.uniform());
  const score = (of: Float64Array) => (isNumber ? crps(Float64Array.from(of).sort(), low) : null);
  return {
    madeOn: labels.madeOn,
    shown: {
      ...labels,
      kind,
      cameLow: finite(low),
      cameHigh: finite(high),
      forecast: rounded(draws),
      books: rounded(books),
      rank,
      inside50: rank >= 0.25 && rank <= 0.75,
      inside90: rank >= 0.05 && rank <= 0.95,
      crps: score(draws),
      booksCrps: score(books),
    },
    logScore: isNumber ? logScore(draws, low) : null,
    booksLogScore: isNumber ? logScore(books, low) : null,
  };
}

/** A harvest that left flies behind contradicts its forecast only when it is larger than the band. */
export function harvestScore(draws: Float64Array, flies: number, madeOn: Day): ScoredNote {
  const harvest = flies > bandOf(draws).p95 ? 'beyond' : 'within';
  return { madeOn, shown: null, logScore: null, booksLogScore: null, harvest };
}

function finite(value: number): number | null {
  return Number.isFinite(value) ? value : null;
}

/** To a tenth. */
function rounded(draws: Float64Array): HindcastNote['forecast'] {
  const { p05, p50, p95 } = bandOf(draws);
  const tenth = (value: number) => Math.round(10 * value) / 10;
  return { p05: tenth(p05), p50: tenth(p50), p95: tenth(p95) };
}

/** Means over what was scored; null where nothing was. */
export function scoresOf(notes: readonly ScoredNote[]): HindcastAnswer['total'] {
  const shown = notes.flatMap((n) => (n.shown ? [n.shown] : []));
  return {
    notes: shown.length,
    counts: shown.filter((n) => n.crps !== null).length,
    inside50: mean(shown.map((n) => Number(n.inside50))),
    inside90: mean(shown.map((n) => Number(n.inside90))),
    crps: mean(shown.map((n) => n.crps)),
    booksCrps: mean(shown.map((n) => n.booksCrps)),
    logScore: mean(notes.map((n) => n.logScore)),
    booksLogScore: mean(notes.map((n) => n.booksLogScore)),
  };
}

function mean(values: readonly (number | null)[]): number | null {
  const known = values.filter((v) => v !== null);
  return known.length === 0 ? null : known.reduce((a, b) => a + b, 0) / known.length;
}
