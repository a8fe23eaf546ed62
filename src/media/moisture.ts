/**
 * How wet is right, by touch and by weight, and how a wet or a dry cup is rescued. The bounds are common
 * practice: no published scale of feel exists.
 */
import { failed, ok, type Result } from '../foundation/index.ts';
import { positiveAmount, problemsOf } from './amount.ts';

/** What a clean finger or a spoon finds. */
export const touches = ['runs', 'shines-and-sticks', 'moist-and-holds', 'firm', 'cracks-from-wall'] as const;
export type Touch = (typeof touches)[number];

export const rescues = [
  'add-dry-mix',
  'blot-with-paper',
  'stand-open-under-cloth',
  'more-climbing-material',
  'drip-boiled-water',
  'cover-holes-partly',
  'move-from-heat',
  'use-flies-and-restart',
] as const;
export type Rescue = (typeof rescues)[number];

export interface Moisture {
  verdict: 'wet' | 'good' | 'dry';
  rescue: Rescue[];
}

/** Share of the medium's mass that a cup may lose before it counts as dry. */
const dryLossShare = 0.3;

/** What the touch says, and what to do. */
export function moistureByTouch(touch: Touch, hasLarvae: boolean): Moisture {
  if (touch === 'moist-and-holds') return { verdict: 'good', rescue: [] };
  if (touch === 'runs' || touch === 'shines-and-sticks') return wet(touch === 'runs', hasLarvae);
  return dry(touch === 'cracks-from-wall', hasLarvae);
}

/** What weighing says: the cup now against the cup on its first day, both with all that is in it. */
export function moistureByWeight(weighing: {
  firstDayMassG: number;
  nowMassG: number;
  mediumMassG: number;
  hasLarvae: boolean;
}): Result<Moisture & { lostShare: number }> {
  const { firstDayMassG, nowMassG, mediumMassG } = weighing;
  const checks = [
    positiveAmount(firstDayMassG, 'firstDayMassG'),
    positiveAmount(nowMassG, 'nowMassG'),
    positiveAmount(mediumMassG, 'mediumMassG'),
  ];
  if (checks.some((c) => !c.ok)) return failed(...problemsOf(...checks));
  if (nowMassG > firstDayMassG * 1.05) {
    const expected = `not more than the ${firstDayMassG} g of the first day, unless water was added`;
    return failed({ where: 'nowMassG', found: String(nowMassG), expected });
  }
  const lostShare = Math.max(0, (firstDayMassG - nowMassG) / mediumMassG);
  const moisture: Moisture =
    lostShare > dryLossShare ? dry(lostShare > 0.5, weighing.hasLarvae) : { verdict: 'good', rescue: [] };
  return ok({ ...moisture, lostShare });
}

/** Larvae drown and smother under stirring: with larvae in it only the surface is treated. */
function wet(isRunning: boolean, hasLarvae: boolean): Moisture {
  const first: Rescue = isRunning && !hasLarvae ? 'add-dry-mix' : 'blot-with-paper';
  return { verdict: 'wet', rescue: [first, 'more-climbing-material', 'stand-open-under-cloth'] };
}

function dry(isCracked: boolean, hasLarvae: boolean): Moisture {
  if (isCracked && !hasLarvae) return { verdict: 'dry', rescue: ['use-flies-and-restart'] };
  return { verdict: 'dry', rescue: ['drip-boiled-water', 'cover-holes-partly', 'move-from-heat'] };
}
