/**
 * Batches: mixed once, used until a day. Which batch a session takes from, what is left of each, and
 * which has gone past its day.
 */
import { addDays, type Day } from '../foundation/index.ts';

export interface Batch {
  batch: string;
  on: Day;
  recipe: string | null;
  massG: number;
  /** Last day on which it is used; null = no limit known. */
  goodUntil: Day | null;
}

export interface BatchLeft extends Batch {
  leftG: number;
  isPast: boolean;
}

export type BatchStorage = 'dry-closed' | 'wet-cold' | 'wet-room';

/** Days that a batch keeps: closed dry mix, medium at 4 to 8 C, medium at room temperature. Common practice. */
export const shelfLifeDays: Record<BatchStorage, number> = { 'dry-closed': 180, 'wet-cold': 14, 'wet-room': 2 };

/** Last day on which a batch made on `on` is used. */
export function goodUntil(on: Day, storage: BatchStorage): Day {
  return addDays(on, shelfLifeDays[storage]);
}

/** What is left of each batch on `on` after the given uses, the one to take from first at the top. */
export function batchesLeft(
  batches: readonly Batch[],
  uses: readonly { batch: string | null; massG: number }[],
  on: Day,
): BatchLeft[] {
  return batches
    .filter((b) => b.on <= on)
    .map((b) => ({ ...b, leftG: Math.max(0, b.massG - usedOf(b.batch, uses)), isPast: isPast(b, on) }))
    .sort((a, b) => order(a).localeCompare(order(b)));
}

/** Usable medium on `on`, g. */
export function usableMassG(left: readonly BatchLeft[]): number {
  return left.reduce((sum, b) => sum + (b.isPast ? 0 : b.leftG), 0);
}

function usedOf(batch: string, uses: readonly { batch: string | null; massG: number }[]): number {
  return uses.filter((u) => u.batch === batch).reduce((sum, u) => sum + u.massG, 0);
}

function isPast(batch: Batch, on: Day): boolean {
  return batch.goodUntil !== null && batch.goodUntil < on;
}

/** Soonest to spoil first; those without a day last. */
function order(batch: Batch): string {
  return `${batch.goodUntil ?? '9999'} ${batch.on} ${batch.batch}`;
}
