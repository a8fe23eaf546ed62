/**
 * Where a keeper's set-up begins: flies for one animal at one feeding, and cups in common use. They are
 * keepers' practice, given from memory without a source, and every one of them can be changed.
 */
import type { Weekday } from '../../../foundation/index.ts';

export interface UsualRation {
  animal: string;
  flies: number;
  strain: 'melanogaster' | 'hydei';
  feedingWeekdays: Weekday[];
  canWaitDays: number;
}

const daily: Weekday[] = ['mon', 'tue', 'wed', 'thu', 'fri', 'sat', 'sun'];
const everyOther: Weekday[] = ['mon', 'wed', 'fri', 'sun'];
const thrice: Weekday[] = ['mon', 'wed', 'sat'];

export const usualRations: UsualRation[] = [
  { animal: 'froglets', flies: 15, strain: 'melanogaster', feedingWeekdays: daily, canWaitDays: 1 },
  { animal: 'smallFrogs', flies: 15, strain: 'melanogaster', feedingWeekdays: everyOther, canWaitDays: 3 },
  { animal: 'largeFrogs', flies: 30, strain: 'hydei', feedingWeekdays: everyOther, canWaitDays: 3 },
  { animal: 'mantisNymphs', flies: 4, strain: 'melanogaster', feedingWeekdays: everyOther, canWaitDays: 2 },
  { animal: 'spiderlings', flies: 2, strain: 'melanogaster', feedingWeekdays: thrice, canWaitDays: 5 },
  { animal: 'geckos', flies: 8, strain: 'hydei', feedingWeekdays: daily, canWaitDays: 1 },
  { animal: 'newts', flies: 10, strain: 'melanogaster', feedingWeekdays: everyOther, canWaitDays: 2 },
  { animal: 'fish', flies: 6, strain: 'melanogaster', feedingWeekdays: thrice, canWaitDays: 5 },
];

export interface UsualCup {
  container: string;
  volumeMl: number;
  mediumMassG: number;
  surfaceCm2: number;
  founders: number;
}

export const usualCups: UsualCup[] = [
  { container: 'vial', volumeMl: 50, mediumMassG: 10, surfaceCm2: 5, founders: 12 },
  { container: 'bottle', volumeMl: 180, mediumMassG: 45, surfaceCm2: 30, founders: 25 },
  { container: 'half-litre', volumeMl: 500, mediumMassG: 100, surfaceCm2: 60, founders: 35 },
  { container: 'litre', volumeMl: 946, mediumMassG: 150, surfaceCm2: 85, founders: 50 },
];
