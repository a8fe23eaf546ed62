/** Counts what happens in many worlds: short days, sizes and runs of shortfalls, cups, sessions, bands. */
import { quantileSorted } from '../../foundation/index.ts';
import type { PreparedHousehold } from '../forecast/prepared-household.ts';
import type { BoughtKind, WorldEvents } from './household-world.ts';

export interface Tally extends WorldEvents {
  worlds: number;
  /** Worlds in which the strain fell short on the day: `[strain][day]`. */
  shortWorlds: Float64Array[];
  /** Flies missing, summed over worlds. */
  missingFlies: Float64Array[];
  cupsStarted: Float64Array;
  cupsBought: Float64Array;
  sessions: number;
  /** Cups that were wanted but found no founders, summed over worlds. */
  cupsMissed: number;
  worldsWithoutShortfall: number;
  /** Short days of any strain, summed over worlds. */
  shortDays: number;
  /** Longest run of short days, of each world that has any. */
  longestRuns: number[];
  /** Samples kept when bands are wanted: `[strain][day * worlds + world]`. */
  emerging: Float32Array[] | null;
  onHand: Float32Array[] | null;
  beginWorld(): void;
  endWorld(): void;
}

export interface TallyOptions {
  worlds: number;
  bands: boolean;
  /** First day that counts for runs and for worlds without a shortfall, by strain. */
  judgedFrom: number[];
}

/** Flies by which the need may be missed before a day is called short: less than one fly. */
const tolerance = 0.5;

export function makeTally(household: PreparedHousehold, options: TallyOptions): Tally {
  const { days } = household.problem;
  const shortToday = new Uint8Array(days);
  const sessionToday = new Uint8Array(days);
  let world = 0;
  const tally: Tally = {
    ...emptyCounts(household, options),
    beginWorld() {
      shortToday.fill(0);
      sessionToday.fill(0);
    },
    endWorld() {
      closeWorld(tally, shortToday, sessionToday);
      world++;
      tally.worlds = world;
    },
    day(k, t, emerging, onHand, needed, fed) {
      if (t >= days) return;
      if (needed - fed > tolerance) {
        addTo(tally.shortWorlds[k], t, 1);
        addTo(tally.missingFlies[k], t, needed - fed);
        if (t >= (options.judgedFrom[k] ?? 0)) shortToday[t] = 1;
      }
      if (tally.emerging && tally.onHand) {
        (tally.emerging[k] as Float32Array)[t * options.worlds + world] = emerging;
        (tally.onHand[k] as Float32Array)[t * options.worlds + world] = onHand;
      }
    },
    started(k, t, cups, wanted) {
      if (t >= days) return;
      addTo(tally.cupsStarted, k, cups);
      tally.cupsMissed += wanted - cups;
      if (cups > 0) sessionToday[t] = 1;
    },
    ordered(k, t, arrival, _kind: BoughtKind, cups) {
      if (t < days && arrival < days) addTo(tally.cupsBought, k, cups);
    },
  };
  return tally;
}

function emptyCounts(household: PreparedHousehold, { worlds, bands }: TallyOptions) {
  const { days } = household.problem;
  const strains = household.strains.length;
  const perDay = () => household.strains.map(() => new Float64Array(days));
  const samples = () => (bands ? household.strains.map(() => new Float32Array(days * worlds)) : null);
  return {
    worlds: 0,
    shortWorlds: perDay(),
    missingFlies: perDay(),
    cupsStarted: new Float64Array(strains),
    cupsBought: new Float64Array(strains),
    sessions: 0,
    cupsMissed: 0,
    worldsWithoutShortfall: 0,
    shortDays: 0,
    longestRuns: [],
    emerging: samples(),
    onHand: samples(),
  };
}

function addTo(array: Float64Array | undefined, at: number, amount: number): void {
  if (array) array[at] = (array[at] as number) + amount;
}

function closeWorld(tally: Tally, shortToday: Uint8Array, sessionToday: Uint8Array): void {
  let run = 0;
  let longest = 0;
  for (let t = 0; t < shortToday.length; t++) {
    tally.sessions += sessionToday[t] as number;
    run = shortToday[t] ? run + 1 : 0;
    if (run > longest) longest = run;
    tally.shortDays += shortToday[t] as number;
  }
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
