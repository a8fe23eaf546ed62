/**
 * What a share of simulated worlds says of a chance. A thing that happened in none of n worlds may still
 * happen: its chance is below 3/n at 95 % confidence, the "rule of three" of Hanley and Lippman-Hand
 * (1983, JAMA 249:1743), which stands for 1 - 0.05^(1/n).
 */

export interface ChanceFromWorlds {
  /** The share itself, or the bound that the worlds leave. */
  share: number;
  /** Whether the chance is about `share`, or only known to be above or below it. */
  is: 'about' | 'above' | 'below';
}

/**
 * @param share of worlds in which it happened, 0 to 1.
 * @param worlds how many were simulated; a whole number above 0.
 * @example chanceFromWorlds(1, 2000) // => { share: 0.9985, is: 'above' }
 */
export function chanceFromWorlds(share: number, worlds: number): ChanceFromWorlds {
  const unseen = Math.min(1, 3 / worlds);
  if (share >= 1) return { share: 1 - unseen, is: 'above' };
  return share <= 0 ? { share: unseen, is: 'below' } : { share, is: 'about' };
}
