/**
 * How surprising the notes of a cup are. Every note is held against its own forecast, made from the
 * household and from what was taken but without the cup's other notes: the chance of a value as far
 * out, on the nearer side.
 */
import { type Said, said } from '../foundation/index.ts';
import { stageSaid, wordSaid } from './note-said.ts';
import type { CupEvidence, StrayNote } from './evidence.ts';
import type { TableContext } from './cup-table.ts';
import type { CupPrior } from './cell-draw.ts';
import type { KeeperSetting } from './keeper-settings.ts';
import { quickCdf } from './normal-quick.ts';
import { type Axis, cellValue } from './parameter-grid.ts';
import { type Sighting, sightingChance, sightingsOf } from './sightings.ts';
import { type StockEvent, stockEvents } from './stock-events.ts';
import { gapsBetween, StockFilter, type StockState } from './stock-filter.ts';
import { warpedEmergence } from './warped-emergence.ts';

export interface Surprise {
  what: Said;
  /** Chance of a note at least as far out, were the cup an ordinary one of this household. */
  chance: number;
  direction: 'late' | 'early' | 'few' | 'many';
  note: StrayNote;
}

/** Every note of a cup against its forecast, with the chance of one as far out on its side. */
export function surprises(
  cup: CupEvidence,
  context: TableContext,
  setting: KeeperSetting,
  expected: CupPrior,
): Surprise[] {
  return [...sightingSurprises(cup, context, expected), ...stockSurprises(cup, context, setting, expected)];
}

function sightingSurprises(cup: CupEvidence, context: TableContext, expected: CupPrior): Surprise[] {
  return sightingsOf(cup).flatMap((s) => {
    const late = chanceOf({ ...s, seenAge: Infinity }, context, expected);
    const early = chanceOf({ ...s, notYetAge: -Infinity }, context, expected);
    const dueAgeDays = Math.round(s.nominalAge * Math.exp(-expected.paceMean));
    const stage = stageSaid[s.stage];
    const noteOf = (seen: boolean, ageDays: number): StrayNote => ({
      kind: 'stage',
      stage: s.stage,
      seen,
      ageDays,
      dueAgeDays,
    });
    const out: Surprise[] = [];
    if (s.notYetAge !== -Infinity) {
      const what = said`no ${stage} yet on day ${s.notYetAge}; expected near day ${dueAgeDays}`;
      out.push({ what, chance: late, direction: 'late', note: noteOf(false, s.notYetAge) });
    }
    if (s.seenAge !== Infinity) {
      const what = said`${stage} already on day ${s.seenAge}; expected near day ${dueAgeDays}`;
      out.push({ what, chance: early, direction: 'early', note: noteOf(true, s.seenAge) });
    }
    return out;
  });
}

/** Chance of a bracket over the expected paces. */
function chanceOf(sighting: Sighting, context: TableContext, expected: CupPrior): number {
  const axis = context.grid.pace;
  let sum = 0;
  let total = 0;
  for (let p = 0; p < axis.size; p++) {
    const weight = bell(cellValue(axis, p), expected.paceMean, expected.paceSd);
    sum += weight * sightingChance(sighting, cellValue(axis, p));
    total += weight;
  }
  return sum / total;
}

function bell(value: number, mean: number, sd: number): number {
  return Math.exp(-0.5 * ((value - mean) / sd) ** 2);
}

/** One note's forecast: chances on both sides, and the middle and spread of the log of (flies + 1). */
interface NoteForecast {
  low: number;
  high: number;
  mean: number;
  square: number;
}

function stockSurprises(
  cup: CupEvidence,
  context: TableContext,
  setting: KeeperSetting,
  expected: CupPrior,
): Surprise[] {
  const events = stockEvents(cup, context.taps);
  const notes = events.map((e, i) => ({ e, i })).filter(({ e }) => e.kind === 'count' || e.kind === 'word' || isAll(e));
  if (notes.length === 0) return [];
  const forecasts = forecastNotes(
    notes.map((n) => n.i),
    events,
    cup,
    context,
    setting,
    expected,
  );
  return notes.flatMap(({ e }, k) => surprise(e, forecasts[k] as NoteForecast));
}

