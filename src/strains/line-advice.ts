/** What to do for a line's vigour: when to refresh it, from which cups, and how many cups to keep back. */
import { type Said, said } from '../foundation/index.ts';
import { generationsUntilLoss } from './effective-size.ts';
import type { Pedigree } from './pedigree.ts';
import { percentSaid } from './percent-said.ts';

export interface RefreshAdvice {
  /** Share lost so far and a generation on average. */
  loss: number;
  effectiveSize: number;
  verdict: 'fine' | 'more founders' | 'refresh';
  why: Said;
}

/**
 * A line that keeps fewer than `enoughSize` effective founders loses more than 1 % a generation (the rule of
 * 50, source key franklin-1980); refresh when `refreshLoss` of the variation is gone. Both can be changed.
 */
export function refreshAdvice(
  line: { loss: number; effectiveSize: number },
  { enoughSize = 50, refreshLoss = 0.2 }: { enoughSize?: number; refreshLoss?: number } = {},
): RefreshAdvice {
  const { loss, effectiveSize: size } = line;
  if (loss >= refreshLoss)
    return {
      ...line,
      verdict: 'refresh',
      why: said`${percentSaid(loss)} of its variation is gone: bring in flies of the same mutation from another line, after quarantine.`,
    };
  if (size >= enoughSize)
    return {
      ...line,
      verdict: 'fine',
      why: said`${percentSaid(loss)} of its variation is gone; ${Math.round(size)} effective founders keep the rest well.`,
    };
  const generationsTo = (share: number) => generationsUntilLoss(Math.max(1, size), share);
  const left = Math.max(0, Math.floor(generationsTo(refreshLoss) - generationsTo(Math.max(loss, 1e-9))));
  return {
    ...line,
    verdict: 'more founders',
    why: said`${percentSaid(loss)} of its variation is gone; with ${Math.round(size)} effective founders it is time to refresh in about ${left} generations.`,
  };
}

/** The pair of cups, of those given, whose flies are least related: the best parents of a joint cup. */
export function leastRelatedPair(
  cups: readonly string[],
  { coancestry }: Pick<Pedigree, 'coancestry'>,
): { pair: [string, string]; coancestry: number } | null {
  let best: { pair: [string, string]; coancestry: number } | null = null;
  cups.forEach((a, i) => {
    for (const b of cups.slice(i + 1)) {
      const value = coancestry(a, b);
      if (!best || value < best.coancestry) best = { pair: [a, b], coancestry: value };
    }
  });
  return best;
}

export interface BackupAdvice {
  /** Cups to keep back, or null when no number in one place is enough. */
  cups: number | null;
  /** Chance that all are lost, with that number (or with ten). */
  allLostChance: number;
  why: Said;
}

/**
 * Backup cups in one place so that losing all has at most the chance `risk`: shared + (1 - shared) own^n,
 * where a shared loss (heat, mites, one batch) takes all and each cup fails by itself with `own`.
 */
export function backupCups(own: number, shared: number, risk: number): BackupAdvice {
  for (const [name, chance] of Object.entries({ own, shared, risk }))
    if (!(chance >= 0 && chance < 1)) throw new RangeError(`backupCups: ${name} ${chance} is not from 0 to below 1`);
  const lost = (n: number) => shared + (1 - shared) * own ** n;
  for (let n = 1; n <= 10; n++)
    // A hair of rounding above the risk is not above it.
    if (lost(n) <= risk * (1 + 1e-9))
      return {
        cups: n,
        allLostChance: lost(n),
        why: said`${n} cups are lost together with chance ${percentSaid(lost(n))}.`,
      };
  return {
    cups: null,
    allLostChance: lost(10),
    why: said`No number of cups in one place is enough: keep one in another room, on another batch of medium, started on another day.`,
  };
}
