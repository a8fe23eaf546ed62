/**
 * The chance that a cup fails before its time, and that a whole session's cups do (one bad batch of
 * medium, mites). A cup that ran its course is one trial without failure; a living one counts for the
 * share of such cups' failures that it has behind it, so a shelf of young cups does not look like a row
 * of successes.
 */
import { type RandomStream, risingAt } from '../foundation/index.ts';
import type { CupEvidence } from './evidence.ts';
import type { FullPrior } from './priors.ts';

const cupPoints = 400;
const sessionPoints = 60;
/** Sessions are not believed to fail more often than this. */
const sessionReach = 0.3;

/** Posterior of both chances on a grid: cup x session. */
export interface FailurePosterior {
  cup: Float64Array;
  session: Float64Array;
  /** Running sum over cells, cup by cup. */
  running: Float64Array;
}

/** Only sessions of two cups or more can tell a session's failure from a cup's. */
export function failurePosterior(prior: FullPrior, cups: readonly CupEvidence[]): FailurePosterior {
  const sessions = sharedSessions(cups);
  const lost = sessions.filter((s) => s.every((c) => c.ended?.failed));
  const inLost = new Set(lost.flat());
  const cupLogs = betaLogs(prior.failure, cupPoints, 1);
  for (const cup of cups) if (!inLost.has(cup)) addCup(cupLogs, cup);
  const sessionLogs = betaLogs(prior.sessionFailure, sessionPoints, sessionReach);
  for (const session of sessions) if (!lost.includes(session)) addSurvival(sessionLogs, session);
  return combine(
    cupLogs,
    sessionLogs,
    lost.map((s) => s.length),
  );
}

function sharedSessions(cups: readonly CupEvidence[]): CupEvidence[][] {
  const bySession = new Map<number, CupEvidence[]>();
  for (const cup of cups) bySession.set(cup.session, [...(bySession.get(cup.session) ?? []), cup]);
  return [...bySession.values()].filter((s) => s.length > 1);
}

/** Middle of point `k`. */
function point(k: number, points: number, reach: number): number {
  return (reach * (k + 0.5)) / points;
}

function betaLogs(beta: { a: number; b: number }, points: number, reach: number): Float64Array {
  return Float64Array.from({ length: points }, (_, k) => {
    const p = point(k, points, reach);
    return (beta.a - 1) * Math.log(p) + (beta.b - 1) * Math.log(1 - p);
  });
}

function addCup(logs: Float64Array, cup: CupEvidence): void {
  for (let k = 0; k < logs.length; k++) {
    const p = point(k, logs.length, 1);
    logs[k] = (logs[k] as number) + (cup.ended?.failed ? Math.log(p) : Math.log(1 - p * lifeBehind(cup)));
  }
}

/** A session with a survivor did not fail, as far as it has lived. */
function addSurvival(logs: Float64Array, session: readonly CupEvidence[]): void {
  const lived = Math.max(...session.map((c) => (c.ended?.failed ? 0 : lifeBehind(c))));
  for (let k = 0; k < logs.length; k++) {
    logs[k] = (logs[k] as number) + Math.log(1 - point(k, logs.length, sessionReach) * lived);
  }
}

/** A session that lost all its `n` cups either failed as one or had `n` failures. */
function combine(cupLogs: Float64Array, sessionLogs: Float64Array, lost: number[]): FailurePosterior {
  const logs = new Float64Array(cupPoints * sessionPoints);
  for (let i = 0; i < logs.length; i++) {
    const c = Math.floor(i / sessionPoints);
    const s = i % sessionPoints;
    const p = point(c, cupPoints, 1);
    const q = point(s, sessionPoints, sessionReach);
    logs[i] = (cupLogs[c] as number) + (sessionLogs[s] as number);
    for (const n of lost) logs[i] = (logs[i] as number) + Math.log(q + (1 - q) * p ** n);
  }
  return marginals(logs);
}

function marginals(logs: Float64Array): FailurePosterior {
  const greatest = logs.reduce((a, b) => Math.max(a, b), -Infinity);
  const cup = new Float64Array(cupPoints);
  const session = new Float64Array(sessionPoints);
  const running = new Float64Array(logs.length);
  let sum = 0;
  for (let i = 0; i < logs.length; i++) {
    const weight = Math.exp((logs[i] as number) - greatest);
    const c = Math.floor(i / sessionPoints);
    cup[c] = (cup[c] as number) + weight;
    session[i % sessionPoints] = (session[i % sessionPoints] as number) + weight;
    running[i] = sum += weight;
  }
  return { cup, session, running };
}

/** Of the failures that cups like it meet in their life, the share that a cup of its age has behind it, 0 to 1. */
export function lifeBehind(cup: CupEvidence): number {
  if (cup.failedBefore) return risingAt(cup.failedBefore, cup.ageDays);
  return Math.min(1, Math.max(0, cup.ageDays / cup.spentAge));
}

/** Both chances, drawn together. */
export function drawFailure(posterior: FailurePosterior, random: RandomStream): { cup: number; session: number } {
  const { running } = posterior;
  const at = random.uniform() * (running[running.length - 1] as number);
  let low = 0;
  let high = running.length - 1;
  while (low < high) {
    const middle = (low + high) >> 1;
    if ((running[middle] as number) > at) high = middle;
    else low = middle + 1;
  }
  return {
    cup: (Math.floor(low / sessionPoints) + random.uniform()) / cupPoints,
    session: (((low % sessionPoints) + random.uniform()) / sessionPoints) * sessionReach,
  };
}

export interface ChanceSummary {
  mean: number;
  p05: number;
  p95: number;
}

/** Mean and 5 and 95 % points of the two chances. */
export function failureSummary(posterior: FailurePosterior): { cup: ChanceSummary; session: ChanceSummary } {
  return { cup: summary(posterior.cup, 1), session: summary(posterior.session, sessionReach) };
}

function summary(weights: Float64Array, reach: number): ChanceSummary {
  const total = weights.reduce((a, b) => a + b, 0);
  const mean = weights.reduce((sum, w, k) => sum + w * point(k, weights.length, reach), 0) / total;
  const at = (share: number) => quantile(weights, share * total, reach);
  return { mean, p05: at(0.05), p95: at(0.95) };
}

function quantile(weights: Float64Array, mass: number, reach: number): number {
  let left = mass;
  for (let k = 0; k < weights.length; k++) {
    const w = weights[k] as number;
    if (left < w) return (reach * (k + left / w)) / weights.length;
    left -= w;
  }
  return reach;
}