/** A take that emptied the cup tells how many flies there were. */
function isAll(event: StockEvent): boolean {
  return event.kind === 'take' && event.emptied;
}

function forecastNotes(
  noteAt: number[],
  events: StockEvent[],
  cup: CupEvidence,
  context: TableContext,
  setting: KeeperSetting,
  expected: CupPrior,
): NoteForecast[] {
  const { grid, prior } = context;
  const filter = new StockFilter(prior, setting);
  const out = noteAt.map(() => ({ low: 0, high: 0, mean: 0, square: 0 }));
  const state: StockState = { z: 0, w: 0 };
  const yields = bells(grid.yield, expected.yieldMean, expected.yieldSd);
  let total = 0;
  for (const [logPace, paceWeight] of bells(grid.pace, expected.paceMean, expected.paceSd)) {
    const emerged = warpedEmergence(cup.emergedByAge, logPace, cup.ageDays);
    noteAt.forEach((i, k) => {
      const event = events[i] as StockEvent;
      const before = events.slice(0, i).filter((e) => e.kind !== 'count' && e.kind !== 'word');
      const gaps = gapsBetween(before, emerged, context.survival, event.age);
      for (const [logYield, weight] of yields) {
        filter.run(before, gaps, Math.exp(logYield), state);
        addForecast(out[k] as NoteForecast, event, state, paceWeight * weight, context, setting);
      }
    });
    total += paceWeight * yields.reduce((sum, [, weight]) => sum + weight, 0);
  }
  for (const f of out) for (const key of ['low', 'high', 'mean', 'square'] as const) f[key] /= total;
  return out;
}

/** Every other value of an axis with its normal weight, where that counts. */
function bells(axis: Axis, mean: number, sd: number): [number, number][] {
  return Array.from({ length: Math.ceil(axis.size / 2) }, (_, i) => cellValue(axis, 2 * i))
    .map((value): [number, number] => [value, bell(value, mean, sd)])
    .filter(([, weight]) => weight > 1e-4);
}

function addForecast(
  forecast: NoteForecast,
  event: StockEvent,
  state: StockState,
  weight: number,
  context: TableContext,
  setting: KeeperSetting,
): void {
  const wordVariance = event.kind === 'word' ? context.prior.wordSd ** 2 : 0;
  const variance = state.w + setting.countSd ** 2 + wordVariance + Math.exp(-2 * state.z) / 12;
  const [low, high] = limits(event, setting);
  const sd = Math.sqrt(variance);
  forecast.low += weight * quickCdf((high - state.z) / sd);
  forecast.high += weight * quickCdf((state.z - low) / sd);
  forecast.mean += weight * state.z;
  forecast.square += weight * (state.z * state.z + variance);
}

/** The log of (flies + 1) that a note stands for: between these. */
function limits(event: StockEvent, setting: KeeperSetting): [number, number] {
  if (event.kind === 'word') return [event.low + setting.wordOffset, event.high + setting.wordOffset];
  if (event.kind === 'count' || event.kind === 'take')
    return [Math.log(event.flies + 0.5), Math.log(event.flies + 1.5)];
  return [-Infinity, Infinity];
}

function surprise(event: StockEvent, forecast: NoteForecast): Surprise[] {
  const sd = Math.sqrt(Math.max(0, forecast.square - forecast.mean ** 2));
  const least = Math.max(0, Math.round(Math.exp(forecast.mean - 1.645 * sd) - 1));
  const most = Math.max(0, Math.round(Math.exp(forecast.mean + 1.645 * sd) - 1));
  const word = event.kind === 'word' ? event.word : null;
  const flies = 'flies' in event ? Math.round(event.flies) : null;
  const seen = word === null ? said`${flies ?? 0} flies` : wordSaid(word);
  const note: StrayNote = { kind: 'flies', flies, word, ageDays: event.age, leastFlies: least, mostFlies: most };
  const what = said`${seen} on day ${event.age}, where ${least} to ${most} flies were likely`;
  return forecast.low < forecast.high
    ? [{ what, chance: forecast.low, direction: 'few', note }]
    : [{ what, chance: forecast.high, direction: 'many', note }];
}
