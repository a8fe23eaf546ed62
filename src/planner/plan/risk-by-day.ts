/** The chance of a short day as tuning and search see it: a mean over some days, steadier than a single worst day. */
import type { PreparedHousehold } from '../forecast/prepared-household.ts';
import type { Tally } from './tally.ts';

/** Days over which a risk is averaged. */
export const steadyDays = 5;
/** A ration that waits, for who can wait, weighs like a fifth of one that is missed. */
const lateWeight = 0.2;

/** Largest chance of a shortfall on the judged days, as a mean over five days. */
export function worstRisk(household: PreparedHousehold, tally: Tally, k: number, from: number): number {
  let worst = 0;
  forEachMean(household, tally, k, from, steadyDays, (_, risk) => {
    worst = Math.max(worst, risk);
  });
  return worst;
}

/** Visits the chance of a short day as means over `days` days with a need from day `from` on, each by its middle day. */
export function forEachMean(
  household: PreparedHousehold,
  tally: Tally,
  k: number,
  from: number,
  days: number,
  visit: (middle: number, risk: number) => void,
  ofLate = lateWeight,
): void {
  const short = tally.shortWorlds[k] as Float64Array;
  const late = tally.lateWorlds[k] as Float64Array;
  const need = household.strains[k]?.need as Float64Array;
  const window: number[] = [];
  for (let t = from; t < short.length; t++) {
    if ((need[t] as number) <= 0 && short[t] === 0) continue;
    window.push(Math.max(short[t] as number, ofLate * (late[t] as number)) / tally.worlds);
    if (window.length > days) window.shift();
    if (window.length === days) visit(t - (days >> 1), window.reduce((a, b) => a + b, 0) / days);
  }
}
