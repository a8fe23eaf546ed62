/**
 * Simulated households whose truth is known: the model that learning assumes, drawn forwards. Tests of
 * calibration hold the posterior against the truth that wrote the log.
 */
import { type RandomStream, randomStream } from '../../src/foundation/index.ts';
import type { CupEvidence, CupLook, LearningPrior, StrainEvidence } from '../../src/learning/index.ts';
import { fullPrior, ordinaryPrior, warpedEmergence, wordBeginsAtFlies } from '../../src/learning/index.ts';
import { spreadLogSd } from '../../src/learning/spread.ts';

export interface WorldOptions {
  cups: number;
  prior: LearningPrior;
  /** Log sd by which households differ in their spread of cups. */
  spreadLogSd: number;
  /** Days between looks: `[2, 3]` alternates. */
  lookEvery: number;
  /** Days between harvests; 0 = none. */
  takeEvery: number;
  /** Share of looks that give a word instead of a number. */
  wordShare: number;
  /** Days between starting sessions. */
  sessionEvery: number;
  cupsPerSession: number;
  recipes: string[];
  places: string[];
  /** Share of entries replaced by nonsense; the model's own share when left out. */
  wrongShare?: number;
  /** Changes a cup's true emergence by day, for worlds that are not the model. */
  distort?: (emerged: Float64Array<ArrayBuffer>, random: RandomStream) => Float64Array<ArrayBuffer>;
  /** Flies that emerge by day of age in a cup of this pace and yield, instead of the curve's. */
  emergence?: (logPace: number, logYield: number, random: RandomStream) => Float64Array<ArrayBuffer>;
  /** What the books expect of every cup. */
  books: Books;
  /** The keeper's own way to write a number. */
  writeCount?: (flies: number) => number;
}

export interface Books {
  curve: Float32Array;
  firstSeenAge: CupEvidence['firstSeenAge'];
  spentAge: number;
}

export interface CupTruth {
  logPace: number;
  logYield: number;
  fliesNow: number;
  /** Flies that emerge on each day of age, to the end of the curve. */
  emerged: Float64Array;
}

export interface World {
  evidence: StrainEvidence;
  truth: {
    logPace: number;
    logYield: number;
    /** The same for a cup with the newest cup's recipe and place. */
    nextPace: number;
    nextYield: number;
    cupYieldSd: number;
    cupPaceSd: number;
    countSd: number;
    failureChance: number;
    recipeYield: Map<string, number>;
    placePace: Map<string, number>;
    cups: Map<string, CupTruth>;
  };
}

export const survival = 0.92;
export const firstSeenAge = { larvae: 2.5, pupae: 8, adults: 13 };
export const spentAge = 35;

/** A made-up curve of 400 flies from day 13 on, with a peak near day 17. */
export function nominalCurve(): Float32Array {
  const days = Array.from({ length: 120 }, (_, a) => (a < 13 ? 0 : (a - 12) ** 2 * Math.exp(-(a - 12) / 2.2)));
  const total = days.reduce((a, b) => a + b, 0);
  return Float32Array.from(days, (d) => (400 * d) / total);
}

export const ordinaryWorld: WorldOptions = {
  spreadLogSd,
  cups: 8,
  prior: ordinaryPrior,
  lookEvery: 2,
  takeEvery: 3,
  wordShare: 0.3,
  sessionEvery: 7,
  cupsPerSession: 2,
  recipes: ['A'],
  places: ['shelf'],
  books: { curve: nominalCurve(), firstSeenAge, spentAge },
};

