/** What a later note of a cup was expected to say, from what was believed of the cup on an earlier day. */
import type { RandomStream } from '../foundation/index.ts';
import type { CupEvidence } from './evidence.ts';
import { type FullPrior, sightingSdDays } from './priors.ts';
import type { Stage } from './sightings.ts';
import { warpedEmergence } from './warped-emergence.ts';

/** Beliefs of one day, draw by draw, and the curve that they move. */
export interface CupOutlook {
  /** Age on that day. */
  fromAge: number;
  emergedByAge: ArrayLike<number>;
  adultDailySurvival: number;
  logPace: ArrayLike<number>;
  logYield: ArrayLike<number>;
  fliesNow: ArrayLike<number>;
}

/** What the keeper did to the cup since; takes of the day itself only when they are not in the beliefs yet. */
export type LaterTakes = CupEvidence['takes'];

/**
 * Flies that are counted in the cup by a note, one for each draw. Harvests of that day count when they were
 * written before it; a presumed feeding counts half the time. Births by chance, deaths, the harvests written down since, and the error of the counts.
 */
export function foretoldCounts(
  outlook: CupOutlook,
  takes: LaterTakes,
  { ageDays: age, entryId }: { ageDays: number; entryId?: string | undefined },
  by: { countSd: number; presumedDone: number },
  random: RandomStream,
): Float64Array {
  const sameDay = (take: LaterTakes[number]) =>
    take.presumed ? random.uniform() < 0.5 : (take.entryId ?? '~') < (entryId ?? '');
  return Float64Array.from({ length: outlook.fliesNow.length }, (_, s) => {
    const before = takes.filter((t) => t.ageDays < age || (t.ageDays === age && sameDay(t)));
    const flies = stockAt(outlook, s, before, age, by, random);
    return Math.max(0, Math.round((flies + 1) * Math.exp(by.countSd * random.normal()) - 1));
  });
}

function stockAt(
  outlook: CupOutlook,
  s: number,
  takes: LaterTakes,
  age: number,
  by: { countSd: number; presumedDone: number },
  random: RandomStream,
): number {
  const { fromAge, adultDailySurvival } = outlook;
  const emerged = warpedEmergence(outlook.emergedByAge, outlook.logPace[s] as number, age);
  const yieldFactor = Math.exp(outlook.logYield[s] as number);
  let stock = afterTakes(outlook.fliesNow[s] as number, takes, fromAge, by, random);
  for (let day = fromAge + 1; day <= age; day++) {
    stock = adultDailySurvival * stock + random.poisson(yieldFactor * (emerged[day] as number));
    stock = afterTakes(stock, takes, day, by, random);
  }
  return stock;
}

function afterTakes(
  stock: number,
  takes: LaterTakes,
  day: number,
  by: { countSd: number; presumedDone: number },
  random: RandomStream,
): number {
  let left = stock;
  for (const take of takes) {
    if (take.ageDays !== day) continue;
    if (take.emptied) left = 0;
    else if (take.flies === null) left *= random.uniform();
    else if (!take.presumed || random.uniform() < by.presumedDone)
      left = Math.max(0, left - take.flies * Math.exp(by.countSd * random.normal()));
  }
  return left;
}

/** Ages at which a stage is first seen, one for each draw. */
export function foretoldSights(
  stage: Stage,
  nominalAge: number,
  logPace: ArrayLike<number>,
  random: RandomStream,
): Float64Array {
  return Float64Array.from(
    { length: logPace.length },
    (_, s) => nominalAge * Math.exp(-(logPace[s] as number)) + sightingSdDays[stage] * random.normal(),
  );
}

/** What the books alone say of a cup, as many draws as wanted: nothing was seen, and all takes are to come. */
export function bookOutlook(
  curve: { emergedByAge: ArrayLike<number>; adultDailySurvival: number },
  prior: FullPrior,
  draws: number,
  random: RandomStream,
): CupOutlook {
  const paceSd = Math.hypot(prior.householdPaceSd, prior.cupPaceSd, prior.paceDiscrepancySd);
  const yieldSd = Math.hypot(prior.householdYieldSd, prior.cupYieldSd, prior.sessionYieldSd, prior.discrepancySd);
  const normals = (sd: number) => Float64Array.from({ length: draws }, () => sd * random.normal());
  return {
    ...curve,
    fromAge: -1,
    logPace: normals(paceSd),
    logYield: normals(yieldSd),
    fliesNow: new Float64Array(draws),
  };
}
