/**
 * Households by seed for benches and simulations: strains, needs that grow and jump, free weekdays,
 * pipelines of living cups. The cup curves here are plain synthetic ones (a delayed gamma-like bloom),
 * so that the planner can be tried without the biology.
 */
import { counterUniform, randomStream } from '../src/foundation/index.ts';
import type { CupCurve, CupUncertainty, ExistingCup, PlanningProblem, StrainProblem } from '../src/planner/problem.ts';

export interface HouseholdShape {
  seed: number;
  days?: number;
  /** Mean flies a day, by strain. */
  needs: number[];
  /** Weekdays with time, 0 = the weekday of today. */
  workWeekdays: number[];
  serviceLevel?: number;
  /** Cups living today per strain; 0 = start from nothing. */
  living?: number | null;
  /** Growth of need to a multiple of its start over the horizon, by strain. */
  growth?: number;
}

const maxAge = 64;

/** A cup that blooms from `first` days on for `bloom` days and gives `total` flies. */
export function syntheticCurve(total: number, first: number, bloom: number, spent: number): CupCurve {
  const emergedByAge = new Float32Array(maxAge);
  let sum = 0;
  for (let a = 0; a < maxAge; a++) {
    const x = (a + 0.5 - first) / bloom;
    const density = x > 0 ? x * x * Math.exp(-2.6 * x) : 0;
    emergedByAge[a] = a < spent ? density : 0;
    sum += emergedByAge[a] as number;
  }
  for (let a = 0; a < maxAge; a++) emergedByAge[a] = ((emergedByAge[a] as number) * total) / sum;
  return { emergedByAge, founderFromAge: first + 3, founderUntilAge: first + 3 + 1.2 * bloom, spentAge: spent };
}

/** Failing ages that are even between two. */
export function evenBetween(from: number, until: number): Float64Array {
  return Float64Array.from({ length: until + 1 }, (_, age) => Math.max(0, (age - from) / (until - from)));
}

export const ordinaryUncertainty: CupUncertainty = {
  yieldLogSd: { household: 0.1, session: 0.15, cup: 0.3 },
  paceLogSd: { household: 0.03, session: 0.02, cup: 0.03 },
  failure: { perCup: 0.06, perSession: 0.015, failedBefore: evenBetween(4, 28) },
  countLogSd: 0.35,
  failureNoticedDays: 4,
  householdDraws: { logYield: new Float64Array(0), logPace: new Float64Array(0) },
};

export function syntheticProblem(shape: HouseholdShape): PlanningProblem {
  const days = shape.days ?? 182;
  const runOutDays = 49;
  const total = days + runOutDays;
  const marks = (weekdays: number[]) =>
    Uint8Array.from({ length: total }, (_, t) => (weekdays.includes(t % 7) ? 1 : 0));
  return {
    seed: shape.seed,
    days,
    runOutDays,
    workDays: marks(shape.workWeekdays),
    maxCupsPerSession: 40,
    shelfCups: 400,
    serviceLevel: shape.serviceLevel ?? 0.99,
    purchase: { leadDays: 3, deliveryDays: marks([2, 4]), quarantineDays: 14, arrivalLossShare: 0 },
    weights: { perCup: 1, perSession: 0.5, perBoughtCup: 4 },
    strains: shape.needs.map((need, k) => syntheticStrain(shape, need, k, total)),
  };
}

function syntheticStrain(shape: HouseholdShape, need: number, k: number, total: number): StrainProblem {
  const slow = k % 2 === 1;
  const first = slow ? 19 : 11.5;
  const make = (day: number) =>
    syntheticCurve(slow ? 420 : 700, first - Math.sin((2 * Math.PI * day) / 365), slow ? 8 : 6, slow ? 46 : 32);
  const curves = Array.from({ length: total }, (_, day) => make(day));
  const growth = shape.growth ?? 1;
  const wanted = Float64Array.from({ length: total }, (_, t) => need * (1 + ((growth - 1) * Math.min(t, 182)) / 182));
  const strain: StrainProblem = {
    strain: slow ? 'slow' : 'quick',
    wantedFlies: wanted,
    needLogSd: 0,
    orderedFlies: new Float64Array(total),
    curves,
    foundersPerCup: 50,
    adultDailySurvival: 0.93,
    existing: [],
    bought: {
      producing: make(0),
      producingAgeDays: Math.round(first + 2),
      young: make(0),
      youngAgeDays: 4,
    },
    uncertainty: ordinaryUncertainty,
  };
  strain.existing = pipeline(shape, strain, k, need);
  return strain;
}

/** Cups started on the work days of the past weeks at the rate that the need asks. */
function pipeline(shape: HouseholdShape, strain: StrainProblem, k: number, need: number): ExistingCup[] {
  if (shape.living === 0) return [];
  const curve = strain.curves[0] as CupCurve;
  const total = curve.emergedByAge.reduce((a, b) => a + b, 0);
  const perWeek = (need * 7 * 1.45) / (total * 0.9);
  const cups: ExistingCup[] = [];
  let owed = 0.5;
  for (let ago = curve.spentAge - 1; ago >= 1; ago--) {
    if (!shape.workWeekdays.includes(((-ago % 7) + 7) % 7)) continue;
    owed += perWeek / shape.workWeekdays.length;
    for (; owed >= 1; owed--) cups.push(livingCup(shape.seed, strain, k, cups.length, ago));
  }
  return cups;
}

function livingCup(seed: number, strain: StrainProblem, k: number, number: number, ageDays: number): ExistingCup {
  const u = strain.uncertainty;
  const curve = strain.curves[0] as CupCurve;
  const stream = randomStream(seed, 'living', k, number);
  const size = 512;
  const spread = Math.hypot(u.yieldLogSd.session, u.yieldLogSd.cup);
  const normals = (sd: number) => Float64Array.from({ length: size }, () => sd * stream.normal());
  const logYield = normals(spread);
  const lastAge = 28;
  const failing = u.failure.perCup * Math.max(0, 1 - ageDays / lastAge);
  const endAge = Float64Array.from({ length: size }, (_, s) => {
    const v = counterUniform(seed, k, number, s);
    return v < failing ? ageDays + (v / failing) * (lastAge - ageDays) : curve.spentAge;
  });
  let held = 0;
  for (let a = 0; a < ageDays; a++) held = held * 0.75 + (curve.emergedByAge[a] as number) * 0.5;
  return {
    id: `${strain.strain}-${number + 1}`,
    ageDays,
    curve,
    foundersFromDay: 0,
    draws: {
      logPace: normals(Math.hypot(u.paceLogSd.session, u.paceLogSd.cup)),
      logYield,
      endAge,
      fliesNow: logYield.map((y) => held * Math.exp(y + 0.25 * stream.normal())),
    },
  };
}
