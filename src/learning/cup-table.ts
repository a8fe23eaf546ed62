/**
 * The evidence of one cup: how likely its notes are in every cell of log pace and log yield, for every
 * way of writing that the keeper may have. The table depends on this cup's notes alone, so a new note
 * changes one table and the others are kept.
 */
import type { CupEvidence } from './evidence.ts';
import type { FliesPerTap } from './flies-per-tap.ts';
import { type KeeperSetting, settingWithoutWords } from './keeper-settings.ts';
import { cellValue, type ParameterGrid } from './parameter-grid.ts';
import type { FullPrior } from './priors.ts';
import { type Sighting, sightingLogLikelihood, sightingsOf } from './sightings.ts';
import { type StockEvent, stockEvents } from './stock-events.ts';
import { gapsBetween, StockFilter, type StockState } from './stock-filter.ts';
import { warpedEmergence } from './warped-emergence.ts';

export interface CupTable {
  /** False when nothing was noted that says anything about pace or yield. */
  informative: boolean;
  /** Index of the layer that serves each keeper setting. */
  layerOf: Uint8Array;
  /** Likelihood over its greatest value: layer x pace x yield. */
  likelihood: Float32Array;
  /** Log of (stock today + 1): mean and variance, in the same order. */
  stockZ: Float32Array;
  stockW: Float32Array;
  /** Cells outside this box are below 1e-8 of the greatest: first and last pace, first and last yield. */
  box: [number, number, number, number];
}

export interface TableContext {
  grid: ParameterGrid;
  prior: FullPrior;
  settings: KeeperSetting[];
  survival: number;
  taps: FliesPerTap;
}

const negligible = 1e-8;

/** The table of one cup. */
export function cupTable(cup: CupEvidence, context: TableContext): CupTable {
  const events = stockEvents(cup, context.taps);
  const sightings = sightingsOf(cup);
  const { layerOf, layers } = layersFor(events, context.settings);
  const cells = context.grid.pace.size * context.grid.yield.size;
  const logs = new Float64Array(layers.length * cells);
  const table: CupTable = {
    informative: sightings.length > 0 || events.some((e) => e.kind !== 'presumed' && e.kind !== 'unknown'),
    layerOf,
    likelihood: new Float32Array(layers.length * cells),
    stockZ: new Float32Array(layers.length * cells),
    stockW: new Float32Array(layers.length * cells),
    box: [0, context.grid.pace.size - 1, 0, context.grid.yield.size - 1],
  };
  for (let p = 0; p < context.grid.pace.size; p++) fillPace(p, cup, events, sightings, layers, context, logs, table);
  normalise(logs, table.likelihood);
  table.box = boxOf(table.likelihood, context.grid);
  return table;
}

/** A cup without words needs no layers for the words' scale; one without numbers and words needs one. */
function layersFor(
  events: readonly StockEvent[],
  settings: KeeperSetting[],
): { layerOf: Uint8Array; layers: KeeperSetting[] } {
  const words = events.some((e) => e.kind === 'word');
  const notes = events.some((e) => e.kind === 'count' || e.kind === 'take');
  const standIn = settings.map((_, k) => {
    if (words) return k;
    return settingWithoutWords(notes ? k : Math.floor(settings.length / 2));
  });
  const wanted = [...new Set(standIn)];
  return {
    layerOf: Uint8Array.from(standIn, (k) => wanted.indexOf(k)),
    layers: wanted.map((k) => settings[k] as KeeperSetting),
  };
}

/** All yields of one pace, in every layer. */
function fillPace(
  p: number,
  cup: CupEvidence,
  events: readonly StockEvent[],
  sightings: readonly Sighting[],
  layers: readonly KeeperSetting[],
  context: TableContext,
  logs: Float64Array,
  table: CupTable,
): void {
  const { grid, prior } = context;
  const logPace = cellValue(grid.pace, p);
  const seen = sightingLogLikelihood(sightings, logPace, prior.wrongEntryShare);
  const emerged = warpedEmergence(cup.emergedByAge, logPace, cup.ageDays);
  const gaps = gapsBetween(events, emerged, context.survival, cup.ageDays);
  const end: StockState = { z: 0, w: 0 };
  layers.forEach((setting, layer) => {
    const filter = new StockFilter(prior, setting);
    const row = (layer * grid.pace.size + p) * grid.yield.size;
    for (let y = 0; y < grid.yield.size; y++) {
      logs[row + y] = seen + filter.run(events, gaps, Math.exp(cellValue(grid.yield, y)), end);
      table.stockZ[row + y] = end.z;
      table.stockW[row + y] = end.w;
    }
  });
}

function normalise(logs: Float64Array, into: Float32Array): void {
  let greatest = -Infinity;
  for (let i = 0; i < logs.length; i++) greatest = Math.max(greatest, logs[i] as number);
  for (let i = 0; i < logs.length; i++) into[i] = Math.exp((logs[i] as number) - greatest);
}

function boxOf(likelihood: Float32Array, grid: ParameterGrid): CupTable['box'] {
  const columns = grid.yield.size;
  const rows = grid.pace.size;
  const box: CupTable['box'] = [rows - 1, 0, columns - 1, 0];
  for (let i = 0; i < likelihood.length; i++) {
    if ((likelihood[i] as number) < negligible) continue;
    const y = i % columns;
    const p = Math.floor(i / columns) % rows;
    box[0] = Math.min(box[0], p);
    box[1] = Math.max(box[1], p);
    box[2] = Math.min(box[2], y);
    box[3] = Math.max(box[3], y);
  }
  return box;
}
