/** One step of the adults: deaths by age and crowding, the last harvest, and the eggs laid. */
import { pointsPerAdultDay } from './adult-tables.ts';
import type { Cup } from './cup.ts';
import { decay } from './decay.ts';

/** Cohorts smaller than this join the next younger one: they are counted, not followed. */
const tooFewAdults = 0.1;
/** Leaning where flies grow fiftyfold in a step, and where there were none before. */
const fastestLeaning = 0.26;

/**
 * Moves the adults on by `aged` days at 25 C, ending at `clock`, with `cupDeaths` more deaths per such
 * day. Returns eggs per day and unit of laying temperature and medium: the caller scales it.
 */
export function stepAdults(cup: Cup, clock: number, aged: number, cupDeaths: number): number {
  const { adults, bornAt } = cup.cohorts;
  const { laying, hazard } = cup.adultsBy;
  const cupKeep = cup.keptByHarvest * decay(cupDeaths * aged);
  const meanKeep = 0.5 * (cup.keptByHarvest + cupKeep);
  const last = hazard.length - 1;
  let alive = 0;
  let rate = 0;
  for (let j = 0; j < cup.adultNext; j += 1) {
    if (j === 1) {
      j = cup.adultFirst;
      if (j >= cup.adultNext) break;
    }
    const point = ((clock - 0.5 * aged - (bornAt[j] as number)) * pointsPerAdultDay + 0.5) | 0;
    const k = point < 0 ? 0 : point > last ? last : point;
    const risk = (hazard[k] as number) * aged;
    const count = adults[j] as number;
    const keep = risk < 0.5 ? 1 - risk * (1 - 0.5 * risk) : Math.exp(-risk);
    rate += count * (laying[k] as number) * meanKeep * 0.5 * (1 + keep);
    const left = count * cupKeep * keep;
    adults[j] = left;
    alive += left;
  }
  cup.adultsAlive = alive;
  cup.keptByHarvest = 1;
  joinSmallCohorts(cup);
  return rate;
}

/**
 * Adds the flies that emerged during the step. Where emergence grows or falls from step to step, most of
 * them emerged late or early in it: at an exponential rate, by `leaning` of a step from its middle.
 * Returns how many of them were there on the step's average.
 */
export function addAdults(cup: Cup, emerged: number, clock: number, aged: number, cupDeaths: number): number {
  const before = cup.emergedBefore;
  cup.emergedBefore = emerged;
  if (emerged <= 0) return 0;
  const present = 0.5 - leaning(emerged, before);
  const lived = present * aged;
  const risk = lived * (cupDeaths + (cup.adultsBy.hazard[0] as number));
  const left = emerged * decay(risk);
  cup.cohorts.adults[cup.adultNext] = left;
  cup.cohorts.bornAt[cup.adultNext] = clock - lived;
  cup.adultNext += 1;
  cup.adultsAlive += left;
  return present * emerged;
}

/**
 * Mean of t weighted by exp(g t) over -1/2 to 1/2: coth(g / 2) / 2 - 1 / g, with g the log of the growth in
 * a step; near 0 by its series in u = tanh(g / 2), to 1e-5.
 */
function leaning(now: number, before: number): number {
  if (!(before > 0.02 * now)) return fastestLeaning;
  const u = (now - before) / (now + before);
  if (u > -0.2 && u < 0.2) return (u / 6) * (1 + (4 / 15) * u * u);
  return 0.5 / u - 1 / Math.log(now / before);
}

function joinSmallCohorts(cup: Cup): void {
  const { adults } = cup.cohorts;
  while (cup.adultFirst + 1 < cup.adultNext && (adults[cup.adultFirst] as number) < tooFewAdults) {
    adults[cup.adultFirst + 1] = (adults[cup.adultFirst + 1] as number) + (adults[cup.adultFirst] as number);
    cup.adultFirst += 1;
  }
}
