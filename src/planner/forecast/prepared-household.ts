/**
 * A planning problem made ready for simulation: curve tables, the needs with orders added, and for each
 * day the next session and the next delivery that an order could reach. Made once per problem.
 */
import type { PlanningProblem, StrainProblem } from '../problem.ts';
import { cupsOf } from './cup-groups.ts';
import { type CurveTable, curveTable } from './curve-table.ts';

export interface PreparedHousehold {
  problem: PlanningProblem;
  /** Days simulated: the judged ones and the run-out. */
  totalDays: number;
  /** First work day after day t, or `totalDays` when there is none. */
  nextWorkDay: Int32Array;
  /** First delivery that an order placed on day t can reach, or `totalDays`. */
  deliveryByOrderDay: Int32Array;
  /** Last day on which a parcel arrives that was ordered before today; -1 when there is none. */
  lastAwaitedDay: number;
  /** No home-grown cup stands anywhere: quarantine has nothing to protect until the first is started. */
  fromNothing: boolean;
  strains: PreparedStrain[];
}

export interface PreparedStrain {
  index: number;
  /** Day number of day 0, which chance is drawn by. */
  dayZero: number;
  strain: StrainProblem;
  curves: CurveTable;
  /** Flies wanted by animals and orders on each day. */
  need: Float64Array;
  /** The need by patience, the least patient first; the sum over classes is `need`. */
  classes: NeedClass[];
  longestWait: number;
  /** Sum of the need over the days before t; one entry more than days. */
  needBefore: Float64Array;
  /** Flies of a cup that founding the next ones costs, as a share of the need. */
  founderShare: number;
  /** Cups simulated as one block with a shared draw, so that large holdings stay quick. */
  blockSize: number;
  /** Mean need over the horizon, flies a day. */
  meanNeed: number;
  /** Last day with any need; -1 when there is none. */
  lastNeedDay: number;
  arrivalLossShare: number;
  /** Flies spared for founding at the next session: an ordinary session's founders and three cups' more. */
  founderReserve: number;
  /** Chance of a short day that is allowed. */
  allowedRisk: number;
  /** Mean and variance of each living cup's log yield. */
  existingLogYield: { mean: number; variance: number }[];
  /** Correlation between the living cups' draws: what they share of the household's luck. */
  existingCorrelation: number;
  /** Log sd of what is thought to be in one cup: a count, and what its yield let expect, together. */
  cupStockLogSd: number;
  /** Share of held adults alive after 0, 1, 2 ... days. */
  survivalPower: Float64Array;
  /** Relative variance that the cups of one session share: yield, and failure of them all. */
  sessionSpread: number;
}

/** Rations that can be put off by the same number of days. */
export interface NeedClass {
  waitDays: number;
  need: Float64Array;
  /** The same in each scenario of an uncertain need; null where one factor stands for them. */
  draws: Float32Array[] | null;
}

/** Blocks in the household beyond which cups are grouped. */
const livingBlocks = 48;

export function prepareHousehold(problem: PlanningProblem): PreparedHousehold {
  const totalDays = problem.days + problem.runOutDays;
  const nextWorkDay = nextMarked(problem.workDays, totalDays);
  const nextDelivery = nextMarked(problem.purchase.deliveryDays, totalDays);
  const deliveryByOrderDay = Int32Array.from({ length: totalDays }, (_, t) => {
    const from = t + problem.purchase.leadDays - 1;
    return from >= totalDays
      ? totalDays
      : from < 0
        ? firstMarked(problem.purchase.deliveryDays)
        : (nextDelivery[from] as number);
  });
  return {
    problem,
    totalDays,
    nextWorkDay,
    deliveryByOrderDay,
    lastAwaitedDay: Math.max(-1, ...problem.strains.flatMap((s) => (s.awaited ?? []).map((a) => a.arrivalDay))),
    fromNothing: problem.strains.every(({ existing }) => existing.every(({ bought }) => bought === true)),
    strains: problem.strains.map((strain, index) => prepareStrain(problem, strain, index, totalDays)),
  };
}

function prepareStrain(
  problem: PlanningProblem,
  strain: StrainProblem,
  index: number,
  totalDays: number,
): PreparedStrain {
  const { days, workDays } = problem;
  const { arrivalLossShare } = problem.purchase;
  const curves = curveTable(strain, totalDays, arrivalLossShare);
  const need = Float64Array.from(
    { length: totalDays },
    (_, t) => (strain.wantedFlies[t] ?? 0) + (strain.orderedFlies[t] ?? 0),
  );
  const classes = needClasses(strain, need);
  let sum = 0;
  for (let t = 0; t < days; t++) sum += need[t] as number;
  const meanNeed = sum / days;
  const perCup = Math.max(1, curves.totalExpected[0] as number);
  let sessions = 0;
  for (let t = 0; t < days; t++) sessions += workDays[t] ?? 0;
  const cupsASession = (1.3 * meanNeed * days) / perCup / Math.max(1, sessions);
  const living = (meanNeed / perCup) * (curves.spentAge[0] as number) + livingCups(strain);
  return {
    index,
    dayZero: problem.dayZero ?? 0,
    strain,
    curves,
    need,
    classes,
    longestWait: Math.max(0, ...classes.map((c) => c.waitDays)),
    needBefore: sumBefore(need),
    founderShare: Math.min(0.5, strain.foundersPerCup / perCup),
    blockSize: Math.max(1, Math.round(living / livingBlocks)),
    meanNeed,
    lastNeedDay: need.findLastIndex((flies) => flies > 0),
    arrivalLossShare,
    founderReserve: strain.foundersPerCup * (Math.ceil(cupsASession) + 3),
    allowedRisk: 1 - problem.serviceLevel,
    existingLogYield: strain.existing.map((cup) => momentsOf(cup.draws.logYield)),
    existingCorrelation: Math.max(
      meanCorrelation(strain.existing.map((cup) => cup.draws.logYield)),
      meanCorrelation(strain.existing.map((cup) => cup.draws.logPace)),
    ),
    cupStockLogSd: combinedSd(strain.uncertainty),
    survivalPower: Float64Array.from({ length: totalDays + 1 }, (_, days) => strain.adultDailySurvival ** days),
    sessionSpread: Math.exp(strain.uncertainty.yieldLogSd.session ** 2) - 1 + strain.uncertainty.failure.perSession,
  };
}

