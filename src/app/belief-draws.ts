/** How many joint draws a household's beliefs are kept in: fewer where thousands of cups would fill the memory. */
import type { Histories } from './evidence.ts';

/** Posterior draws handed to the planner; scenario s uses draw s modulo this. */
const usualDraws = 1000;
const leastDraws = 400;
/** Draws of single cups, all together: five numbers each. */
const mostCupDraws = 4_000_000;

export function beliefDraws(histories: Histories): number {
  const living = [...histories.values()].reduce((sum, cups) => sum + cups.filter((c) => c.end === null).length, 0);
  return Math.max(leastDraws, Math.min(usualDraws, Math.floor(mostCupDraws / Math.max(1, living))));
}
