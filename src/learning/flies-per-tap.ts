/** Flies that one tap gives, learned from the takes where both taps and flies were written. */
import type { StrainEvidence } from './evidence.ts';
import { tapPrior } from './priors.ts';

export interface FliesPerTap {
  /** Median flies per tap, and the log sd of what one more take's taps give. */
  median: number;
  logSd: number;
  /** Log sd of the median itself. */
  medianLogSd: number;
  /** Takes that it was learned from. */
  takes: number;
}

/** Normal conjugate update of the log of flies per tap; zero takes give the prior. */
export function fliesPerTap(strain: StrainEvidence): FliesPerTap {
  const logs = strain.cups.flatMap((cup) =>
    cup.takes
      .filter((t) => !t.presumed && (t.taps ?? 0) > 0 && (t.flies ?? 0) > 0)
      .map((t) => Math.log((t.flies as number) / (t.taps as number))),
  );
  const each = 1 / tapPrior.eachTakeLogSd ** 2;
  const precision = 1 / tapPrior.logSd ** 2 + logs.length * each;
  const sum = logs.reduce((a, b) => a + b, 0);
  const mean = (Math.log(tapPrior.medianFlies) / tapPrior.logSd ** 2 + each * sum) / precision;
  return {
    median: Math.exp(mean),
    medianLogSd: Math.sqrt(1 / precision),
    logSd: Math.hypot(Math.sqrt(1 / precision), tapPrior.eachTakeLogSd),
    takes: logs.length,
  };
}
