/**
 * How much a group is given from now on, against its ration as written: less where it leaves some, more where
 * its keeper really gives more and all is eaten. Nothing left alone is no reason to give more.
 */
import { type Appetite, type LeftOverWord, learnedAppetite } from './appetite.ts';

export interface RecordedFeeding {
  /** Flies given, to the whole group. */
  flies: number;
  /** Flies that the ration asked for on that day. */
  planned: number;
  /** Null when nobody wrote it. */
  leftOver: LeftOverWord | null;
}

export interface LearnedRation {
  /** Times the ration as written: 1 when nothing speaks for another. */
  factor: number;
  /** Sd of the factor's logarithm; 0 when nothing was learned. */
  logSd: number;
  /** Eaten at a feeding over the ration; null when no left-over was ever noted. */
  appetite: Appetite | null;
  /** Given over the ration, drawn towards 1. */
  given: number;
  /** Feedings on which left-overs were noted, and those with something left. */
  noted: number;
  withLeftOvers: number;
}

/** No learning takes a ration further from what the keeper wrote than this. */
export const learnedBounds = { low: 0.5, high: 1.5 };
/** Weight of the ration as written, in feedings. */
const writtenWeight = 6;
/** A feeding below this share of the ration was short of flies, not of hunger. */
const shortShare = 0.95;
const z90 = 1.645;

/**
 * The lesser of what they eat and what they are given, within `learnedBounds`. Feedings of less than the
 * ration with nothing left teach nothing: flies may have been short. Throws RangeError on a feeding of no
 * flies or with no plan.
 */
export function learnedRation(feedings: readonly RecordedFeeding[]): LearnedRation {
  for (const { flies, planned } of feedings)
    if (!(flies > 0 && planned > 0)) throw new RangeError(`learnedRation: ${flies} flies of ${planned} planned`);
  const noted = feedings.filter(({ leftOver }) => leftOver !== null);
  const appetite = noted.length > 0 ? appetiteOf(noted) : null;
  const given = givenRatio(feedings);
  const eaten = appetite ? appetite.p50 : 1;
  const wanted = appetite && eaten < given ? eaten : given;
  const factor = Math.min(learnedBounds.high, Math.max(learnedBounds.low, wanted));
  return {
    factor,
    logSd: appetite && eaten < given ? Math.log(appetite.p95 / appetite.p05) / (2 * z90) : 0,
    appetite,
    given,
    noted: noted.length,
    withLeftOvers: noted.filter(({ leftOver }) => leftOver !== 'none').length,
  };
}

/** In rations: each feeding is set against what was planned on its own day. */
function appetiteOf(noted: readonly RecordedFeeding[]): Appetite {
  return learnedAppetite(
    1,
    noted.map(({ flies, planned, leftOver }) => ({ flies: flies / planned, leftOver: leftOver ?? 'none' })),
  );
}

function givenRatio(feedings: readonly RecordedFeeding[]): number {
  const logs = feedings.map(({ flies, planned }) => Math.log(flies / planned)).filter((x) => x >= Math.log(shortShare));
  return Math.exp(logs.reduce((sum, log) => sum + log, 0) / (logs.length + writtenWeight));
}
