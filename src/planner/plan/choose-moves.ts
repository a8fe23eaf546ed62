/**
 * Which cups are worth carrying to a warmer or a cooler place today. Where some day ahead would be short if
 * nothing were bought, the carryings that bring most flies to such days are tried on simulated look-ahead, the
 * rule deciding everything later; the best is proposed when it is clearly cheaper or clearly safer, and then the next.
 */
import type { CupCurve, ExistingCup, PlanningProblem } from '../problem.ts';
import { grouped } from '../forecast/cup-groups.ts';
import { meanOf } from '../forecast/strain-world.ts';
import type { PurchaseMode } from './buying.ts';
import type { PolicyParameters } from './feedback-policy.ts';
import { type MoveTrial, moveTrial } from './move-trial.ts';
import { isClearlyLess, pairedDifference } from './paired-difference.ts';
import { withFirstParcel } from './first-parcel.ts';

/** What a cup would do from today on in another place. */
export interface Carrying {
  strain: string;
  cup: string;
  place: string;
  curve: CupCurve;
}

export interface ChosenMove {
  strain: string;
  cup: string;
  place: string;
  /** The likeliest short day were nothing bought, its chance, and that of the worst day with all cups carried. */
  shortDay: number;
  riskWithout: number;
  riskWith: number;
  /** Cups that need not be bought with all cups carried, mean over the worlds. */
  boughtFewer: number;
}

/** Where a day ahead would be short if nothing were bought. */
export interface Lack {
  strain: string;
  /** The likeliest day, and its chance. */
  day: number;
  risk: number;
  /** Chance of a short day, by day from today. */
  riskByDay: Float64Array;
}

/** Days ahead on which a lack is looked for: a living cup's flies are out by then. */
const lackDays = 35;
/** Share of the allowed risk beyond which a day is a lack. */
const riskShare = 0.6;
const mostTried = 3;
/** A move is a keeper's work: it has to save a quarter of a cup, or a hundredth of a short day. */
const leastSaving = 0.25;
const leastShortDays = 0.01;
/** Share of the short days, nothing bought, that a move has to spare before its price is looked at. */
const leastSpared = 0.1;

/** Strains that would be short on a day of the coming weeks if nothing were bought. */
export function lacksAhead(problem: PlanningProblem, parameters: PolicyParameters): Lack[] {
  return lacksIn(problem, moveTrial(problem, parameters, 'none'));
}

function lacksIn(problem: PlanningProblem, trial: MoveTrial): Lack[] {
  const allowed = riskShare * (1 - problem.serviceLevel);
  return problem.strains.flatMap(({ strain }, k) => {
    const riskByDay = (trial.risk[k] as Float64Array).slice(0, lackDays);
    const risk = Math.max(0, ...riskByDay);
    return risk > allowed ? [{ strain, day: riskByDay.indexOf(risk), risk, riskByDay }] : [];
  });
}

/** The problem with cups carried: they do from today on what they would do there. */
export function withCarried(problem: PlanningProblem, carried: readonly Carrying[]): PlanningProblem {
  if (carried.length === 0) return problem;
  const curveOf = (strain: string, cup: string) => carried.find((c) => c.strain === strain && c.cup === cup)?.curve;
  const strains = problem.strains.map((strain) => ({
    ...strain,
    existing: strain.existing.map((cup) => ({ ...cup, curve: curveOf(strain.strain, cup.id) ?? cup.curve })),
  }));
  return { ...problem, strains };
}

/**
 * The moves that look best under the policy as it is tuned now.
 * @param most how many cups of a strain may be carried.
 */
export function chooseMoves(
  problem: PlanningProblem,
  parameters: PolicyParameters,
  lacks: readonly Lack[],
  carryings: readonly Carrying[],
  most: (strain: string) => number,
  mode: PurchaseMode = 'any',
): ChosenMove[] {
  let best: State = { carried: [], parameters, trial: null, moves: [] };
  for (const lack of lacks) {
    const k = problem.strains.findIndex(({ strain }) => strain === lack.strain);
    let open = mostPromising(problem, lack, carryings);
    for (let n = 0; n < most(lack.strain) && open.length > 0; n++) {
      const next = bestOf(problem, lack, k, best, open, mode);
      if (!next) break;
      best = withRisk(next, lack);
      open = open.filter(({ cup }) => !next.carried.some((done) => done.cup === cup));
    }
  }
  return best.moves;
}

/** A household and the policy tuned for it. */
export interface Tuned {
  problem: PlanningProblem;
  parameters: PolicyParameters;
}

/** Whether moves pay when the policy is tuned to the household with its cups carried; the moves with what they spare, or none. */
export function movesThatPay(
  moves: ChosenMove[],
  before: Tuned,
  after: Tuned,
  mode: PurchaseMode = 'any',
): ChosenMove[] {
  const [asIs, moved] = [before, after].map(({ problem, parameters }) => moveTrial(problem, parameters, mode)) as [
    MoveTrial,
    MoveTrial,
  ];
  if (!pays(before.problem, moved, asIs)) return [];
  const boughtFewer = -pairedDifference(moved.bought, asIs.bought).mean;
  return moves.map((move) => ({ ...move, boughtFewer }));
}

