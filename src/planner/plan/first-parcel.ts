/**
 * The cover of the first parcel that can still be ordered: for the days until it takes effect no earlier purchase
 * and no start can do anything. It is the smallest that keeps every day safe from its arrival on, found on simulated
 * look-ahead of what is really believed, all covers in the same worlds. Where none does, it is the smallest that
 * no larger one betters much; the days that stay unsafe are told.
 *
 * Where nothing is home-grown, animals are fed otherwise until the parcel comes, and its first days are the dearest to
 * make safe: a young cup gives few flies, and how few nobody knows. There the cover is the cheapest, with other food for
 * a short day in its price, that is safe from the first home-grown flies on.
 */
import { type PreparedHousehold, prepareHousehold } from '../forecast/prepared-household.ts';
import type { PlanningProblem } from '../problem.ts';
import type { PurchaseMode } from './buying.ts';
import { feedbackPolicy, type PolicyParameters } from './feedback-policy.ts';
import { postageOf } from './policy-cost.ts';
import { runWorlds } from './run-worlds.ts';
import { type ShortSpell, shortSpells } from './short-spells.ts';
import { startUpOf } from './start-up.ts';
import type { Tally } from './tally.ts';

/** Standard deviations of cover for which later parcels are ordered: a gap that comes with a chance of one in fifty. */
export const usualRescue = 2;
/** Those tried for the first, the least first. */
const covers = [1.4, 2, 2.6, 3.3, 4.2, 5.5];
/** Those tried besides where nothing is home-grown. */
const smallCovers = [0, 0.7];
/** Bought cups that other food for a short day costs as much as: common practice, no source. */
const cupsPerShortDay = 1;
/** Worlds of a trial; few will do where no day's risk comes near what is allowed: within a share of it. */
const manyWorlds = 1500;
const fewWorlds = 400;
const nearShare = 0.25;
/** Days judged from the arrival on: later parcels see to what comes after. */
const servedDays = 12;
/** Days that are simulated at least, to tell of those that will be short. */
const leastDays = 14;
/** Days after them that starts and purchases see to. */
const lookAheadDays = 49;
/** Where the risk stays above what is allowed: share of that by which more cups must lower it to be worth buying. */
const noWorthShare = 0.25;
const trialLabel = 0x1b873593;

export interface FirstParcel {
  /** The parameters with the cover found. */
  parameters: PolicyParameters;
  /** Days until that parcel has taken effect that stay likelier to fall short than is allowed. */
  shortSpells: ShortSpell[];
}

interface Trial {
  cover: number;
  tally: Tally;
  /** Largest chance of a missed ration from the parcel's arrival on, by strain. */
  risks: number[];
}

export function withFirstParcel(
  problem: PlanningProblem,
  parameters: PolicyParameters,
  mode: PurchaseMode,
): FirstParcel {
  const household = prepareHousehold(comingDays(problem));
  const look = (cover: number, worlds: number) => tryCover(household, parameters, mode, cover, worlds);
  const found =
    household.fromNothing && mode !== 'none'
      ? cheapestBridges(
          household,
          [...smallCovers, ...covers].map((cover) => look(cover, manyWorlds)),
        )
      : smallestSafe(household, mode, look);
  return {
    parameters: { ...parameters, firstParcelSafety: found.map(({ cover }) => cover) },
    shortSpells: found.flatMap(({ tally }, k) => shortSpells(household, tally, k)),
  };
}

function smallestSafe(
  household: PreparedHousehold,
  mode: PurchaseMode,
  look: (cover: number, worlds: number) => Trial,
): Trial[] {
  const allowed = 1 - household.problem.serviceLevel;
  const first = look(covers[0] as number, fewWorlds);
  const trials = isCalm(first, allowed) ? [first] : [];
  for (const cover of mode === 'none' ? covers.slice(0, 1) : covers) {
    if (household.strains.every((_, k) => leastRisk(trials, k) <= allowed)) break;
    trials.push(look(cover, manyWorlds));
  }
  return household.strains.map((_, k) => {
    const least = leastRisk(trials, k);
    const enough = least <= allowed ? allowed : least + noWorthShare * allowed;
    return trials.find(({ risks }) => (risks[k] as number) <= enough) as Trial;
  });
}

/** By strain, of those covers that are safe enough from the first home-grown flies on the cheapest. */
function cheapestBridges(household: PreparedHousehold, trials: Trial[]): Trial[] {
  const { serviceLevel, weights } = household.problem;
  const allowed = 1 - serviceLevel;
  return household.strains.map((strain, k) => {
    const home = startUpOf(household, strain).homeGrownFromDay ?? 0;
    const riskAtHome = ({ tally }: Trial) => riskFrom(tally, k, Math.ceil(home));
    const enough = Math.max(allowed, Math.min(...trials.map(riskAtHome)) + noWorthShare * allowed);
    const price = ({ tally }: Trial) => {
      const shortDays = (tally.shortWorlds[k] as Float64Array).reduce((sum, short) => sum + short, 0);
      const bought = (tally.cupsBought[k] as number) + cupsPerShortDay * shortDays;
      const home = weights.perCup * (tally.cupsStarted[k] as number);
      return weights.perBoughtCup * bought + home + postageOf(household, tally);
    };
    const safe = trials.filter((trial) => riskAtHome(trial) <= enough);
    return safe.reduce((best, trial) => (price(trial) < price(best) ? trial : best));
  });
}

/** The same household judged until its first parcel has taken effect. */
function comingDays(problem: PlanningProblem): PlanningProblem {
  const { deliveryDays, leadDays } = problem.purchase;
  const arrival = deliveryDays.findIndex((may, day) => may === 1 && day >= leadDays);
  const days = Math.min(problem.days, Math.max(leastDays, arrival + servedDays));
  return { ...problem, days, runOutDays: Math.min(problem.runOutDays + problem.days - days, lookAheadDays) };
}

function leastRisk(trials: Trial[], k: number): number {
  return Math.min(...trials.map(({ risks }) => risks[k] as number));
}

/** Whether no day, those before the arrival too, comes near the risk that is allowed. */
function isCalm({ tally }: Trial, allowed: number): boolean {
  return tally.shortWorlds.every((short) => Math.max(...short) <= nearShare * allowed * tally.worlds);
}

function tryCover(
  household: PreparedHousehold,
  parameters: PolicyParameters,
  mode: PurchaseMode,
  cover: number,
  worlds: number,
): Trial {
  const { problem, strains, deliveryByOrderDay } = household;
  const arrival = deliveryByOrderDay[0] ?? 0;
  const startUps = strains.map((strain) => startUpOf(household, strain));
  const policy = feedbackPolicy({ ...parameters, firstParcelSafety: strains.map(() => cover) }, mode, startUps);
  const judgedFrom = strains.map(() => arrival);
  const tally = runWorlds(household, policy, { seed: problem.seed ^ trialLabel, worlds, judgedFrom });
  return { cover, tally, risks: strains.map((_, k) => riskFrom(tally, k, arrival)) };
}

/** Largest chance of a missed ration on a day from `from` on. */
function riskFrom({ shortWorlds, worlds }: Tally, k: number, from: number): number {
  return Math.max(0, ...(shortWorlds[k] as Float64Array).subarray(from)) / worlds;
}
