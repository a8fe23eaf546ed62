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
import { type Gaps, gapsBetween, StockFilter, type StockState } from './stock-filter.ts';
import { warpedEmergence } from './warped-emergence.ts';

export interface CupTable {
  /** False when nothing was noted that says anything about pace or yield. */
  informative: boolean;
  /** Index of the layer that serves each keeper setting. */
  layerOf: Uint8Array;
  layers: number;
  /** Cells outside this box are below 1e-6 of the greatest and are not kept. */
  box: Box;
  /** Likelihood over its greatest value: layer x pace x yield, within the box. */
  likelihood: Float32Array;
  /** Its logarithm, pace x yield x layer: one cell's layers lie side by side. */
  logByCell: Float32Array;
  /** Log of (stock today + 1), mean and variance: layer x pace x yield; empty for an ended cup. */
  stockZ: Float32Array;
  stockW: Float32Array;
}

/** A part of the grid: its first pace and yield, and how many of each. */
export interface Box {
  firstPace: number;
  paces: number;
  firstYield: number;
  yields: number;
}

/** Place of a cell in one layer of a table, or -1 outside its box. */
export function cellInBox(box: Box, pace: number, yieldIndex: number): number {
  const p = pace - box.firstPace;
  const y = yieldIndex - box.firstYield;
  return p >= 0 && p < box.paces && y >= 0 && y < box.yields ? p * box.yields + y : -1;
}

export interface TableContext {
  grid: ParameterGrid;
  prior: FullPrior;
  settings: KeeperSetting[];
  survival: number;
  taps: FliesPerTap;
}

const negligible = 1e-6;