interface State {
  carried: Carrying[];
  parameters: PolicyParameters;
  /** With purchases; null until it was needed. */
  trial: MoveTrial | null;
  moves: ChosenMove[];
}

/** The carrying, among those tried, that spares most short days, if it pays. */
function bestOf(
  problem: PlanningProblem,
  lack: Lack,
  k: number,
  from: State,
  open: readonly Carrying[],
  mode: PurchaseMode,
): State | null {
  const alone = (carried: Carrying[]) => moveTrial(withCarried(problem, carried), from.parameters, 'none');
  const without = alone(from.carried);
  const riskWith = (trial: MoveTrial) => Math.max(0, ...(trial.risk[k] as Float64Array).subarray(0, lackDays));
  let best: { carrying: Carrying; trial: MoveTrial } | null = null;
  for (const carrying of open) {
    const trial = alone([...from.carried, carrying]);
    if (total(trial.shortDays) < total((best?.trial ?? without).shortDays)) best = { carrying, trial };
  }
  if (!best || total(best.trial.shortDays) > (1 - leastSpared) * total(without.shortDays)) return null;
  const carried = [...from.carried, best.carrying];
  const before = from.trial ?? moveTrial(withCarried(problem, from.carried), from.parameters, mode);
  const moved = withCarried(problem, carried);
  const { parameters } = withFirstParcel(grouped(moved), from.parameters, mode);
  const trial = moveTrial(moved, parameters, mode);
  if (!pays(problem, trial, before)) return null;
  const { strain, cup, place } = best.carrying;
  const told = { shortDay: lack.day, riskWithout: lack.risk, riskWith: riskWith(best.trial), boughtFewer: 0 };
  return { carried, parameters, trial, moves: [...from.moves, { strain, cup, place, ...told }] };
}

/** What all moves of the strain together leave of its risk, with each of them. */
function withRisk(state: State, { strain }: Lack): State {
  const riskWith = state.moves.at(-1)?.riskWith ?? 0;
  return { ...state, moves: state.moves.map((move) => (move.strain === strain ? { ...move, riskWith } : move)) };
}

/** Clearly cheaper and no less safe, or clearly safer and no dearer. */
function pays({ weights, serviceLevel }: PlanningProblem, after: MoveTrial, before: MoveTrial): boolean {
  const cost = pairedDifference(after.cost, before.cost);
  const short = pairedDifference(after.shortDays, before.shortDays);
  const worst = ({ risk }: MoveTrial) => Math.max(...risk.map((byDay) => Math.max(0, ...byDay)));
  const safe = worst(after) <= Math.max(worst(before), riskShare * (1 - serviceLevel));
  const cheaper = isClearlyLess(after.cost, before.cost) && cost.mean <= -leastSaving * weights.perCup;
  const safer = isClearlyLess(after.shortDays, before.shortDays) && short.mean <= -leastShortDays;
  return (cheaper && safe) || (safer && cost.mean <= 2 * cost.standardError);
}

/** The few carryings of the strain that bring most flies to the days of its lack. */
function mostPromising(problem: PlanningProblem, lack: Lack, carryings: readonly Carrying[]): Carrying[] {
  const strain = problem.strains.find((one) => one.strain === lack.strain);
  const gained = carryings.flatMap((carrying) => {
    const cup = strain?.existing.find(({ id }) => carrying.strain === lack.strain && id === carrying.cup);
    if (!strain || !cup) return [];
    const held = (curve: CupCurve) => heldOnLackDays(cup, curve, strain.adultDailySurvival, lack.riskByDay);
    return [{ carrying, flies: held(carrying.curve) - held(cup.curve) }];
  });
  return gained
    .filter(({ flies }) => flies > 0)
    .sort((a, b) => b.flies - a.flies)
    .slice(0, mostTried)
    .map(({ carrying }) => carrying);
}

/** Flies that the cup would hold, none taken, summed over the days with the chance that they are wanted. */
function heldOnLackDays(cup: ExistingCup, curve: CupCurve, survival: number, riskByDay: Float64Array): number {
  const pace = Math.exp(meanOf(cup.draws.logPace, (x) => x, 0));
  const yields = meanOf(cup.draws.logYield, Math.exp, 1);
  let held = meanOf(cup.draws.fliesNow, (x) => x, 0);
  let sum = 0;
  for (let t = 0; t < riskByDay.length && cup.ageDays + t <= curve.spentAge; t++) {
    const age = cup.ageDays + t;
    const emerged = emergedBy(curve, (age + 1) * pace) - emergedBy(curve, age * pace);
    held = (t > 0 ? held * survival : held) + yields * emerged;
    sum += held * (riskByDay[t] as number);
  }
  return sum;
}

/** Nominal flies before age `x`, linear between whole ages. */
function emergedBy({ emergedByAge }: CupCurve, x: number): number {
  const whole = Math.floor(x);
  let sum = (x - whole) * (emergedByAge[whole] ?? 0);
  for (let a = 0; a < Math.min(whole, emergedByAge.length); a++) sum += emergedByAge[a] as number;
  return sum;
}

function total(values: Float64Array): number {
  return values.reduce((sum, x) => sum + x, 0);
}
