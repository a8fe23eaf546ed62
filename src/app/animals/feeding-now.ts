/**
 * What each group is fed from today on: the ration as written, less or more by what was learned of its
 * appetite, in flies of the size that the cups now give, growing with the animals. Jobs read it as facts with
 * certain days; need and forecast read it as groups whose hatches, moults and appetites are uncertain.
 */
import { type FeedingGroup, type FeedingPeriod, type LearnedRation, learnedRation } from '../../animals/index.ts';
import { type Day, type DayNumber, dayFromNumber, dayNumber, daysBetween } from '../../foundation/index.ts';
import type { Facts, GroupFacts, GroupPeriod } from '../../logbook/index.ts';
import { kindOf } from './animal-kinds.ts';
import { feedingGroup, feedingPeriod } from './feeding-group.ts';
import { type FlySizeNow, flySizeNow } from './fly-size.ts';
import { periodOn } from './group-periods.ts';
import { type StageToCome, stagesToCome, takesLargerPrey } from './growth-ahead.ts';

export interface RationNow {
  /** The period that holds, as written; null when the group is not there. */
  written: GroupPeriod | null;
  learned: LearnedRation;
  /** Null for a strain that nobody knows. */
  flySize: FlySizeNow | null;
  /** Flies as they now are for one of ordinary size; 1 where the ration stands as written. */
  sizeFactor: number;
  stages: StageToCome[];
}

export interface FeedingNow {
  /** The facts, with each group's periods from today on as they are to be fed. */
  facts: Facts;
  groups: FeedingGroup[];
  rations: Map<string, RationNow>;
  /** By strain. */
  sizes: ReadonlyMap<string, FlySizeNow | null>;
}

/** Feedings further back than this say little of today's appetite. */
const appetiteDays = 60;
/** However flies are weighed, a ration in them is not taken further from the written one than this. */
const sizeBounds = { low: 0.6, high: 1.6 };
const asWritten: LearnedRation = { factor: 1, logSd: 0, appetite: null, given: 1, noted: 0, withLeftOvers: 0 };

const kept = new WeakMap<Facts, Map<Day, FeedingNow>>();
/** By the groups that `feedingNow` gave: facts that are changed in other ways keep them. */
const given = new WeakMap<Facts['groups'], FeedingNow>();

/** Worked out once for facts and day; asked again with groups that it gave, it keeps them, whatever else was changed. */
export function feedingNow(facts: Facts, on: Day): FeedingNow {
  const before = given.get(facts.groups);
  if (before) return before.facts === facts ? before : { ...before, facts };
  const byDay = kept.get(facts) ?? new Map<Day, FeedingNow>();
  kept.set(facts, byDay);
  let now = byDay.get(on);
  if (!now) {
    now = workedOut(facts, on);
    byDay.set(on, now);
    given.set(now.facts.groups, now);
  }
  return now;
}

/** The groups behind facts that `feedingNow` gave, or the facts' own as they are written. */
export function groupsOf(facts: Facts): FeedingGroup[] {
  return given.get(facts.groups)?.groups ?? facts.groups.map(feedingGroup);
}

function workedOut(facts: Facts, on: Day): FeedingNow {
  const sizes = new Map(facts.strains.map(({ strain }) => [strain, flySizeNow(facts, strain, on)]));
  const rations = new Map<string, RationNow>();
  const groups: FeedingGroup[] = [];
  const adjusted = facts.groups.map((group) => {
    const ration = rationNow(facts, group, sizes, on);
    rations.set(group.group, ration);
    const periods = group.periods.flatMap((period, i) => periodsFrom(facts, group, i, period, ration, sizes, on));
    groups.push({
      group: group.group,
      periods: periods.map(({ need }) => need),
      appetiteLogSd: ration.learned.logSd,
    });
    return { ...group, periods: periods.map(({ fed }) => fed) };
  });
  return { facts: { ...facts, groups: adjusted }, groups, rations, sizes };
}

function rationNow(facts: Facts, group: GroupFacts, sizes: ReadonlyMap<string, FlySizeNow | null>, on: Day): RationNow {
  const written = periodOn(group, dayNumber(on));
  const coming = written ?? group.periods.find(({ from }) => from > on) ?? null;
  const flySize = coming ? (sizes.get(coming.strain) ?? null) : null;
  const sizeFactor = coming ? sizeFactorOf(coming, flySize) : 1;
  return {
    written,
    learned:
      written && !written.keepRation ? learnedRation(feedingsOf(facts, group, written, sizeFactor, on)) : asWritten,
    flySize,
    sizeFactor,
    stages: coming ? stagesToCome(facts, group, coming, Math.max(dayNumber(on), dayNumber(coming.from))) : [],
  };
}

