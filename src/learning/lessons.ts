/** What the log has taught, as plain data with a sentence each, for a page and a command line alike. */
import type { LevelBelief, StrainBelief } from './evidence.ts';
import { comparedPairs, cupsUntilClear, type Difference, differenceOf, leastUsefulDifference } from './trial.ts';

export type LessonTopic =
  | 'pace'
  | 'yield'
  | 'spread'
  | 'failure'
  | 'session failure'
  | 'counting'
  | 'taps'
  | 'life'
  | 'recipe'
  | 'place'
  | 'place pace'
  | 'generation'
  | 'founders'
  | 'fit';

export interface Lesson {
  topic: LessonTopic;
  text: string;
  /** A ratio to the books or to the other level (1.08 = 8 % more), a chance, or flies per tap. */
  value: number;
  /** 5 and 95 % points. */
  low: number;
  high: number;
  /** Cups that it rests on. */
  cups: number;
  /** Comparisons only: the two levels, the chance that the first has more, further cups until clear. */
  comparison?: { first: string; second: string; chanceMore: number; cupsUntilClear: number | null };
}

/** Names of recipes and places by key; a key without a name stands for itself. */
export interface LevelNames {
  recipes: ReadonlyMap<string, string>;
  places: ReadonlyMap<string, string>;
}

/** Log sd that the notes of one cup leave on its yield, beside what cups differ by. */
const notesSd = 0.15;
/** The same for its pace. */
const paceNotesSd = 0.03;
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

/** "8 % slower than the books (5 to 11 %)"; the two ends may lie on both sides. */
function compared(r: Ratio, more: string, less: string, than: string, same: string): string {
  const side = (factor: number) => `${percent(factor)} % ${factor >= 1 ? more : less}`;
  const [near, far] = r.value >= 1 ? [r.low, r.high] : [r.high, r.low];
  const oneSide = r.low >= 1 === r.high >= 1;
  const range = oneSide ? `${percent(near)} to ${percent(far)} %` : `${side(r.low)} to ${side(r.high)}`;
  return percent(r.value) === 0 ? `${same} (${range})` : `${side(r.value)} than ${than} (${range})`;
}

function paceLesson(belief: StrainBelief): Lesson {
  const r = ratio(belief.logPace);
  const text = `Your cups run ${compared(r, 'quicker', 'slower', 'the books', 'at the pace of the books')}.`;
  return { topic: 'pace', text, ...r, cups: belief.informativeCups };
}

function yieldLesson(belief: StrainBelief): Lesson {
  const r = ratio(belief.logYield);
  const text = `Your cups give ${compared(r, 'more flies', 'fewer flies', 'the books', 'as many flies as the books')}, as you count them.`;
  return { topic: 'yield', text, ...r, cups: belief.informativeCups };
}

function levelLessons(
  belief: StrainBelief,
  levels: LevelBelief[],
  topic: 'recipe' | 'place',
  names: ReadonlyMap<string, string>,
): Lesson[] {
  const nameOf = (level: LevelBelief) => names.get(level.key) ?? (level.key === '' ? `no ${topic} noted` : level.key);
  return comparedPairs(levels).flatMap(([a, b]) => {
    const yields = differenceOf(a.draws.logYield, b.draws.logYield);
    const cups = a.cups + b.cups;
    const lessons = [comparison(topic, nameOf(a), nameOf(b), yields, cups, belief.cupYieldSd)];
    if (topic === 'recipe') return lessons;
    const paces = differenceOf(a.draws.logPace, b.draws.logPace);
    return [...lessons, comparison('place pace', nameOf(a), nameOf(b), paces, cups, belief.cupPaceSd)];
  });
}

function comparison(
  topic: 'recipe' | 'place' | 'place pace',
  first: string,
  second: string,
  d: Difference,
  cups: number,
  cupSd: number,
): Lesson {
  const more = d.mean >= 0;
  const [winner, loser] = more ? [first, second] : [second, first];
  const chance = (more ? d.chanceMore : 1 - d.chanceMore).toFixed(2);
  // A pace is read off each cup to a few per cent; a yield through counts and harvests.
  const further = cupsUntilClear(d, Math.hypot(cupSd, topic === 'place pace' ? paceNotesSd : notesSd));
  const size = percent(Math.exp(Math.abs(d.mean)));
  const [verb, what] = topic === 'place pace' ? ['run', 'quicker'] : ['give', 'more flies'];
  const told =
    size === 0 ? `${first} and ${second} ${verb} alike` : `${winner} ${verb}s ${size} % ${what} than ${loser}`;
  const text = `${told} (P = ${chance}, ${cups} cups)${trialText(further, d.mean)}.`;
  return {
    topic,
    text,
    value: Math.exp(d.mean),
    low: Math.exp(d.low),
    high: Math.exp(d.high),
    cups,
    comparison: { first, second, chanceMore: d.chanceMore, cupsUntilClear: further },
  };
}

