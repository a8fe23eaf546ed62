/** Counts what happens in many worlds: short days, sizes and runs of shortfalls, cups, sessions, bands. */
import { quantileSorted } from '../../foundation/index.ts';
import type { PreparedHousehold } from '../forecast/prepared-household.ts';
import { type GroupTally, makeGroupTally } from './group-tally.ts';
import type { BoughtKind, WorldEvents } from './household-world.ts';
import type { FedDay } from './rations.ts';
import { marksWithin, tolerance } from './short-days.ts';

export interface Tally extends WorldEvents {
  worlds: number;
  /** Worlds in which some ration of the strain was missed on the day, patience over: `[strain][day]`. */
  shortWorlds: Float64Array[];
  /** Worlds in which some ration of that day was not given on it. */
  lateWorlds: Float64Array[];
  /** Flies missed, and of those the share of all that was wanted on the days that fell short; sums over worlds. */
  missingFlies: Float64Array[];
  missingShare: number;
  shortStrainDays: number;
  cupsStarted: Float64Array;
  cupsBought: Float64Array;
  /** Deliveries with cups ordered within the horizon, summed over worlds. */
  parcels: number;
  sessions: number;
  /** Of each world: cups started and bought, sessions held, short days. */
  byWorld: WorldCounts;
  /** Worlds in which a session was held, by day. */
  sessionWorlds: Float64Array;
  /** Cups that were wanted but found no founders, summed over worlds. */
  cupsMissed: number;
  worldsWithoutShortfall: number;
  /** Worlds without a shortfall in the first 13 weeks, 52 weeks, and the whole horizon. */
  marks: { days: number; worlds: number }[];
  /** Short days of any strain, summed over worlds. */
  shortDays: number;
  /** Longest run of short days, of each world that has any. */
  longestRuns: number[];
  groups: GroupTally[];
  /** Samples kept when bands are wanted: `[strain][day * worlds + world]`. */
  emerging: Float32Array[] | null;
  onHand: Float32Array[] | null;
  beginWorld(): void;
  endWorld(): void;
}

export interface WorldCounts {
  started: Float64Array;
  bought: Float64Array;
  sessions: Float64Array;
  shortDays: Float64Array;
}

export interface TallyOptions {
  worlds: number;
  bands: boolean;
  /** First day that counts for runs and for worlds without a shortfall, by strain. */
  judgedFrom: number[];
}

export function makeTally(household: PreparedHousehold, options: TallyOptions): Tally {
  const { days } = household.problem;
  const shortToday = new Uint8Array(days);
  const sessionToday = new Uint8Array(days);
  const parcelOn = new Uint8Array(days);
  let world = 0;
  const tally: Tally = {
    ...emptyCounts(household, options),
    beginWorld() {
      shortToday.fill(0);
      sessionToday.fill(0);
      parcelOn.fill(0);
      for (const group of tally.groups) group.beginWorld();
    },
    endWorld() {
      closeWorld(tally, world, shortToday, sessionToday);
      for (const group of tally.groups) group.endWorld();
      world++;
      tally.worlds = world;
    },
    day(k, t, emerging, onHand, fed) {
      if (t >= days) return;
      if (fed.late > tolerance) addTo(tally.lateWorlds[k], t, 1);
      if (fed.missed > tolerance) countShort(tally, k, t, fed, t >= (options.judgedFrom[k] ?? 0) ? shortToday : null);
      if (tally.emerging && tally.onHand) {
        (tally.emerging[k] as Float32Array)[t * options.worlds + world] = emerging;
        (tally.onHand[k] as Float32Array)[t * options.worlds + world] = onHand;
      }
    },
    started(k, t, cups, wanted) {
      if (t >= days) return;
      addTo(tally.cupsStarted, k, cups);
      addTo(tally.byWorld.started, world, cups);
      tally.cupsMissed += wanted - cups;
      if (cups > 0) sessionToday[t] = 1;
    },
    ordered(k, t, arrival, _kind: BoughtKind, cups) {
      if (t >= days || arrival >= days) return;
      addTo(tally.cupsBought, k, cups);
      if (!parcelOn[arrival]) tally.parcels++;
      parcelOn[arrival] = 1;
      addTo(tally.byWorld.bought, world, cups);
    },
  };
  return tally;
}

function countShort(tally: Tally, k: number, t: number, fed: FedDay, shortToday: Uint8Array | null): void {
  addTo(tally.shortWorlds[k], t, 1);
  addTo(tally.missingFlies[k], t, fed.missed);
  if (!shortToday) return;
  shortToday[t] = 1;
  tally.shortStrainDays++;
  tally.missingShare += Math.min(1, fed.missed / Math.max(fed.needed, fed.missed));
  tally.groups[k]?.missed(t, fed.missedByClass);
}

function emptyCounts(household: PreparedHousehold, { worlds, bands, judgedFrom }: TallyOptions) {
  const { days } = household.problem;
  const strains = household.strains.length;
  const perDay = () => household.strains.map(() => new Float64Array(days));
  const perWorld = () => new Float64Array(worlds);
  const samples = () => (bands ? household.strains.map(() => new Float32Array(days * worlds)) : null);
  return {
    worlds: 0,
    shortWorlds: perDay(),
    lateWorlds: perDay(),
    missingFlies: perDay(),
    missingShare: 0,
    shortStrainDays: 0,
    cupsStarted: new Float64Array(strains),
    cupsBought: new Float64Array(strains),
    parcels: 0,
    sessions: 0,
    byWorld: { started: perWorld(), bought: perWorld(), sessions: perWorld(), shortDays: perWorld() },
    sessionWorlds: new Float64Array(days),
    cupsMissed: 0,
    worldsWithoutShortfall: 0,
    marks: marksWithin(days).map((mark) => ({ days: mark, worlds: 0 })),
    shortDays: 0,
    longestRuns: [],
    groups: household.strains.map((strain, k) => makeGroupTally(strain, days, judgedFrom[k] ?? 0)),
    emerging: samples(),
    onHand: samples(),
  };
}

function addTo(array: Float64Array | undefined, at: number, amount: number): void {
  if (array) array[at] = (array[at] as number) + amount;
}

function closeWorld(tally: Tally, world: number, shortToday: Uint8Array, sessionToday: Uint8Array): void {
  let run = 0;
  let longest = 0;
  let sessions = 0;
  let short = 0;
  for (let t = 0; t < shortToday.length; t++) {
    sessions += sessionToday[t] as number;
    addTo(tally.sessionWorlds, t, sessionToday[t] as number);
    run = shortToday[t] ? run + 1 : 0;
    if (run > longest) longest = run;
    short += shortToday[t] as number;
  }
  tally.sessions += sessions;
  tally.shortDays += short;
  addTo(tally.byWorld.sessions, world, sessions);
  addTo(tally.byWorld.shortDays, world, short);
  const first = longest === 0 ? shortToday.length : shortToday.indexOf(1);
  for (const mark of tally.marks) if (first >= mark.days) mark.worlds++;
  if (longest === 0) tally.worldsWithoutShortfall++;
  else tally.longestRuns.push(longest);
}

/** The quantile `p` of each day's sample, by day. */
export function bandByDay(samples: Float32Array, worlds: number, days: number, ps: number[]): Float64Array[] {
  const bands = ps.map(() => new Float64Array(days));
  for (let t = 0; t < days; t++) {
    const sorted = samples.slice(t * worlds, (t + 1) * worlds).sort();
    ps.forEach((p, i) => {
      (bands[i] as Float64Array)[t] = quantileSorted(sorted, p);
    });
  }
  return bands;
}
