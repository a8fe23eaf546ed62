/** Cups that are to be thrown out closed, and cups whose flies must not found others. */
import type { CultureFacts } from '../logbook/index.ts';

/** Mites or mould were seen in it: nothing is taken out of it any more, neither to feed nor to start. */
export function isSick({ seen }: CultureFacts): boolean {
  return seen.some(({ mites, mould }) => mites || mould);
}

/** Flies that can fly were seen in it: it feeds, and starts no other cup. */
export function hasWinged({ seen }: CultureFacts): boolean {
  return seen.some(({ winged }) => (winged ?? 0) > 0);
}
