/**
 * The dated jobs of a plan, read off the mean world: what the policy would start, buy and throw out
 * there, and from which cups it would feed. Near ones are firm; later ones will be decided again.
 */
import type { PreparedHousehold } from '../forecast/prepared-household.ts';
import { meanWorld, type StrainWorld } from '../forecast/strain-world.ts';
import { mayFound } from '../forecast/taking-flies.ts';
import type { Policy } from './household-world.ts';
import {
  type BoughtKind,
  type BoughtPurpose,
  type HouseholdWorld,
  makeHouseholdWorld,
  runWorld,
} from './household-world.ts';
import type { PolicyParameters } from './feedback-policy.ts';
import type { Reason } from './reason.ts';
import type { StartUp } from './start-up.ts';

export type PlannedJobKind = 'start' | 'feed' | 'discard' | 'buy' | 'order';

/** A job of the plan. Days count from today; cup ids are those of the problem's existing cups. */
export interface PlannedJob {
  day: number;
  kind: PlannedJobKind;
  strain: string;
  firm: boolean;
  /** Cups to start, order or receive. */
  cups?: number;
  /** Flies to feed, or founders to put in over all cups. */
  flies?: number;
  /** Existing cups that it acts on: fed from, thrown out. */
  cultures?: string[];
  /** Flies from each of `cultures`, or founders from each of `fromCultures`, same order. */
  fliesByCulture?: number[];
  /** Existing cups that give founders; empty when they come from cups still to be started. */
  fromCultures?: string[];
  boughtKind?: BoughtKind;
  reason: Reason;
}

/** Days for which feeding and throwing out are listed. */
const listedDays = 21;

export function planJobs(
  household: PreparedHousehold,
  policy: Policy,
  parameters: PolicyParameters,
  startUps: StartUp[],
  firmDays: number,
): PlannedJob[] {
  const jobs: PlannedJob[] = [];
  const before: Float64Array[] = household.strains.map(() => new Float64Array(0));
  const look = (k: number) => {
    before[k] = (hw.strains[k] as StrainWorld).table.held.slice();
  };
  const hw = makeHouseholdWorld(household, {
    beforeSession: look,
    beforeFeeding: look,
    day(k, t, _emerging, _onHand, { needed, fed, late }) {
      discards(hw, k, t, jobs, firmDays);
      if (t < listedDays && needed > 0)
        jobs.push(feedingJob(hw, k, t, before[k] as Float64Array, { needed, fed, late }, firmDays));
    },
    started(k, t, cups) {
      if (t >= household.problem.days || cups <= 0) return;
      jobs.push(startJob(hw, k, t, cups, before[k] as Float64Array, parameters, firmDays));
    },
    ordered(k, t, arrival, kind, cups, purpose) {
      if (t < household.problem.days) jobs.push(...buyJobs(hw, k, t, arrival, kind, cups, purpose, startUps, firmDays));
    },
  });
  runWorld(hw, policy, 0, meanWorld, household.problem.days);
  return jobs.sort((a, b) => a.day - b.day || order.indexOf(a.kind) - order.indexOf(b.kind));
}

const order: PlannedJobKind[] = ['order', 'buy', 'start', 'feed', 'discard'];

/** Existing cups come first in the block table, in the problem's order. */
function idOf(hw: HouseholdWorld, k: number, block: number): string | undefined {
  return hw.prepared.strains[k]?.strain.existing[block]?.id;
}

function nameOf(hw: HouseholdWorld, k: number): string {
  return hw.prepared.strains[k]?.strain.strain ?? '';
}

function startJob(
  hw: HouseholdWorld,
  k: number,
  t: number,
  cups: number,
  before: Float64Array,
  parameters: PolicyParameters,
  firmDays: number,
): PlannedJob {
  const sw = hw.strains[k] as StrainWorld;
  const founders = cups * sw.prepared.strain.foundersPerCup;
  const sources = founderSources(hw, k, t, before, founders);
  return {
    day: t,
    kind: 'start',
    strain: nameOf(hw, k),
    firm: t < firmDays,
    cups,
    flies: founders,
    fromCultures: sources.map((s) => s.id),
    fliesByCulture: sources.map((s) => s.flies),
    reason: startReason(hw, k, t, cups, parameters),
  };
}

/** The fewest cups at their best that hold the founders: the fullest first. */
function founderSources(
  hw: HouseholdWorld,
  k: number,
  t: number,
  before: Float64Array,
  founders: number,
): { id: string; flies: number }[] {
  const { table } = hw.strains[k] as StrainWorld;
  const able: { id: string; held: number }[] = [];
  for (let b = 0; b < Math.min(before.length, table.blocks); b++) {
    const id = idOf(hw, k, b);
    if (id !== undefined && mayFound(table, b, t)) able.push({ id, held: before[b] as number });
  }
  able.sort((a, b) => b.held - a.held);
  const sources: { id: string; flies: number }[] = [];
  let rest = founders;
  for (const { id, held } of able) {
    if (rest <= 0 || held < 1) break;
    const flies = Math.round(Math.min(rest, held));
    sources.push({ id, flies });
    rest -= flies;
  }
  return sources;
}

