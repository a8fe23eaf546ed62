/** How widely the animals of one cohort are spread, and how many of them are still in a stage. */
import type { Cup } from './cup.ts';
import { pointsPerLevel, pointsPerUnit } from './stage-tables.ts';

const lastPlace = pointsPerLevel - 2;
/** Eighths of the strain's squared CV that crowding met has added to it. */
export function widening(cup: Cup, met: number): number {
  return (cup.crowdedVariance * met) / (met + 1);
}

/** Share of a cohort still in a stage at clock `x`, from the table whose row begins at `row`. */
export function survivors(table: Float32Array, row: number, x: number): number {
  const place = x * pointsPerUnit;
  if (place > lastPlace) return 0;
  const i = place | 0;
  const low = table[row + i] as number;
  return low + (place - i) * ((table[row + i + 1] as number) - low);
}
