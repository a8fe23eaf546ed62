/** What the week's flies give beside energy: protein, fat, calcium to phosphorus, and the dust that mends it. */

export interface FlyNutrients {
  dryShare: number;
  /** Shares of dry matter. */
  proteinOfDry: number;
  fatOfDry: number;
  calciumOfDry: number;
  phosphorusOfDry: number;
}

/** A supplement as shares of its mass. */
export interface Supplement {
  supplement: string;
  calciumShare: number;
  phosphorusShare: number;
}

export interface QualityFeeding {
  flyMg: number;
  /** Powder that is on the flies when they are eaten, mg by supplement. */
  dust: { supplement: Supplement; mg: number }[];
}

export interface FoodQuality {
  dryMg: number;
  proteinMg: number;
  fatMg: number;
  calciumMg: number;
  phosphorusMg: number;
  /** Calcium over phosphorus by mass; null when nothing was fed. */
  calciumToPhosphorus: number | null;
  verdict: 'enough calcium' | 'too little calcium' | 'nothing fed';
}

/** Sums a week's feedings; below `least` calcium to phosphorus the verdict warns. A vet decides what to do. */
export function foodQuality(feedings: readonly QualityFeeding[], flies: FlyNutrients, least = 1): FoodQuality {
  const flyMg = feedings.reduce((sum, feeding) => sum + feeding.flyMg, 0);
  const dust = feedings.flatMap((feeding) => feeding.dust);
  const fromDust = (share: 'calciumShare' | 'phosphorusShare') =>
    dust.reduce((sum, { supplement, mg }) => sum + mg * supplement[share], 0);
  const dryMg = flyMg * flies.dryShare;
  const calciumMg = dryMg * flies.calciumOfDry + fromDust('calciumShare');
  const phosphorusMg = dryMg * flies.phosphorusOfDry + fromDust('phosphorusShare');
  const ratio = phosphorusMg > 0 ? calciumMg / phosphorusMg : null;
  return {
    dryMg,
    proteinMg: dryMg * flies.proteinOfDry,
    fatMg: dryMg * flies.fatOfDry,
    calciumMg,
    phosphorusMg,
    calciumToPhosphorus: ratio,
    verdict: ratio === null ? 'nothing fed' : ratio >= least ? 'enough calcium' : 'too little calcium',
  };
}

/**
 * Milligrams of a supplement on `flyMg` of flies that bring calcium to phosphorus to `target`, eaten with
 * them. Infinity when its own ratio is not above the target; 0 when the flies have enough.
 * @example calcium carbonate on 100 flies of 0.95 mg for 1 : 1: 0.67 mg
 */
export function dustMgFor(flyMg: number, target: number, flies: FlyNutrients, supplement: Supplement): number {
  if (!(flyMg >= 0)) throw new RangeError(`dustMgFor: flyMg ${flyMg} is not 0 or more`);
  if (!(target > 0)) throw new RangeError(`dustMgFor: target ${target} is not above 0`);
  const dryMg = flyMg * flies.dryShare;
  const missing = dryMg * (target * flies.phosphorusOfDry - flies.calciumOfDry);
  const gain = supplement.calciumShare - target * supplement.phosphorusShare;
  if (missing <= 0) return 0;
  return gain > 0 ? missing / gain : Number.POSITIVE_INFINITY;
}

/** Share of the dust still on the flies after `hours`, when half is groomed off every `halfLifeHours`. */
export function dustLeftShare(hours: number, halfLifeHours: number): number {
  if (!(hours >= 0)) throw new RangeError(`dustLeftShare: hours ${hours} is not 0 or more`);
  if (!(halfLifeHours > 0)) throw new RangeError(`dustLeftShare: halfLifeHours ${halfLifeHours} is not above 0`);
  return 0.5 ** (hours / halfLifeHours);
}
