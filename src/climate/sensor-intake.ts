/**
 * Takes what sensors send, however often, and gives one line for each quarter of a day and place: mean of
 * the hours' means, lowest, highest. It holds a few numbers a place, whatever the flood; what no room did is
 * left out and counted. The clock is passed in.
 */
import { type Day, dayFromNumber, failed, ok, type Result } from '../foundation/index.ts';
import { DayBins, type DayBinsState } from './logger/daily-readings.ts';
import { coldestC, warmestC } from './logger/logger-reader.ts';
import type { ZoneClock } from './logger/zone-clock.ts';

export interface SensorReading {
  place: string;
  celsius: number;
  /** Instant, ms since 1970. */
  atMs: number;
}

export interface SensorSpan {
  place: string;
  on: Day;
  meanC: number;
  minC: number;
  maxC: number;
  readings: number;
  /** Readings of these hours that were left out. */
  leftOut: number;
}

export interface PlaceState {
  /** Quarter days since 1970 on the household's wall clock. */
  quarter: number;
  bins: DayBinsState;
  leftOut: number;
  lastC: number | null;
  lastMs: number;
  /** Readings in a row that were far off the last one kept. */
  offInRow: number;
  sameSinceMs: number;
  sameReadings: number;
}

export type IntakeState = Record<string, PlaceState>;

const hourMs = 3_600_000;
const quarterMs = 6 * hourMs;
const futureMs = 5 * 60_000;
/** How long after its end a quarter waits for readings under way. */
const graceMs = 10 * 60_000;
/** A step of so much from one reading to the next is believed when it comes three times running: chosen. */
const stepC = 8;
const stepRepeats = 3;
const stepWithinMs = hourMs;
/** The same digits for so long are no measurement: chosen, no source; as for logger files. */
const stuckMs = 36 * hourMs;
const stuckReadings = 36;

export class SensorIntake {
  private readonly clock: ZoneClock;
  private readonly places: Map<string, Omit<PlaceState, 'bins'> & { bins: DayBins }>;

  constructor(clock: ZoneClock, state: IntakeState = {}) {
    this.clock = clock;
    this.places = new Map(
      Object.entries(state).map(([place, kept]) => [place, { ...kept, bins: DayBins.from(kept.bins) }]),
    );
  }

  /** Keeps a reading, or says why not. @param nowMs the instant at which it came. */
  take({ place, celsius, atMs }: SensorReading, nowMs: number): Result<null> {
    if (!(celsius >= coldestC && celsius <= warmestC)) {
      this.leave(place);
      return failed({
        where: place,
        found: `${celsius} C`,
        expected: `degrees of a room, ${coldestC} to ${warmestC} C`,
      });
    }
    const quarter = this.quarterOf(atMs);
    if (!(atMs <= nowMs + futureMs) || quarter < this.quarterOf(nowMs - graceMs)) {
      return failed({
        where: place,
        found: 'a reading of another time',
        expected: 'one of these hours, not of the future',
      });
    }
    const state = this.stateOf(place, quarter, atMs);
    if (quarter < state.quarter) {
      return failed({ where: place, found: 'a reading of hours that are written down', expected: 'a newer one' });
    }
    if (this.isSpike(state, celsius, atMs)) {
      this.leave(place);
      return failed({ where: place, found: `${celsius} C, far off the last reading`, expected: 'a step that repeats' });
    }
    if (isStuck(state, celsius, atMs)) {
      this.leave(place);
      return failed({
        where: place,
        found: `${celsius} C for a day and a half`,
        expected: 'a sensor that is not stuck',
      });
    }
    state.bins.add(Math.floor((atMs + this.clock.offsetMs(atMs)) / hourMs) % 24, celsius);
    return ok(null);
  }

  /** Quarters that are over, each given once. */
  due(nowMs: number): SensorSpan[] {
    const open = this.quarterOf(nowMs - graceMs);
    return [...this.places].flatMap(([place, state]) => {
      if (state.quarter >= open) return [];
      const span = spanOf(place, state);
      state.quarter = open;
      state.bins = new DayBins();
      state.leftOut = 0;
      return span;
    });
  }

  /** All it holds, so that a restart loses nothing. */
  state(): IntakeState {
    return Object.fromEntries([...this.places].map(([place, s]) => [place, { ...s, bins: s.bins.state() }]));
  }

  private quarterOf(atMs: number): number {
    return Math.floor((atMs + this.clock.offsetMs(atMs)) / quarterMs);
  }

  private stateOf(place: string, quarter: number, atMs: number) {
    let state = this.places.get(place);
    if (!state) {
      state = {
        quarter,
        bins: new DayBins(),
        leftOut: 0,
        lastC: null,
        lastMs: atMs,
        offInRow: 0,
        sameSinceMs: atMs,
        sameReadings: 0,
      };
      this.places.set(place, state);
    }
    return state;
  }

  private leave(place: string): void {
    const state = this.places.get(place);
    if (state) state.leftOut += 1;
  }

  private isSpike(state: Pick<PlaceState, 'lastC' | 'lastMs' | 'offInRow'>, celsius: number, atMs: number): boolean {
    const far = state.lastC !== null && Math.abs(celsius - state.lastC) > stepC && atMs - state.lastMs < stepWithinMs;
    state.offInRow = far ? state.offInRow + 1 : 0;
    return far && state.offInRow < stepRepeats;
  }
}

/** Remembers the reading as the last one, too. */
function isStuck(
  state: Pick<PlaceState, 'lastC' | 'lastMs' | 'sameSinceMs' | 'sameReadings'>,
  celsius: number,
  atMs: number,
): boolean {
  if (celsius !== state.lastC) {
    state.sameSinceMs = atMs;
    state.sameReadings = 0;
  }
  state.sameReadings += 1;
  state.lastC = celsius;
  state.lastMs = atMs;
  return state.sameReadings >= stuckReadings && atMs - state.sameSinceMs >= stuckMs;
}

function spanOf(place: string, { bins, quarter, leftOut }: { bins: DayBins; quarter: number; leftOut: number }) {
  if (bins.readings === 0) return [];
  const on = dayFromNumber(Math.floor(quarter / 4));
  const { meanC, minC, maxC } = bins.reading(on);
  return [{ place, on, meanC, minC: minC ?? meanC, maxC: maxC ?? meanC, readings: bins.readings, leftOut }];
}
