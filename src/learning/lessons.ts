/** What the log has taught, as plain data with a sentence each and what it rests on. */
import { type Band, bandOf, type Said, said } from '../foundation/index.ts';
import type { LevelBelief, StrainBelief } from './evidence.ts';
import type { Lesson } from './lesson.ts';
import { misfitSaid } from './misfit-said.ts';
import { comparedPairs, differenceOf } from './trial.ts';
import { comparison } from './trial-lesson.ts';

/** Names of recipes and places by key; a key without a name stands for itself. */
export interface LevelNames {
  recipes: ReadonlyMap<string, string>;
  places: ReadonlyMap<string, string>;
}

const z90 = 1.645;

/** All lessons of one strain, most useful first. */
export function whatTheLogTaught(belief: StrainBelief, names: LevelNames): Lesson[] {
  return [
    fitLesson(belief),
    paceLesson(belief),
    yieldLesson(belief),
    ...levelLessons(belief, belief.recipes, 'recipe', names.recipes),
    ...levelLessons(belief, belief.places, 'place', names.places),
    ...slopeLessons(belief),
    failureLesson(belief),
    sessionFailureLesson(belief),
    lifeLesson(belief),
    spreadLesson(belief),
    countingLesson(belief),
    ...tapLessons(belief),
  ];
}

interface Ratio {
  value: number;
  low: number;
  high: number;
}

function ratio(log: { mean: number; sd: number }): Ratio {
  return {
    value: Math.exp(log.mean),
    low: Math.exp(log.mean - z90 * log.sd),
    high: Math.exp(log.mean + z90 * log.sd),
  };
}

function percent(factor: number): number {
  return Math.round(100 * Math.abs(factor - 1));
}

/** How a ratio is put: a sentence each for more, less and alike, the size and its range to be filled in. */
interface Wording {
  more: (size: number, range: Said) => Said;
  less: (size: number, range: Said) => Said;
  same: (range: Said) => Said;
}

/** The two ends of a range may lie on both sides. */
function rangeSaid({ value, low, high }: Ratio): Said {
  const [near, far] = value >= 1 ? [low, high] : [high, low];
  if (low >= 1 === high >= 1) return said`${percent(near)} to ${percent(far)} %`;
  return said`${percent(low)} % less to ${percent(high)} % more`;
}

function compared(r: Ratio, wording: Wording): Said {
  const size = percent(r.value);
  if (size === 0) return wording.same(rangeSaid(r));
  return (r.value >= 1 ? wording.more : wording.less)(size, rangeSaid(r));
}

function paceLesson(belief: StrainBelief): Lesson {
  const r = ratio(belief.logPace);
  const text = compared(r, {
    more: (n, range) => said`Your cups run ${n} % quicker than the books (${range}).`,
    less: (n, range) => said`Your cups run ${n} % slower than the books (${range}).`,
    same: (range) => said`Your cups run at the pace of the books (${range}).`,
  });
  const why = said`From the days on which larvae, pupae and flies were first seen, and from when flies came, at the warmth that the log gives; a wrong thermometer goes in here.`;
  return { topic: 'pace', text, why, ...r, cups: belief.informativeCups };
}

function yieldLesson(belief: StrainBelief): Lesson {
  const r = ratio(belief.logYield);
  const text = compared(r, {
    more: (n, range) => said`Your cups give ${n} % more flies than the books (${range}), as you count them.`,
    less: (n, range) => said`Your cups give ${n} % fewer flies than the books (${range}), as you count them.`,
    same: (range) => said`Your cups give as many flies as the books (${range}), as you count them.`,
  });
  const why = said`From counts, words and harvests, those of emptied and empty cups too; who counts high reads high here.`;
  return { topic: 'yield', text, why, ...r, cups: belief.informativeCups };
}

function levelLessons(
  belief: StrainBelief,
  levels: LevelBelief[],
  topic: 'recipe' | 'place',
  names: ReadonlyMap<string, string>,
): Lesson[] {
  const unnamed = topic === 'recipe' ? said`no recipe noted` : said`no place noted`;
  const nameOf = (level: LevelBelief) => names.get(level.key) ?? (level.key === '' ? unnamed : level.key);
  return comparedPairs(levels).flatMap(([a, b]) => {
    const yields = differenceOf(a.draws.logYield, b.draws.logYield);
    const pair = { first: nameOf(a), second: nameOf(b), cups: a.cups + b.cups };
    const lessons: Lesson[] = [comparison(topic, pair, yields, belief.cupYieldSd)];
    if (topic === 'recipe') return lessons;
    const paces = differenceOf(a.draws.logPace, b.draws.logPace);
    return [...lessons, comparison('place pace', pair, paces, belief.cupPaceSd)];
  });
}