function startReason(hw: HouseholdWorld, k: number, t: number, cups: number, parameters: PolicyParameters): Reason {
  const grounds = hw.grounds[k];
  const curves = hw.prepared.strains[k]?.curves;
  const foundersDay = t + Math.ceil(curves?.founderFromAge[t] ?? 0);
  const values = {
    strain: nameOf(hw, k),
    cups,
    // Without a day that would be short there is nothing to tell of.
    ...(grounds && grounds.shortDay >= 0 ? { shortDay: grounds.shortDay, untilDay: grounds.untilDay } : {}),
    foundersDay,
    founderCups: parameters.founderCups,
    backupCups: hw.prepared.strains[k]?.strain.backupCups ?? 0,
  };
  const forNeed = (grounds?.forNeed ?? 0) > 0;
  const forFounders = (grounds?.forFounders ?? 0) > 0;
  const without = forFounders ? 'keep-founders' : 'keep-backup';
  const code = forNeed ? (forFounders ? 'cover-need-and-founders' : 'cover-need') : without;
  return { code, values };
}

function feedingJob(
  hw: HouseholdWorld,
  k: number,
  t: number,
  before: Float64Array,
  { needed, fed, late }: { needed: number; fed: number; late: number },
  firmDays: number,
): PlannedJob {
  const { table } = hw.strains[k] as StrainWorld;
  const cultures: string[] = [];
  const fliesByCulture: number[] = [];
  let fromBest = 0;
  for (let i = 0; i < table.blocks; i++) {
    const b = table.order[i] as number;
    const taken = (before[b] ?? 0) - (table.held[b] as number);
    if (taken < 0.5 || table.gone[b]) continue;
    if (mayFound(table, b, t)) fromBest += taken;
    const id = idOf(hw, k, b);
    if (id === undefined) continue;
    cultures.push(id);
    fliesByCulture.push(Math.round(taken));
  }
  const short = late > 0.5;
  return {
    day: t,
    kind: 'feed',
    strain: nameOf(hw, k),
    firm: t < firmDays,
    flies: Math.round(needed),
    cultures,
    fliesByCulture,
    reason: {
      code: short ? 'feed-short' : fromBest > 0.5 * fed ? 'feed-at-best' : 'feed-oldest-first',
      values: short ? { wanted: Math.round(needed), flies: Math.round(fed) } : { flies: Math.round(needed) },
    },
  };
}

/** Existing cups thrown out on day `t`, with the flies that are left after feeding. */
function discards(hw: HouseholdWorld, k: number, t: number, jobs: PlannedJob[], firmDays: number): void {
  const sw = hw.strains[k] as StrainWorld;
  const { existing } = sw.prepared.strain;
  if (t >= listedDays) return;
  for (let b = 0; b < existing.length; b++) {
    const cup = existing[b];
    if (cup === undefined || sw.table.spentDay[b] !== t) continue;
    jobs.push({
      day: t,
      kind: 'discard',
      strain: nameOf(hw, k),
      firm: t < firmDays,
      cultures: [cup.id],
      reason: {
        code: 'past-its-time',
        values: { ageDays: cup.ageDays + t, flies: Math.round(sw.table.held[b] as number) },
      },
    });
  }
}

const guardedReasons = { gap: 'bridge-gap', founders: 'restart-founders' } as const;
/** While no home-grown cup stands, nothing is there for a quarantine to protect. */
const firstReasons = { gap: 'bridge-first', founders: 'first-founders' } as const;

function buyJobs(
  hw: HouseholdWorld,
  k: number,
  t: number,
  arrival: number,
  kind: BoughtKind,
  cups: number,
  purpose: BoughtPurpose,
  startUps: StartUp[],
  firmDays: number,
): PlannedJob[] {
  const reason: Reason = {
    code: hw.hasOwnCups ? guardedReasons[purpose] : firstReasons[purpose],
    values: {
      strain: nameOf(hw, k),
      cups,
      arrivalDay: arrival,
      releasedDay: arrival + hw.prepared.problem.purchase.quarantineDays,
      homeGrownFromDay: startUps[k]?.homeGrownFromDay ?? arrival,
    },
  };
  const common = { strain: nameOf(hw, k), cups, boughtKind: kind, reason };
  return [
    { ...common, day: t, kind: 'order', firm: t < firmDays },
    { ...common, day: arrival, kind: 'buy', firm: t < firmDays },
  ];
}