/** One household drawn from the prior, and the log that its keeper writes. */
export function simulateWorld(options: WorldOptions, seed: number): World {
  const random = randomStream(seed, 'world');
  const prior = fullPrior(options.prior);
  const effect = (keys: string[], sd: number) =>
    new Map(keys.map((key) => [key, keys.length > 1 ? sd * random.normal() : 0]));
  const household = {
    pace: prior.householdPaceSd * random.normal(),
    yield: prior.householdYieldSd * random.normal(),
    cupYieldSd: prior.cupYieldSd * Math.exp(options.spreadLogSd * random.normal()),
    cupPaceSd: prior.cupPaceSd * Math.exp(options.spreadLogSd * random.normal()),
    countSd: prior.countSd * Math.exp(0.4 * random.normal()),
    wordOffset: prior.wordOffsetSd * random.normal(),
    failureChance: random.beta(prior.failure.a, prior.failure.b),
    recipeYield: effect(options.recipes, prior.recipeYieldSd),
    recipePace: effect(options.recipes, prior.recipePaceSd),
    placePace: effect(options.places, prior.placePaceSd),
    placeYield: effect(options.places, prior.placeYieldSd),
  };
  const sessions = Math.ceil(options.cups / options.cupsPerSession);
  const luck = Array.from({ length: sessions }, () => prior.sessionYieldSd * random.normal());
  const { curve, firstSeenAge, spentAge } = options.books;
  const truths = new Map<string, CupTruth>();
  const next = { pace: 0, yield: 0, session: -1 };
  let paceSum = 0;
  let yieldSum = 0;
  const cups: CupEvidence[] = [];
  for (let i = 0; i < options.cups; i++) {
    const session = Math.floor(i / options.cupsPerSession);
    const recipe = options.recipes[i % options.recipes.length] as string;
    const place = options.places[Math.floor(i / options.recipes.length) % options.places.length] as string;
    const paceMean =
      household.pace + (household.recipePace.get(recipe) as number) + (household.placePace.get(place) as number);
    const yieldMean =
      household.yield + (household.recipeYield.get(recipe) as number) + (household.placeYield.get(place) as number);
    if (session > next.session) Object.assign(next, { pace: paceMean, yield: yieldMean, session });
    paceSum += paceMean;
    yieldSum += yieldMean;
    const logPace = paceMean + household.cupPaceSd * random.normal();
    const logYield = yieldMean + (luck[session] as number) + household.cupYieldSd * random.normal();
    const ageDays = 10 + options.sessionEvery * (sessions - 1 - session);
    const made = liveCup({ logPace, logYield, ageDays, curve, household, prior, options, random });
    const id = `cup-${i}`;
    truths.set(id, made.truth);
    cups.push({
      id,
      ageDays: made.ended?.ageDays ?? ageDays,
      session,
      recipe,
      place,
      generation: null,
      emergedByAge: curve,
      firstSeenAge,
      spentAge,
      looks: made.looks,
      takes: made.takes,
      ended: made.ended,
    });
  }
  return {
    evidence: { strain: 'melanogaster', adultDailySurvival: survival, cups },
    truth: {
      ...household,
      logPace: paceSum / options.cups,
      logYield: yieldSum / options.cups,
      nextPace: next.pace,
      nextYield: next.yield,
      cups: truths,
    },
  };
}

interface CupLife {
  logPace: number;
  logYield: number;
  ageDays: number;
  curve: Float32Array;
  household: { countSd: number; wordOffset: number; failureChance: number };
  prior: ReturnType<typeof fullPrior>;
  options: WorldOptions;
  random: RandomStream;
}