function slopeLessons(belief: StrainBelief): Lesson[] {
  const out: Lesson[] = [];
  const cups = belief.informativeCups;
  if (belief.generationYield) {
    const r = ratio(belief.generationYield);
    const text = compared(r, {
      more: (n, range) => said`Each generation gives ${n} % more flies than the one before (${range}).`,
      less: (n, range) => said`Each generation gives ${n} % fewer flies than the one before (${range}).`,
      same: (range) => said`Each generation gives as many flies as the one before (${range}).`,
    });
    const why = said`From cups of different generations of the same lines; a decline of 2 % a generation is not surprising before anything is known.`;
    out.push({ topic: 'generation', text, why, ...r, cups });
  }
  if (belief.foundersYield) {
    const r = ratio(belief.foundersYield);
    const text = compared(r, {
      more: (n, range) => said`Twice the founders gives ${n} % more flies than the books say (${range}).`,
      less: (n, range) => said`Twice the founders gives ${n} % fewer flies than the books say (${range}).`,
      same: (range) => said`Twice the founders gives as many flies as the books say (${range}).`,
    });
    const why = said`From cups that were started with more and with fewer founders; the crowding of the books is allowed for.`;
    out.push({ topic: 'founders', text, why, ...r, cups });
  }
  return out;
}

/** A chance in per cent: a decimal where it is small. */
function inPercent(chance: number): number {
  return Number((100 * chance).toFixed(chance < 0.1 ? 1 : 0));
}

function failureLesson(belief: StrainBelief): Lesson {
  const { mean: value, p05: low, p95: high } = belief.failureChance;
  const text = said`A cup fails before its time with a chance of ${inPercent(value)} % (${inPercent(low)} to ${inPercent(high)} %).`;
  const why = said`From cups that ended for mould, mites and the like against those that ran their course; living cups count for the part of their life behind them. Before the first cup, 8 % is taken.`;
  return { topic: 'failure', text, why, value, low, high, cups: belief.informativeCups };
}

function sessionFailureLesson(belief: StrainBelief): Lesson {
  const { mean: value, p05: low, p95: high } = belief.sessionFailureChance;
  const text = said`All cups of a session are lost together with a chance of ${inPercent(value)} % (${inPercent(low)} to ${inPercent(high)} %).`;
  const why = said`From sessions of two cups and more that lost all of them, as a bad batch of medium does.`;
  return { topic: 'session failure', text, why, value, low, high, cups: belief.informativeCups };
}

function lifeLesson(belief: StrainBelief): Lesson {
  const r = ratio(belief.logLife);
  const text = compared(r, {
    more: (n, range) => said`Your cups are of use ${n} % longer than the books say (${range}).`,
    less: (n, range) => said`Your cups are of use ${n} % shorter than the books say (${range}).`,
    same: (range) => said`Your cups are of use as long as the books say (${range}).`,
  });
  const why = said`From the ages at which cups were ended as spent.`;
  return { topic: 'life', text, why, ...r, cups: belief.informativeCups };
}

function spreadLesson(belief: StrainBelief): Lesson {
  const band = bandOf(belief.draws.cupYieldSd);
  const text = said`Two cups started alike differ: one in three strays by more than ${perHundred(band.p50)} % in flies (${perHundred(band.p05)} to ${perHundred(band.p95)} %).`;
  const why = said`From how much cups of one session, recipe and place differ.`;
  return { topic: 'spread', text, why, ...ends(band), cups: belief.informativeCups };
}

function countingLesson(belief: StrainBelief): Lesson {
  const { counting } = belief;
  const text = said`Your counts are good to about ${perHundred(counting.p50)} % (${perHundred(counting.p05)} to ${perHundred(counting.p95)} %).`;
  const why = said`From counts of one cup that follow each other: what births, deaths and harvests between them cannot explain.`;
  return { topic: 'counting', text, why, ...ends(counting), cups: belief.informativeCups };
}

function tapLessons(belief: StrainBelief): Lesson[] {
  if (belief.perTap === null) return [];
  const { takes, ...band } = belief.perTap;
  const text = said`One tap gives about ${Math.round(band.p50)} flies (${Math.round(band.p05)} to ${Math.round(band.p95)}).`;
  const why = said`From ${takes} harvests of which both taps and flies were written; harvests written in taps alone are read with it.`;
  return [{ topic: 'taps', text, why, ...ends(band), cups: belief.informativeCups }];
}

function perHundred(share: number): number {
  return Math.round(100 * share);
}

function ends({ p05, p50, p95 }: Band): Ratio {
  return { value: p50, low: p05, high: p95 };
}

/** First of all: whether the log can be read with this model. */
function fitLesson(belief: StrainBelief): Lesson {
  const { notes, doubted, fits, misfits } = belief.fit;
  const value = notes === 0 ? 0 : doubted / notes;
  const text = fits
    ? said`The log fits: ${doubted} of ${notes} notes are doubtful.`
    : said`The log does not fit: ${{ list: misfits.map(({ what }) => misfitSaid(what)), by: '; ' }}. Take forecasts with care.`;
  const why = said`Every note is held against its own forecast from the notes before it, in six ways; of logs that the model wrote itself, at most 1 in 100 is said not to fit.`;
  return { topic: 'fit', text, why, value, low: value, high: value, cups: belief.informativeCups };
}
