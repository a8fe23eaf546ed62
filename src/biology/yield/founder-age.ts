/** How old founders are when a keeper takes them from a cup that is at its best. */
import type { StrainLife } from '../culture.ts';

/** Days past readiness at which founders are taken, common practice: from flies two to seven days old. */
const pastReadyDays = 2;

/** Ordinary mean age of founders, days since they emerged: melanogaster about 4, hydei about 11. */
export function ordinaryFounderAge(strain: StrainLife): number {
  return strain.founders.readyDays + pastReadyDays;
}