function liveCup(life: CupLife) {
  const { ageDays, household, prior, options, random } = life;
  const { firstSeenAge, spentAge } = options.books;
  const fails = random.uniform() < household.failureChance;
  const failsAt = Math.floor(random.uniform() * spentAge);
  const endAge = fails ? failsAt : spentAge;
  const lived = Math.min(ageDays, endAge);
  const horizon = life.curve.length - 1;
  const stray = 2 * prior.discrepancySd;
  const mean = warpedEmergence(life.curve, life.logPace, horizon);
  let emerged = mean.map((e) => {
    const expected = Math.exp(life.logYield) * e;
    return Math.max(0, random.poisson(Math.max(0, expected * (1 + stray * random.normal()))));
  });
  if (options.emergence) emerged = options.emergence(life.logPace, life.logYield, random);
  if (options.distort) emerged = options.distort(emerged, random);
  const first = {
    larvae: firstSeenAge.larvae * Math.exp(-life.logPace) + 0.8 * random.normal(),
    pupae: firstSeenAge.pupae * Math.exp(-life.logPace) + 0.7 * random.normal(),
    adults: firstSeenAge.adults * Math.exp(-life.logPace) + 0.6 * random.normal(),
  };
  const looks: CupLook[] = [];
  const takes: CupEvidence['takes'] = [];
  const wrongShare = options.wrongShare ?? prior.wrongEntryShare;
  const write = options.writeCount ?? ((flies: number) => flies);
  let stock = 0;
  const phase = random.below(options.lookEvery);
  for (let age = 0; age <= lived; age++) {
    stock = survival * stock + (emerged[age] ?? 0);
    if (age % options.lookEvery === phase) {
      const look: CupLook = { ageDays: age, present: [], absent: [], amount: null, count: null };
      for (const stage of ['larvae', 'pupae', 'adults'] as const) {
        if (stage === 'larvae' && age > 0.92 * firstSeenAge.adults) continue;
        if (stage === 'pupae' && age > 1.07 * firstSeenAge.adults) continue;
        if (stage === 'adults' && age < 0.8 * firstSeenAge.adults) continue;
        if (age > 1.6 * firstSeenAge[stage]) continue;
        (first[stage] <= age ? look.present : look.absent).push(stage);
      }
      if (age >= 0.8 * firstSeenAge.adults)
        writeAmount(look, stock, { household, prior, options, random, wrongShare, write });
      looks.push(look);
    }
    if (options.takeEvery > 0 && age > firstSeenAge.adults && age % options.takeEvery === 0)
      stock = take(age, stock, takes, life, wrongShare, write);
  }
  const truth: CupTruth = { logPace: life.logPace, logYield: life.logYield, fliesNow: stock, emerged };
  const ended = lived < ageDays || lived === endAge ? { ageDays: lived, failed: fails, spent: !fails } : null;
  return { looks, takes, truth, ended };
}

interface Writing {
  household: { countSd: number; wordOffset: number };
  prior: ReturnType<typeof fullPrior>;
  options: WorldOptions;
  random: RandomStream;
  wrongShare: number;
  write: (flies: number) => number;
}

function writeAmount(look: CupLook, stock: number, by: Writing): void {
  const { household, prior, random } = by;
  const wrong = random.uniform() < by.wrongShare;
  if (random.uniform() < by.options.wordShare) {
    const sd = Math.hypot(prior.wordSd, household.countSd);
    const seen = Math.log(stock + 1) + sd * random.normal() - household.wordOffset;
    const words = Object.keys(wordBeginsAtFlies) as (keyof typeof wordBeginsAtFlies)[];
    const fit = words.filter((w) => w === 'none' || seen >= Math.log(wordBeginsAtFlies[w]));
    look.amount = (wrong ? words[random.below(5)] : fit[fit.length - 1]) as CupLook['amount'];
  } else {
    const sd = Math.hypot(household.countSd, wrong ? 1.5 : 0);
    look.count = by.write(Math.max(0, Math.round((stock + 1) * Math.exp(sd * random.normal()) - 1)));
  }
}

/** Takes 20 to 60 flies, or all that there are. */
function take(
  age: number,
  stock: number,
  takes: CupEvidence['takes'],
  life: CupLife,
  wrongShare: number,
  write: (flies: number) => number,
): number {
  const { household, random } = life;
  const base = { ageDays: age, taps: null, presumed: false };
  const wanted = 20 + random.below(41);
  const really = wanted * Math.exp(household.countSd * random.normal());
  if (really < stock) {
    takes.push({ ...base, flies: wanted, emptied: false });
    return stock - really;
  }
  const sd = Math.hypot(household.countSd, random.uniform() < wrongShare ? 1.5 : 0);
  const flies = Math.max(0, Math.round((stock + 1) * Math.exp(sd * random.normal()) - 1));
  takes.push({ ...base, flies: write(flies), emptied: true });
  return 0;
}