function sizeFactorOf({ keepRation }: GroupPeriod, size: FlySizeNow | null): number {
  if (keepRation || !size || !(size.nowMg.middle > 0)) return 1;
  return Math.min(sizeBounds.high, Math.max(sizeBounds.low, size.ordinaryMg / size.nowMg.middle));
}

/** Feedings under the ration that holds; one that was written anew is learned anew. */
function feedingsOf(facts: Facts, { group, periods }: GroupFacts, now: GroupPeriod, sizeFactor: number, on: Day) {
  return facts.feedings.flatMap(({ group: fed, on: fedOn, flies, leftOver }) => {
    const age = daysBetween(fedOn, on);
    if (fed !== group || age < 0 || age > appetiteDays || flies === 0) return [];
    const then = periods.findLast(({ from }) => from <= fedOn);
    if (!then || then.fliesPerFeeding !== now.fliesPerFeeding || then.strain !== now.strain) return [];
    const planned = then.count * then.fliesPerFeeding * sizeFactor;
    return planned > 0 ? [{ flies, planned, leftOver }] : [];
  });
}

interface Fed {
  fed: GroupPeriod;
  need: FeedingPeriod;
}

/** A written period as it is fed: before today as it is, from today on adjusted, and the stages that follow. */
function periodsFrom(
  facts: Facts,
  group: GroupFacts,
  i: number,
  period: GroupPeriod,
  ration: RationNow,
  sizes: ReadonlyMap<string, FlySizeNow | null>,
  on: Day,
): Fed[] {
  const next = group.periods[i + 1];
  const isOver = (next && next.from <= on) || (period.until !== null && period.until < on);
  if (isOver) return [certain(period)];
  const begun = period.from < on && !period.arrival;
  const from = begun ? on : period.from;
  const learnedFactor = sameRation(period, ration.written) ? ration.learned.factor : 1;
  const factorFor = (strain: string) => learnedFactor * sizeFactorOf(period, sizes.get(strain) ?? null);
  const fed = {
    ...period,
    from,
    fliesPerFeeding: period.fliesPerFeeding * factorFor(period.strain),
    canWaitDays: patienceOf(period),
  };
  const stages = period.keepRation
    ? []
    : stagesToCome(facts, group, period, Math.max(dayNumber(on), dayNumber(from)))
        .filter((stage) => stage.row !== null || isMeasured(facts, group, period, on))
        .filter(({ begins }) => !next || begins.middle < dayNumber(next.from))
        .map((stage) => stageFed(fed, stage, factorFor(stage.strain)));
  return [...(begun ? [certain(period)] : []), { fed, need: notYetHatched(fed, on) }, ...stages];
}

/** As written; else the kind's; else the usual day. */
export function patienceOf({ canWaitIsWritten, canWaitDays, animal }: GroupPeriod): number {
  return canWaitIsWritten ? canWaitDays : (kindOf(animal)?.canWaitDays ?? canWaitDays);
}

function certain(period: GroupPeriod): Fed {
  return { fed: period, need: feedingPeriod(period) };
}

function sameRation(period: GroupPeriod, now: GroupPeriod | null): boolean {
  return now !== null && period.fliesPerFeeding === now.fliesPerFeeding && period.strain === now.strain;
}

function isMeasured(facts: Facts, group: GroupFacts, period: GroupPeriod, on: Day): boolean {
  const row = kindOf(period.animal);
  return row !== null && takesLargerPrey(facts, group, row, on);
}

/** Days that are past without a hatch are ruled out. */
function notYetHatched(period: GroupPeriod, on: Day): FeedingPeriod {
  const need = feedingPeriod(period);
  const today = dayNumber(on);
  if (!need.arrival || need.arrival.latest < today) return need;
  return { ...need, arrival: { ...need.arrival, earliest: Math.max(need.arrival.earliest, today) } };
}

function stageFed(before: GroupPeriod, { animal, begins, strain, fliesPerFeeding }: StageToCome, factor: number): Fed {
  const { count, arrival } = before;
  const fed: GroupPeriod = {
    ...before,
    animal,
    from: dayFromNumber(begins.middle),
    strain,
    fliesPerFeeding: fliesPerFeeding * factor,
    arrival: arrival && { ...arrival, ...datesOf(begins) },
  };
  const numbers = { countLow: arrival?.countLow ?? count, countHigh: arrival?.countHigh ?? count };
  return {
    fed,
    need: { ...feedingPeriod(fed), arrival: { earliest: begins.earliest, latest: begins.latest, ...numbers } },
  };
}

function datesOf({ earliest, latest }: { earliest: DayNumber; latest: DayNumber }) {
  return { earliest: dayFromNumber(earliest), latest: dayFromNumber(latest) };
}