/** The table of one cup. */
export function cupTable(cup: CupEvidence, context: TableContext): CupTable {
  const events = stockEvents(cup, context.taps);
  const sightings = sightingsOf(cup);
  const { layerOf, layers } = layersFor(events, context.settings);
  const filled = new TableFill(cup, events, sightings, layers, context).fill();
  const greatest = filled.logs.reduce((a, b) => Math.max(a, b), -Infinity);
  const box = boxOf(filled.logs, greatest + Math.log(negligible), context.grid);
  const kept = (values: Float64Array) => cutToBox(values, box, layers.length, context.grid);
  const logs = kept(filled.logs).map((log) => log - greatest);
  const none = new Float32Array(0);
  return {
    informative: sightings.length > 0 || events.some((e) => e.kind !== 'presumed' && e.kind !== 'unknown'),
    layerOf,
    layers: layers.length,
    box,
    likelihood: Float32Array.from(logs, (log) => Math.exp(log)),
    logByCell: byCell(logs, layers.length),
    stockZ: cup.ended ? none : kept(filled.stockZ),
    stockW: cup.ended ? none : kept(filled.stockW),
  };
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

/** Runs the filter over the cells of one cup's table. */
class TableFill {
  readonly logs: Float64Array;
  readonly stockZ: Float64Array;
  readonly stockW: Float64Array;
  private readonly gaps: Gaps[];
  private readonly seen: number[];
  private readonly yields: number[];
  private readonly end: StockState = { z: 0, w: 0 };

  constructor(
    cup: CupEvidence,
    private readonly events: readonly StockEvent[],
    sightings: readonly Sighting[],
    private readonly layers: readonly KeeperSetting[],
    private readonly context: TableContext,
  ) {
    const { grid, prior, survival } = context;
    const paces = Array.from({ length: grid.pace.size }, (_, p) => cellValue(grid.pace, p));
    const size = layers.length * grid.pace.size * grid.yield.size;
    this.logs = new Float64Array(size).fill(-Infinity);
    this.stockZ = new Float64Array(size);
    this.stockW = new Float64Array(size);
    this.yields = Array.from({ length: grid.yield.size }, (_, y) => Math.exp(cellValue(grid.yield, y)));
    this.seen = paces.map((pace) => sightingLogLikelihood(sightings, pace, prior.wrongEntryShare));
    this.gaps = paces.map((pace) => {
      const emerged = warpedEmergence(cup.emergedByAge, pace, cup.ageDays);
      return gapsBetween(events, emerged, survival, cup.ageDays);
    });
  }

  /** Log likelihoods of all cells, and the stock that each leads to. */
  fill(): this {
    const vaguest = Math.max(...this.layers.map((l) => l.countSd));
    const vague = this.layers.map((l) => l.countSd === vaguest);
    const everywhere = this.gaps.map(() => new Uint8Array(this.yields.length).fill(1));
    this.layers.forEach((_, layer) => vague[layer] && this.fillLayer(layer, everywhere));
    const worthwhile = this.worthwhileCells(vague);
    this.layers.forEach((_, layer) => vague[layer] || this.fillLayer(layer, worthwhile));
    return this;
  }

  /**
   * Cells that the keeper who counts worst does not rule out: better counts only rule out more, so the
   * other layers can leave the rest alone.
   */
  private worthwhileCells(vague: boolean[]): Uint8Array[] {
    const rows = this.gaps.length;
    const columns = this.yields.length;
    const cells = this.gaps.map(() => new Uint8Array(columns));
    let greatest = -Infinity;
    for (const log of this.logs) greatest = Math.max(greatest, log);
    vague.forEach((isVague, layer) => {
      for (let i = 0; isVague && i < rows * columns; i++) {
        if ((this.logs[layer * rows * columns + i] as number) < greatest + Math.log(negligible)) continue;
        (cells[Math.floor(i / columns)] as Uint8Array)[i % columns] = 1;
      }
    });
    return cells;
  }

  private fillLayer(layer: number, where: Uint8Array[]): void {
    const filter = new StockFilter(this.context.prior, this.layers[layer] as KeeperSetting);
    for (let p = 0; p < this.gaps.length; p++) {
      const row = (layer * this.gaps.length + p) * this.yields.length;
      const gaps = this.gaps[p] as Gaps;
      for (let y = 0; y < this.yields.length; y++) {
        if (!where[p]?.[y]) continue;
        const stock = filter.run(this.events, gaps, this.yields[y] as number, this.end);
        this.logs[row + y] = (this.seen[p] as number) + stock;
        this.stockZ[row + y] = this.end.z;
        this.stockW[row + y] = this.end.w;
      }
    }
  }
}

/** The smallest box with all cells of any layer that reach `least`. */
function boxOf(logs: Float64Array, least: number, grid: ParameterGrid): Box {
  const columns = grid.yield.size;
  const rows = grid.pace.size;
  let [p0, p1, y0, y1] = [rows - 1, 0, columns - 1, 0];
  for (let i = 0; i < logs.length; i++) {
    if ((logs[i] as number) < least) continue;
    const y = i % columns;
    const p = Math.floor(i / columns) % rows;
    p0 = Math.min(p0, p);
    p1 = Math.max(p1, p);
    y0 = Math.min(y0, y);
    y1 = Math.max(y1, y);
  }
  return { firstPace: p0, paces: p1 - p0 + 1, firstYield: y0, yields: y1 - y0 + 1 };
}

function cutToBox(values: Float64Array, box: Box, layers: number, grid: ParameterGrid): Float32Array {
  const out = new Float32Array(layers * box.paces * box.yields);
  let at = 0;
  for (let layer = 0; layer < layers; layer++) {
    for (let p = 0; p < box.paces; p++) {
      const from = (layer * grid.pace.size + box.firstPace + p) * grid.yield.size + box.firstYield;
      out.set(values.subarray(from, from + box.yields), at);
      at += box.yields;
    }
  }
  return out;
}

function byCell(logs: Float32Array, layers: number): Float32Array {
  const cells = logs.length / layers;
  return logs.map((_, i) => logs[(i % layers) * cells + Math.floor(i / layers)] as number);
}
