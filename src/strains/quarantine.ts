/** How long a bought-in cup, and what comes of it, stays apart. */
import { type DayNumber, type Said, said } from '../foundation/index.ts';

export interface QuarantineStep {
  onDay: DayNumber;
  act: Said;
}

export interface Quarantine {
  until: DayNumber;
  steps: QuarantineStep[];
}

/**
 * Two to three generations apart (source key fly-lab-quarantine), each begun by carrying flies over to a
 * fresh cup; the last check frees the line. Throws RangeError unless 1 to 6 generations of 1 day or more.
 */
export function quarantine(arrivedOn: DayNumber, generationDays: number, generations = 2): Quarantine {
  if (!(Number.isInteger(generations) && generations >= 1 && generations <= 6))
    throw new RangeError(`quarantine: generations ${generations} is not 1 to 6`);
  if (!(generationDays >= 1)) throw new RangeError(`quarantine: generationDays ${generationDays} is not 1 or more`);
  const later = (n: number) => arrivedOn + Math.ceil(n * generationDays);
  const steps: QuarantineStep[] = [
    {
      onDay: arrivedOn,
      act: said`Stand it away from the others, on a dry tray. Handle it last, then wash hands and tools.`,
    },
  ];
  for (let n = 1; n < generations; n++)
    steps.push({
      onDay: later(n),
      act: said`Look for mites, mould and winged flies; carry clean flies over to a fresh cup (generation ${n}), freeze the old one.`,
    });
  steps.push({ onDay: later(generations), act: said`Look once more. Clean: it may join the others.` });
  return { until: later(generations), steps };
}
