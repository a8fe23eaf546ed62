/**
 * The curves of one strain laid out flat for simulation: what a nominal cup has given by each age, and
 * what a keeper may expect of it when pace, yield and failure are uncertain. Curve `d` below the number
 * of days is a home-started cup of day d; then come the two kinds of bought cup, then the existing ones.
 */
import { risingAt } from '../../foundation/index.ts';
import type { CupCurve, CupUncertainty, ExistingCup, StrainProblem } from '../problem.ts';

export interface CurveTable {
  /** Entries per curve in the flat arrays; ages run from 0 to `stride` - 1. */
  stride: number;
  curves: number;
  producing: number;
  young: number;
  firstExisting: number;
  /** Flies emerged before whole age `a` (so 0 at 0), nominal: `[curve * stride + a]`. */
  cumulative: Float64Array;
  /** Largest age with nothing emerged. */
  barrenAge: Float64Array;
  /** Expected flies emerging during age `a`, over pace, yield of cup and session, and failure. */
  expected: Float64Array;
  /** Sum of `expected` over the ages before `a`. */
  expectedBefore: Float64Array;
  /** Expected flies held at age `a` when none are taken: `expected` summed with daily survival. */
  decayed: Float64Array;
  /** Variance of the flies held at age `a` when none are taken, of one cup, apart from its session's. */
  cupVariance: Float64Array;
  /** First age at which any flies are expected. */
  silentUntilAge: Int32Array;
  /** Age at which a quarter of the expected flies are out: from then a cup can close a gap. */
  effectAge: Int32Array;
  /** Age at which the expected flies reach one: home-grown supply may begin. */
  firstFlyAge: Int32Array;
  /** Age at which the keeper can tell a cup's yield: two fifths of the flies are out. */
  revealAge: Int32Array;
  founderFromAge: Float64Array;
  founderUntilAge: Float64Array;
  spentAge: Int32Array;
  /** Flies expected of one cup in all. */
  totalExpected: Float64Array;
}

/** Days on the way before a delivery, whose flies arrive in the cup. */
export const transitDays = 2;

/** Nodes and weights of a normal distribution, five points (Gauss-Hermite). */
const paceNodes = [-2.856970014, -1.35562618, 0, 1.35562618, 2.856970014];
const paceWeights = [0.011257411, 0.222075922, 0.533333333, 0.222075922, 0.011257411];

/** The table of a strain: `days` home curves, the bought kinds, and the existing cups in order. */
export function curveTable(strain: StrainProblem, days: number, arrivalLossShare: number): CurveTable {
  const { bought, existing } = strain;
  const list: CupCurve[] = [];
  for (let d = 0; d < days; d++) list.push(strain.curves[Math.min(d, strain.curves.length - 1)] as CupCurve);
  list.push(bought.producing, bought.young, ...existing.map((cup) => cup.curve));
  const table = emptyTable(list, days);
  list.forEach((curve, index) => fillNominal(table, curve, index));
  for (let index = 0; index < days + 2; index++) {
    const arrivalAge = index === days ? bought.producingAgeDays : index === days + 1 ? bought.youngAgeDays : 0;
    fillExpected(table, strain, index, arrivalAge, index < days ? 1 : 1 - arrivalLossShare);
  }
  existing.forEach((_, k) => fillExisting(table, strain, k));
  for (let index = 0; index < list.length; index++) fillAges(table, index);
  return table;
}

/** Flies emerged before physiological age `x`, linear between whole ages. */
export function cumulativeAt(table: CurveTable, curve: number, x: number): number {
  if (x <= 0) return 0;
  const base = curve * table.stride;
  const last = table.stride - 1;
  if (x >= last) return table.cumulative[base + last] as number;
  const at = Math.floor(x);
  const low = table.cumulative[base + at] as number;
  return low + (x - at) * ((table.cumulative[base + at + 1] as number) - low);
}

function emptyTable(list: CupCurve[], days: number): CurveTable {
  const stride = Math.max(...list.map((c) => Math.max(c.emergedByAge.length, c.spentAge))) + 4;
  const n = list.length;
  const flat = () => new Float64Array(n * stride);
  return {
    stride,
    curves: n,
    producing: days,
    young: days + 1,
    firstExisting: days + 2,
    cumulative: flat(),
    barrenAge: new Float64Array(n),
    expected: flat(),
    expectedBefore: flat(),
    decayed: flat(),
    cupVariance: flat(),
    silentUntilAge: new Int32Array(n),
    effectAge: new Int32Array(n),
    firstFlyAge: new Int32Array(n),
    revealAge: new Int32Array(n),
    founderFromAge: Float64Array.from(list, (c) => c.founderFromAge),
    founderUntilAge: Float64Array.from(list, (c) => c.founderUntilAge),
    spentAge: Int32Array.from(list, (c) => Math.round(c.spentAge)),
    totalExpected: new Float64Array(n),
  };
}

function fillNominal(table: CurveTable, curve: CupCurve, index: number): void {
  const base = index * table.stride;
  let sum = 0;
  for (let a = 0; a < table.stride; a++) {
    table.cumulative[base + a] = sum;
    if (sum === 0) table.barrenAge[index] = a;
    sum += curve.emergedByAge[a] ?? 0;
  }
}