function livingCups({ existing }: StrainProblem): number {
  return existing.reduce((sum, cup) => sum + cupsOf(cup), 0);
}

/** Groups of equal patience together; orders, and what no group wants, can't wait. */
function needClasses({ groups = [], needDraws = [], orderedFlies }: StrainProblem, need: Float64Array): NeedClass[] {
  const urgent = need.slice();
  const urgentDraws = needDraws.map((flies) => flies.map((wanted, t) => wanted + (orderedFlies[t] ?? 0)));
  const byWait = new Map<number, NeedClass>();
  for (const { waitDays, flies, draws } of groups) {
    if (waitDays <= 0) continue;
    const own = byWait.get(waitDays) ?? emptyClass(waitDays, need.length, needDraws.length);
    move(flies, urgent, own.need);
    own.draws?.forEach((into, s) => move(draws?.[s] ?? flies, urgentDraws[s] as Float32Array, into));
    byWait.set(waitDays, own);
  }
  byWait.set(0, { waitDays: 0, need: urgent, draws: needDraws.length > 0 ? urgentDraws : null });
  return [...byWait.values()].sort((a, b) => a.waitDays - b.waitDays);
}

function emptyClass(waitDays: number, days: number, draws: number): NeedClass {
  const scenarios = Array.from({ length: draws }, () => new Float32Array(days));
  return { waitDays, need: new Float64Array(days), draws: draws > 0 ? scenarios : null };
}

function move(flies: ArrayLike<number>, from: Float64Array | Float32Array, into: Float64Array | Float32Array): void {
  for (let t = 0; t < into.length; t++) {
    into[t] = (into[t] as number) + (flies[t] ?? 0);
    from[t] = Math.max(0, (from[t] as number) - (flies[t] ?? 0));
  }
}

/** A class's ration on day `t` of world `world`; below 0 is the world in which everything goes as expected. */
export function rationIn({ need, draws }: NeedClass, world: number, needFactor: number, t: number): number {
  return draws && world >= 0
    ? ((draws[world % draws.length] as Float32Array)[t] ?? 0)
    : (need[t] as number) * needFactor;
}

function sumBefore(values: Float64Array): Float64Array {
  const sums = new Float64Array(values.length + 1);
  for (let i = 0; i < values.length; i++) sums[i + 1] = (sums[i] as number) + (values[i] as number);
  return sums;
}

/** Mean correlation of pairs, from the variance of the sum of the standardised samples; 0 for fewer than two. */
function meanCorrelation(samples: Float64Array[]): number {
  const n = samples.length;
  if (n < 2) return 0;
  const size = Math.min(...samples.map((sample) => sample.length));
  const moments = samples.map(momentsOf);
  let squares = 0;
  for (let s = 0; s < size; s++) {
    let sum = 0;
    samples.forEach((sample, i) => {
      const { mean, variance } = moments[i] as { mean: number; variance: number };
      sum += ((sample[s] as number) - mean) / Math.sqrt(Math.max(1e-12, variance));
    });
    squares += sum * sum;
  }
  return Math.min(1, Math.max(0, (squares / size / n - 1) / (n - 1)));
}

function momentsOf(sample: Float64Array): { mean: number; variance: number } {
  const mean = sample.reduce((a, b) => a + b, 0) / sample.length;
  return { mean, variance: sample.reduce((a, b) => a + (b - mean) ** 2, 0) / sample.length };
}

function combinedSd({ countLogSd, yieldLogSd }: StrainProblem['uncertainty']): number {
  const expected = Math.hypot(yieldLogSd.session, yieldLogSd.cup);
  return expected > 0 ? (countLogSd * expected) / Math.max(1e-9, Math.hypot(countLogSd, expected)) : countLogSd;
}

function nextMarked(marks: Uint8Array, totalDays: number): Int32Array {
  const next = new Int32Array(totalDays);
  let upcoming = totalDays;
  for (let t = totalDays - 1; t >= 0; t--) {
    next[t] = upcoming;
    if (marks[t]) upcoming = t;
  }
  return next;
}

function firstMarked(marks: Uint8Array): number {
  const at = marks.indexOf(1);
  return at < 0 ? marks.length : at;
}