function trialText(further: number | null, mean: number): string {
  if (further === 0) return '; that is clear';
  if (further === null) return '; no trial of a bearable size would settle it';
  const shows = Math.abs(mean) < leastUsefulDifference ? 'would show a difference of 10 %' : 'would settle it';
  return `; about ${further} more cups, half of each and started together, ${shows}`;
}

function slopeLessons(belief: StrainBelief): Lesson[] {
  const out: Lesson[] = [];
  const cups = belief.informativeCups;
  if (belief.generationYield) {
    const r = ratio(belief.generationYield);
    const text = `Each generation gives ${compared(r, 'more flies', 'fewer flies', 'the one before', 'as many flies as the one before')}.`;
    out.push({ topic: 'generation', text, ...r, cups });
  }
  if (belief.foundersYield) {
    const r = ratio(belief.foundersYield);
    const text = `Twice the founders gives ${compared(r, 'more flies', 'fewer flies', 'the books say', 'as many flies as the books say')}.`;
    out.push({ topic: 'founders', text, ...r, cups });
  }
  return out;
}

function chanceText({ mean, p05, p95 }: StrainBelief['failureChance']): string {
  const p = (chance: number) => (100 * chance).toFixed(chance < 0.1 ? 1 : 0);
  return `${p(mean)} % (${p(p05)} to ${p(p95)} %)`;
}

function failureLesson(belief: StrainBelief): Lesson {
  const { mean: value, p05: low, p95: high } = belief.failureChance;
  const text = `A cup fails before its time with a chance of ${chanceText(belief.failureChance)}.`;
  return { topic: 'failure', text, value, low, high, cups: belief.informativeCups };
}

function sessionFailureLesson(belief: StrainBelief): Lesson {
  const { mean: value, p05: low, p95: high } = belief.sessionFailureChance;
  const text = `All cups of a session are lost together with a chance of ${chanceText(belief.sessionFailureChance)}.`;
  return { topic: 'session failure', text, value, low, high, cups: belief.informativeCups };
}

function lifeLesson(belief: StrainBelief): Lesson {
  const r = ratio(belief.logLife);
  const text = `Your cups are of use ${compared(r, 'longer', 'shorter', 'the books say', 'as long as the books say')}.`;
  return { topic: 'life', text, ...r, cups: belief.informativeCups };
}

function spreadLesson(belief: StrainBelief): Lesson {
  const value = belief.cupYieldSd;
  const text = `Two cups started alike differ: one in three strays by more than ${Math.round(100 * value)} % in flies.`;
  return { topic: 'spread', text, value, low: value, high: value, cups: belief.informativeCups };
}

function countingLesson(belief: StrainBelief): Lesson {
  const value = belief.countSd;
  const text = `Your counts are good to about ${Math.round(100 * value)} %.`;
  return { topic: 'counting', text, value, low: value, high: value, cups: belief.informativeCups };
}

function tapLessons(belief: StrainBelief): Lesson[] {
  if (belief.fliesPerTap === null) return [];
  const value = belief.fliesPerTap;
  const text = `One tap gives about ${Math.round(value)} flies.`;
  return [{ topic: 'taps', text, value, low: value, high: value, cups: belief.informativeCups }];
}

/** First of all: whether the log can be read with this model. */
function fitLesson(belief: StrainBelief): Lesson {
  const { notes, doubted, fits } = belief.fit;
  const value = notes === 0 ? 0 : doubted / notes;
  const text = fits
    ? `The log fits: ${doubted} of ${notes} notes are doubtful.`
    : `The log does not fit: ${doubted} of ${notes} notes contradict the rest. Take forecasts with care.`;
  return { topic: 'fit', text, value, low: value, high: value, cups: belief.informativeCups };
}
