/**
 * A ration from practice beside the one reckoned from energy, both in milligrams and in flies of the size
 * that the cups now give, so that the keeper can compare and choose.
 */
import { dividedBy, type Range, rangeOf, times } from './range.ts';

/** What practice gives one animal: flies at a feeding, and days from one feeding to the next. */
export interface PracticeRation {
  fliesLow: number;
  fliesHigh: number;
  everyDaysLow: number;
  everyDaysHigh: number;
}

export interface RationReckoning {
  /** Milligrams of fresh flies a day and animal. */
  mgPerDay: Range;
  /** Flies a day and animal, of the cups' present size. */
  fliesPerDay: Range;
}

export interface RationComparison {
  practice: RationReckoning;
  energy: RationReckoning | null;
  /** Energy's middle over practice's; null when there is no energy reckoning. */
  ratio: number | null;
  verdict: 'they overlap' | 'energy asks for more' | 'energy asks for less' | 'no energy reckoning';
}

/** Usual fresh mass of the fly that practice speaks of, mg (data from uncrowded cups at 25 C). */
export interface FlyMass {
  /** Of the flies that the ration was written for. */
  usualMg: number;
  /** Of those that the cups now give. */
  nowMg: Range;
}

/** Practice turned into milligrams by the usual fly, then into present flies. */
export function practiceReckoning(ration: PracticeRation, fly: FlyMass): RationReckoning {
  const flies = rangeOf(ration.fliesLow, ration.fliesHigh);
  const usualPerDay = dividedBy(flies, rangeOf(ration.everyDaysLow, ration.everyDaysHigh));
  const mgPerDay = times(usualPerDay, rangeOf(fly.usualMg, fly.usualMg));
  return { mgPerDay, fliesPerDay: fliesForMg(mgPerDay, fly.nowMg) };
}

/** Practice beside energy; `energyMgPerDay` null where no equation covers the animal. */
export function compareRations(ration: PracticeRation, energyMgPerDay: Range | null, fly: FlyMass): RationComparison {
  const practice = practiceReckoning(ration, fly);
  if (!energyMgPerDay) return { practice, energy: null, ratio: null, verdict: 'no energy reckoning' };
  const energy = { mgPerDay: energyMgPerDay, fliesPerDay: fliesForMg(energyMgPerDay, fly.nowMg) };
  const verdict =
    energyMgPerDay.low > practice.mgPerDay.high
      ? 'energy asks for more'
      : energyMgPerDay.high < practice.mgPerDay.low
        ? 'energy asks for less'
        : 'they overlap';
  return { practice, energy, ratio: energyMgPerDay.middle / practice.mgPerDay.middle, verdict };
}

/**
 * Flies that weigh `mg` together, at `flyMg` each: crowded small flies must not count as big ones.
 * The ends pair a small need with big flies and a large need with small ones.
 */
export function fliesForMg(mg: Range, flyMg: Range): Range {
  return dividedBy(mg, flyMg);
}
