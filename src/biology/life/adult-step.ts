/** One step of the adults: deaths by age and crowding, the last harvest, and the eggs laid. */
import { pointsPerAdultDay } from './adult-tables.ts';
import type { Cup } from './cup.ts';

/** Cohorts smaller than this join the next younger one: they are counted, not followed. */
const tooFewAdults = 0.1;

/**
 * Moves the adults on by `aged` days at 25 C, ending at `clock`, with `cupDeaths` more deaths per such
 * day. Returns eggs per day and unit of laying temperature and medium: the caller scales it.
 */
export function stepAdults(cup: Cup, clock: number, aged: number, cupDeaths: number): number {
  const { adults, bornAt } = cup;
  const { laying, hazard } = cup.adultsBy;
  const cupKeep = cup.keptByHarvest * Math.exp(-cupDeaths * aged);
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

/** Adds the flies that emerged during the step, which have lived half of it. */
export function addAdults(cup: Cup, emerged: number, clock: number, aged: number, cupDeaths: number): void {
  if (emerged <= 0) return;
  const left = emerged * Math.exp(-0.5 * cupDeaths * aged);
  cup.adults[cup.adultNext] = left;
  cup.bornAt[cup.adultNext] = clock - 0.5 * aged;
  cup.adultNext += 1;
  cup.adultsAlive += left;
}

function joinSmallCohorts(cup: Cup): void {
  const { adults } = cup;
  while (cup.adultFirst + 1 < cup.adultNext && (adults[cup.adultFirst] as number) < tooFewAdults) {
    adults[cup.adultFirst + 1] = (adults[cup.adultFirst + 1] as number) + (adults[cup.adultFirst] as number);
    cup.adultFirst += 1;
  }
}
