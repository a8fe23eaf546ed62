/** Two species in one cup: no hybrids, but a race. Which takes over, how soon, and how to part them. */
import { type Said, said } from '../foundation/index.ts';

export interface Competitor {
  name: string;
  founders: number;
  /** Days from one generation's founders to the next's. */
  generationDays: number;
  /** Living adult offspring of one founder, when alone in an ordinary cup. */
  offspringPerFounder: number;
  /** Days from starting the cup until its first flies emerge. */
  firstEmergenceDay: number;
}

export interface Takeover {
  winner: string;
  loser: string;
  /** Share of the winner among the flies, by whole days from the start, day 0 first. */
  winnerShareByDay: number[];
  /** First day on which the loser is below a tenth; null within the days asked for. */
  loserBelowTenthDay: number | null;
  todo: Said[];
}

/**
 * The ratio of two species that grow each by its own rate, ln(offspring) / generation days, in medium that
 * limits both alike: a logistic in time. A first guess, for the warning: real cups go in steps.
 */
export function takeover(a: Competitor, b: Competitor, days: number): Takeover {
  for (const one of [a, b]) checkCompetitor(one);
  const [winner, loser] = growthRate(a) >= growthRate(b) ? [a, b] : [b, a];
  const advantage = growthRate(winner) - growthRate(loser);
  const winnerShareByDay = Array.from({ length: days + 1 }, (_, t) => {
    const ratio = (winner.founders / loser.founders) * Math.exp(advantage * t);
    return ratio / (1 + ratio);
  });
  const below = winnerShareByDay.findIndex((share) => share > 0.9);
  return {
    winner: winner.name,
    loser: loser.name,
    winnerShareByDay,
    loserBelowTenthDay: below === -1 ? null : below,
    todo: parting(winner, loser),
  };
}

function growthRate({ offspringPerFounder, generationDays }: Competitor): number {
  return Math.log(offspringPerFounder) / generationDays;
}

function parting(winner: Competitor, loser: Competitor): Said[] {
  const [early, late] = winner.firstEmergenceDay <= loser.firstEmergenceDay ? [winner, loser] : [loser, winner];
  const days = Math.floor(late.firstEmergenceDay - early.firstEmergenceDay);
  if (days < 2)
    return [said`Sort chilled flies by size and colour into cups of their own, and look again a generation later.`];
  return [
    said`Of a cup started with both, the flies of the first ${days} days of emergence are ${early.name}: start its cups from those.`,
    said`Clear them daily until then; for ${late.name} take flies that emerge later, sorted by eye.`,
    said`Sort chilled flies by size and colour into cups of their own, and look again a generation later.`,
  ];
}

function checkCompetitor({ name, founders, generationDays, offspringPerFounder }: Competitor): void {
  for (const [field, value] of Object.entries({ founders, generationDays, offspringPerFounder }))
    if (!(value > 0 && Number.isFinite(value)))
      throw new RangeError(`takeover: ${field} of ${name} is ${value}, not above 0`);
}
