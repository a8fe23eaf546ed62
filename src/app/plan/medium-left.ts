/** Medium of batches that still keep on a day, less what cups were filled from them. */
import type { Day } from '../../foundation/index.ts';
import type { Facts } from '../../logbook/index.ts';

/** Grams. */
export function mediumLeftG({ batches, cultures }: Facts, date: Day): number {
  const good = batches.filter((b) => b.goodUntil !== null && b.goodUntil >= date);
  return good.reduce((sum, batch) => {
    const used = cultures.filter((c) => c.batch === batch.batch).reduce((g, c) => g + c.mediumMassG, 0);
    return sum + Math.max(0, batch.massG - used);
  }, 0);
}
