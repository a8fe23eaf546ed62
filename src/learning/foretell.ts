/**
 * What a later note of a cup was expected to say, from what was believed of the cup on an earlier day: the
 * flies there, and how this keeper writes them down.
 */
import { normalCdf, normalQuantile, type RandomStream } from '../foundation/index.ts';
import type { CupEvidence } from './evidence.ts';
import { countSpread } from './keeper-settings.ts';
import { type FullPrior, sightingSdDays, wordBeginsAtFlies } from './priors.ts';
import type { Stage } from './sightings.ts';
import { widerLogVariance } from './stock-filter.ts';
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
  /** How the keeper writes: log sd of counts, log factor on where the words begin. */
  countSd: ArrayLike<number>;
  wordOffset: ArrayLike<number>;
}

/** What the keeper did to the cup since; takes of the day itself only when they are not in the beliefs yet. */
export type LaterTakes = CupEvidence['takes'];

/** The note that is foretold. */
export interface ForetoldNote {
  ageDays: number;
  entryId?: string | undefined;
  isWord: boolean;
}

/**
 * The flies that a note says are in the cup, one number for each draw; for a word, where it lies on the
 * ordinary scale of words. Harvests of that day count when they were written before it; a presumed feeding
 * counts half the time. Births by chance, deaths, the harvests written down since, the keeper's error and
 * scale, and the share of notes that are wrong.
 */
export function foretoldNotes(
  outlook: CupOutlook,
  takes: LaterTakes,
  note: ForetoldNote,
  prior: FullPrior,
  random: RandomStream,
): Float64Array {
  const { ageDays: age, entryId } = note;
  const sameDay = (take: LaterTakes[number]) =>
    take.presumed ? random.uniform() < 0.5 : (take.entryId ?? '~') < (entryId ?? '');
  return Float64Array.from({ length: outlook.fliesNow.length }, (_, s) => {
    const before = takes.filter((t) => t.ageDays < age || (t.ageDays === age && sameDay(t)));
    const flies = stockAt(outlook, s, before, age, prior.presumedDone, random);
    return note.isWord ? asWord(flies, outlook, s, prior, random) : asCount(flies, outlook, s, prior, random);
  });
}

function asCount(flies: number, { countSd }: CupOutlook, s: number, prior: FullPrior, random: RandomStream): number {
  const wider = random.uniform() < prior.wrongEntryShare ? widerLogVariance : 0;
  const sd = Math.sqrt((countSd[s] as number) ** 2 + wider);
  return Math.max(0, Math.round((flies + 1) * Math.exp(sd * random.normal()) - 1));
}

function asWord(flies: number, outlook: CupOutlook, s: number, prior: FullPrior, random: RandomStream): number {
  const begins = Object.values(wordBeginsAtFlies);
  if (random.uniform() < prior.wrongEntryShare) return begins[random.below(begins.length)] as number;
  const sd = Math.hypot(prior.wordSd, outlook.countSd[s] as number);
  return Math.floor((flies + 1) * Math.exp(sd * random.normal() - (outlook.wordOffset[s] as number)));
}

function stockAt(
  outlook: CupOutlook,
  s: number,
  takes: LaterTakes,
  age: number,
  presumedDone: number,
  random: RandomStream,
): number {
  const { fromAge, adultDailySurvival } = outlook;
  const by = { countSd: outlook.countSd[s] as number, presumedDone };
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

/** Ages at which a stage is first seen, one for each draw, when it was not there yet at age `notYetAge`. */
export function foretoldSights(
  stage: Stage,
  nominalAge: number,
  notYetAge: number,
  logPace: ArrayLike<number>,
  random: RandomStream,
): Float64Array {
  const sd = sightingSdDays[stage];
  return Float64Array.from({ length: logPace.length }, (_, s) => {
    const mean = nominalAge * Math.exp(-(logPace[s] as number));
    const past = normalCdf((notYetAge - mean) / sd);
    const p = past + (1 - past) * random.uniform();
    return Math.max(notYetAge, mean + sd * normalQuantile(Math.min(1 - 1e-12, Math.max(1e-12, p))));
  });
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
    countSd: normals(countSpread).map((z) => prior.countSd * Math.exp(z)),
    wordOffset: normals(prior.wordOffsetSd),
  };
}
