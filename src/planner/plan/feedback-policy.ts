/**
 * The planner's policy: at each session, from what a keeper would see, start the fewest cups with which
 * mean stock less `safety` standard deviations covers the need on every day that only cups of this
 * session can still help; wait for the next session if that will do; never let the line of founders
 * break. What home-grown cups can't reach in time is bought.
 */
import { buyWhatIsMissing, type PurchaseMode } from './buying.ts';
import { cupsAtBest, cupsForBackup, cupsForFounderLine } from './founder-line.ts';
import type { HouseholdWorld, Policy, StartGrounds } from './household-world.ts';
import { type KeeperView, look } from './keeper-view.ts';
import { fewestCups, firstShortDay, project } from './projection.ts';
import { makeRhythm, type Rhythm } from './rhythm.ts';
import type { StartUp } from './start-up.ts';

/** The few numbers that are tuned for a household. */
export interface PolicyParameters {
  /**
   * Standard deviations of cover, by strain and by phase of `phaseDays` days, counted from the first day
   * on which home-grown flies can emerge; the last phase goes on.
   */
  safety: number[][];
  /** Days beyond those that only this session can help, that a start covers as well: larger batches. */
  coverDays: number;
  /** Cups at their best that should stand ready at each coming session. */
  founderCups: number;
  /**
   * Days modulo 7 (0 = today's weekday) on which sessions are mostly held; on other work days cups are
   * started only when waiting would be unsafe. Every work day when left out.
   */
  rhythm?: number[];
  /** Standard deviations of cover for which cups are bought. */
  rescueSafety: number;
  /** The same for the first parcel that an order can still reach, by strain, where a search found another. */
  firstParcelSafety?: number[];
  /** Where there is no home-grown cup: days beyond those that only this parcel can help, that it covers as well. */
  parcelDays?: number;
}

export const phaseDays = 21;

/** The phase of day `t` for a strain whose home-grown flies begin on `from`, of `phases`. */
export function phaseOf(t: number, from: number, phases: number): number {
  return Math.min(phases - 1, Math.max(0, Math.floor((t - from) / phaseDays)));
}

/** Phases of a horizon. */
export function phasesOf(days: number): number {
  return Math.max(1, Math.floor(days / phaseDays));
}

const mostDays = 2000;

/** Share of the cover for whose lack cups are started outside the rhythm. */
const urgentShare = 0.4;

export function feedbackPolicy(parameters: PolicyParameters, mode: PurchaseMode, startUps: StartUp[]): Policy {
  const safetyByDay = parameters.safety.map((row, k) => spreadOverDays(row, startUps[k]));
  const rescue = new Float64Array(mostDays).fill(parameters.rescueSafety);
  const firstParcel = parameters.safety.map((_, k) =>
    new Float64Array(mostDays).fill(parameters.firstParcelSafety?.[k] ?? parameters.rescueSafety),
  );
  const urgentByDay = safetyByDay.map((row) => row.map((z) => z * urgentShare));
  let rhythm: Rhythm | null = null;
  return {
    beginWorld(hw) {
      rhythm ??= makeRhythm(hw.prepared, parameters.rhythm);
    },
    start(hw, t) {
      if (!rhythm) return;
      const safety = rhythm.sessionDays[t] ? safetyByDay : urgentByDay;
      for (let k = 0; k < hw.views.length; k++) {
        hw.wantedCups[k] = cupsToStart(hw, k, t, { parameters, rhythm, safetyByDay: safety[k] as Float64Array });
      }
    },
    buy(hw, t) {
      if (mode === 'none') return;
      const isFirst = hw.prepared.deliveryByOrderDay[t] === hw.prepared.deliveryByOrderDay[0];
      const safety = hw.views.map((_, k) => (isFirst ? (firstParcel[k] as Float64Array) : rescue));
      buyWhatIsMissing(hw, t, { mode, startUps, safety, parcelDays: parameters.parcelDays ?? 0 });
    },
  };
}

function spreadOverDays(byPhase: number[], startUp: StartUp | undefined): Float64Array {
  const from = startUp?.homeGrownFromDay ?? 0;
  return Float64Array.from({ length: mostDays }, (_, t) => byPhase[phaseOf(t, from, byPhase.length)] as number);
}

interface StartRule {
  parameters: PolicyParameters;
  rhythm: Rhythm;
  safetyByDay: Float64Array;
}

/** Cups that the rule starts of strain `k` on work day `t`, before limits. */
function cupsToStart(hw: HouseholdWorld, k: number, t: number, rule: StartRule): number {
  const view = hw.views[k] as KeeperView;
  const { curves, strain } = view.sw.prepared;
  if ((curves.totalExpected[t] as number) < strain.foundersPerCup) return 0;
  const next = nextSessionWithFounders(rule.rhythm, view, t);
  const grounds = hw.grounds[k] as StartGrounds;
  grounds.forBackup = cupsForBackup(view, next);
  return Math.max(grounds.forBackup, cupsForNeed(hw, k, t, next, rule));
}

/** Cups for the need and for the line of founders that feeds it; none once nothing is wanted any more. */
function cupsForNeed(hw: HouseholdWorld, k: number, t: number, next: number, rule: StartRule): number {
  const { parameters, rhythm, safetyByDay } = rule;
  const view = hw.views[k] as KeeperView;
  const { curves, lastNeedDay } = view.sw.prepared;
  const grounds = hw.grounds[k] as StartGrounds;
  grounds.forNeed = grounds.forFounders = 0;
  grounds.shortDay = -1;
  const end = Math.min(hw.prepared.totalDays, lastNeedDay + 1, t + curves.stride - 1);
  const first = t + (curves.effectAge[t] as number);
  if (first >= end) return 0;
  const nextEffect = next < hw.prepared.totalDays ? next + (curves.effectAge[next] as number) : end;
  const trigger = Math.min(end, Math.max(first + 1, nextEffect));
  const until = Math.min(end, trigger + parameters.coverDays);
  const candidate = { curve: t, born: t };
  project(view, t, look(view, t), first, until, hw.projection);
  grounds.forFounders = rhythm.sessionDays[t] ? cupsForFounderLine(view, rhythm, t, next, parameters.founderCups) : 0;
  grounds.shortDay = firstShortDay(view, hw.projection, candidate, 0, safetyByDay, trigger);
  grounds.firstDay = first;
  grounds.untilDay = grounds.shortDay < 0 ? trigger : until;
  const most = hw.prepared.problem.maxCupsPerSession;
  grounds.forNeed = grounds.shortDay < 0 ? 0 : fewestCups(view, hw.projection, candidate, most, safetyByDay, until);
  return Math.max(grounds.forFounders, grounds.forNeed);
}

/** The next work day on which some cup should be at its best: sessions between can start nothing. */
function nextSessionWithFounders({ nextSession }: Rhythm, view: KeeperView, t: number): number {
  const totalDays = nextSession.length;
  let next = nextSession[t] as number;
  while (next < totalDays && cupsAtBest(view, next) < 0.5) next = nextSession[next] as number;
  return next;
}
