/** Which fly fits a mouth, and when flies are outgrown. */

export interface FlySize {
  fly: string;
  lengthMm: number;
}

export interface PreyInput {
  /**
   * Mantises and spiders: body length, prey up to half of it. Frogs, newts and lizards: the gap between the
   * eyes, prey up to it. Both rules from husbandry pages (keeper-pages).
   */
  by: 'body length' | 'gap between the eyes';
  lengthMm: number;
  /** Flies kept, any order. */
  flies: readonly FlySize[];
  /** Length from which larger prey should be fed; null when the animal never outgrows flies. */
  outgrowsAtMm: number | null;
}

export interface PreyChoice {
  /** The largest fly that fits, or null when none does. */
  fly: string | null;
  verdict: 'too small for adult flies' | 'flies' | 'larger prey beside flies';
  limitMm: number;
}

/** Throws RangeError when the length is not above 0. */
export function preyFor({ by, lengthMm, flies, outgrowsAtMm }: PreyInput): PreyChoice {
  if (!(lengthMm > 0 && Number.isFinite(lengthMm)))
    throw new RangeError(`preyFor: lengthMm ${lengthMm} is not above 0`);
  const limitMm = by === 'body length' ? lengthMm / 2 : lengthMm;
  const fitting = flies.filter((fly) => fly.lengthMm <= limitMm).sort((a, b) => b.lengthMm - a.lengthMm);
  const fly = fitting[0]?.fly ?? null;
  if (fly === null) return { fly, verdict: 'too small for adult flies', limitMm };
  const outgrown = outgrowsAtMm !== null && lengthMm >= outgrowsAtMm;
  return { fly, verdict: outgrown ? 'larger prey beside flies' : 'flies', limitMm };
}