/** Expectation and variance of a cup that is still to be started, by quadrature over its pace. */
function fillExpected(
  table: CurveTable,
  strain: StrainProblem,
  index: number,
  arrivalAge: number,
  arriving: number,
): void {
  const u = strain.uncertainty;
  const base = index * table.stride;
  const paceSd = Math.hypot(u.paceLogSd.session, u.paceLogSd.cup);
  const yieldMean = arriving * Math.exp(0.5 * (u.yieldLogSd.session ** 2 + u.yieldLogSd.cup ** 2));
  const cupSpread = Math.exp(u.yieldLogSd.cup ** 2);
  const held = new Float64Array(paceNodes.length);
  let heldMean = 0;
  for (let a = arrivalAge; a <= Math.min(table.spentAge[index] as number, table.stride - 1); a++) {
    const alive = aliveShare(u.failure, u.failure.perCup + u.failure.perSession, a);
    let mean = 0;
    let second = 0;
    for (let k = 0; k < paceNodes.length; k++) {
      const pace = Math.exp(paceSd * (paceNodes[k] as number));
      const since = a === arrivalAge ? Math.max(0, a - (arrivalAge > 0 ? transitDays : 0)) : a;
      const flies = cumulativeAt(table, index, (a + 1) * pace) - cumulativeAt(table, index, since * pace);
      held[k] = (held[k] as number) * strain.adultDailySurvival + flies;
      mean += (paceWeights[k] as number) * flies;
      second += (paceWeights[k] as number) * (held[k] as number) ** 2;
    }
    heldMean = heldMean * strain.adultDailySurvival + mean * alive * yieldMean;
    table.expected[base + a] = mean * alive * yieldMean;
    table.decayed[base + a] = heldMean;
    table.cupVariance[base + a] = Math.max(0, second * yieldMean ** 2 * cupSpread * alive - heldMean ** 2);
  }
}

/**
 * Flies expected of a cup during age `a`, over what sessions and cups draw apart, when the household's pace
 * is `householdPace` and its yield nominal. From `arrivalAge` on; above 0 the cup is delivered then.
 */
export function expectedEmergence(
  table: CurveTable,
  strain: StrainProblem,
  index: number,
  a: number,
  arrivalAge: number,
  householdPace: number,
): number {
  const u = strain.uncertainty;
  const paceSd = Math.hypot(u.paceLogSd.session, u.paceLogSd.cup);
  const since = a === arrivalAge && arrivalAge > 0 ? Math.max(0, a - transitDays) : a;
  let mean = 0;
  for (let k = 0; k < paceNodes.length; k++) {
    const pace = householdPace * Math.exp(paceSd * (paceNodes[k] as number));
    const flies = cumulativeAt(table, index, (a + 1) * pace) - cumulativeAt(table, index, since * pace);
    mean += (paceWeights[k] as number) * flies;
  }
  const alive = aliveShare(u.failure, u.failure.perCup + u.failure.perSession, a);
  return mean * alive * Math.exp(0.5 * (u.yieldLogSd.session ** 2 + u.yieldLogSd.cup ** 2));
}

/** Share of cups that have not failed when their flies of age `a` emerge. */
export function aliveShare(failure: CupUncertainty['failure'], chance: number, a: number): number {
  return 1 - chance * risingAt(failure.failedBefore, a);
}

/** Expectation and variance of a living cup from its draws (at most 128 of them). */
function fillExisting(table: CurveTable, strain: StrainProblem, k: number): void {
  const cup = strain.existing[k];
  if (cup === undefined) return;
  const index = table.firstExisting + k;
  const base = index * table.stride;
  const count = Math.min(128, cup.draws.logPace.length);
  const held = new Float64Array(count);
  for (let a = cup.ageDays; a <= Math.min(table.spentAge[index] as number, table.stride - 1); a++) {
    let sum = 0;
    let heldSum = 0;
    let squares = 0;
    for (let s = 0; s < count; s++) {
      const failAge = cup.draws.endAge[s] as number;
      const left = a < failAge ? 1 : leftOf(cup, s);
      const flies = left > 0 ? left * drawnEmergence(table, cup.draws, index, a, s) : 0;
      const before = a < failAge || a - 1 >= failAge ? (held[s] as number) : left * (held[s] as number);
      held[s] = left > 0 ? before * strain.adultDailySurvival + flies : 0;
      sum += flies;
      heldSum += held[s] as number;
      squares += (held[s] as number) ** 2;
    }
    table.expected[base + a] = sum / count;
    table.decayed[base + a] = heldSum / count;
    table.cupVariance[base + a] = Math.max(0, squares / count - (heldSum / count) ** 2);
  }
}

/** Share of the cups that a living one stands for which its failing leaves. */
function leftOf({ draws: { failShare } }: ExistingCup, s: number): number {
  return failShare ? 1 - (failShare[s] as number) : 0;
}

function drawnEmergence(
  table: CurveTable,
  draws: { logPace: Float64Array; logYield: Float64Array },
  index: number,
  a: number,
  s: number,
): number {
  const pace = Math.exp(draws.logPace[s] as number);
  const flies = cumulativeAt(table, index, (a + 1) * pace) - cumulativeAt(table, index, a * pace);
  return flies * Math.exp(draws.logYield[s] as number);
}

function fillAges(table: CurveTable, index: number): void {
  const base = index * table.stride;
  let total = 0;
  for (let a = 0; a < table.stride; a++) {
    if (total === 0) table.silentUntilAge[index] = a;
    table.expectedBefore[base + a] = total;
    total += table.expected[base + a] as number;
  }
  table.totalExpected[index] = total;
  table.firstFlyAge[index] = ageReaching(table, base, Math.min(1, total / 4));
  table.effectAge[index] = ageReaching(table, base, total * 0.25);
  table.revealAge[index] = ageReaching(table, base, total * 0.4);
}

function ageReaching(table: CurveTable, base: number, flies: number): number {
  let sum = 0;
  for (let a = 0; a < table.stride; a++) {
    sum += table.expected[base + a] as number;
    if (sum > 0 && sum >= flies) return a;
  }
  return table.stride - 1;
}
