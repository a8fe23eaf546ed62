/** Which of the stage tables' levels a cohort's spread asks for. */
import { levelRatio, levels } from './stage-tables.ts';

/** Squared CV over the strain's own, less one, in eighths, to the table's level. */
const levelByVariance = Uint8Array.from({ length: 96 }, (_, i) =>
  Math.min(levels - 1, Math.round((0.5 * Math.log(1 + i / 8)) / Math.log(levelRatio))),
);

/** The table's level for a spread: the squared CV over the strain's own, less one, in eighths. */
export function levelAt(spread: number): number {
  return levelByVariance[spread > 95 ? 95 : (spread + 0.5) | 0] as number;
}
