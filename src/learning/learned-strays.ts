/**
 * How far this household's cups stray from the books' curve, learned from how well each note is foretold
 * by the notes before it. It widens forecasts only: what is believed of paces and yields rests on the
 * prior's discrepancy (a cut, so that a bad curve cannot pass for a careless keeper, nor the other way).
 */
import type { RandomStream } from '../foundation/index.ts';
import type { ChainSnapshot } from './chain-snapshot.ts';
import type { TableContext } from './cup-table.ts';
import type { CupEvidence } from './evidence.ts';
import type { KeeperSetting } from './keeper-settings.ts';
import type { FullPrior } from './priors.ts';
import { drawIndex } from './spread.ts';
import { type StockEvent, stockEvents } from './stock-events.ts';
import { type Gaps, gapsBetween, StockFilter, type StockState, type Strays } from './stock-filter.ts';
import { warpedEmergence } from './warped-emergence.ts';

/** Factors on the prior's discrepancies. */
const yieldFactors = [0.5, 0.71, 1, 1.41, 2, 2.83];
const paceFactors = [0.5, 1, 2, 3, 4];
/** The newest cups with notes speak; older ones were of another season. */
const mostCups = 30;
/** Step in log pace by which the curve is moved to see what timing does. */
const paceStep = 0.02;

/** Weights over the pairs of discrepancies. */
export interface LearnedStrays {
  options: Strays[];
  weights: Float64Array;
}

/** Posterior of the discrepancies, averaged over the snapshots. */
export function learnedStrays(
  cups: readonly CupEvidence[],
  context: TableContext,
  snapshots: readonly ChainSnapshot[],
): LearnedStrays {
  const options = strayOptions(context.prior);
  const noted = cups
    .map((cup, index) => ({ cup, index, events: stockEvents(cup, context.taps) }))
    .filter(({ events }) => events.filter(tells).length > 1)
    .sort((a, b) => b.cup.session - a.cup.session || a.index - b.index)
    .slice(0, mostCups);
  const weights = new Float64Array(options.length);
  for (const snapshot of snapshots) {
    const logs = options.map((option) => option.logPrior);
    for (const each of noted) addLikelihoods(logs, options, each, context, snapshot);
    const greatest = Math.max(...logs);
    const total = logs.reduce((sum, log) => sum + Math.exp(log - greatest), 0);
    logs.forEach((log, k) => {
      weights[k] = (weights[k] as number) + Math.exp(log - greatest) / total / snapshots.length;
    });
  }
  return { options, weights };
}

/** One pair of discrepancies. */
export function drawStrays({ options, weights }: LearnedStrays, random: RandomStream): Strays {
  return options[drawIndex(weights, random.uniform())] as Strays;
}

function strayOptions(prior: FullPrior): (Strays & { logPrior: number })[] {
  const logPrior = (factor: number) =>
    factor === 1 ? 0 : -0.5 * (Math.log(factor) / Math.max(1e-9, prior.discrepancyLogSd)) ** 2;
  return yieldFactors.flatMap((y) =>
    paceFactors.map((p) => ({
      yieldSd: y * prior.discrepancySd,
      paceSd: p * prior.paceDiscrepancySd,
      logPrior: logPrior(y) + logPrior(p),
    })),
  );
}

/** Only what follows an earlier note can be foretold by it. */
function tells(event: StockEvent): boolean {
  return event.kind === 'count' || event.kind === 'word' || (event.kind === 'take' && event.emptied);
}

function addLikelihoods(
  logs: number[],
  options: readonly Strays[],
  { cup, index, events }: { cup: CupEvidence; index: number; events: StockEvent[] },
  context: TableContext,
  snapshot: ChainSnapshot,
): void {
  const setting = context.settings[snapshot.setting] as KeeperSetting;
  const gaps = timedGaps(cup, events, snapshot.cupPace[index] as number, context.survival);
  const yieldFactor = Math.exp(snapshot.cupYield[index] as number);
  const end: StockState = { z: 0, w: 0 };
  options.forEach((strays, k) => {
    const filter = new StockFilter(context.prior, setting, strays);
    logs[k] = (logs[k] as number) + filter.run(events, gaps, yieldFactor, end);
  });
}

/** Gaps with what a change of pace does to each. */
export function timedGaps(cup: CupEvidence, events: readonly StockEvent[], logPace: number, survival: number): Gaps {
  const at = (pace: number) =>
    gapsBetween(events, warpedEmergence(cup.emergedByAge, pace, cup.ageDays), survival, cup.ageDays);
  const [slower, quicker] = [at(logPace - paceStep), at(logPace + paceStep)];
  const arrivedByPace = quicker.arrived.map((flies, i) => (flies - (slower.arrived[i] as number)) / (2 * paceStep));
  return { ...at(logPace), arrivedByPace };
}
