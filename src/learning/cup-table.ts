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
  /** Likelihood over its greatest value: layer x pace x yield. */
  likelihood: Float32Array;
  /** Its logarithm, pace x yield x layer: one cell's layers lie side by side. */
  logByCell: Float32Array;
  layers: number;
  /** Log of (stock today + 1): mean and variance, in the same order. */
  stockZ: Float32Array;
  stockW: Float32Array;
  /** Cells outside this box are below 1e-7 of the greatest: first and last pace, first and last yield. */
  box: [number, number, number, number];
}

export interface TableContext {
  grid: ParameterGrid;
  prior: FullPrior;
  settings: KeeperSetting[];
  survival: number;
  taps: FliesPerTap;
}

const negligible = 1e-7;

/** The table of one cup. */
export function cupTable(cup: CupEvidence, context: TableContext): CupTable {
  const events = stockEvents(cup, context.taps);
  const sightings = sightingsOf(cup);
  const { layerOf, layers } = layersFor(events, context.settings);
  const size = layers.length * context.grid.pace.size * context.grid.yield.size;
  const table: CupTable = {
    informative: sightings.length > 0 || events.some((e) => e.kind !== 'presumed' && e.kind !== 'unknown'),
    layerOf,
    likelihood: new Float32Array(size),
    logByCell: new Float32Array(size),
    layers: layers.length,
    stockZ: new Float32Array(size),
    stockW: new Float32Array(size),
    box: [0, context.grid.pace.size - 1, 0, context.grid.yield.size - 1],
  };
  normalise(new TableFill(cup, events, sightings, layers, context, table).fill(), table);
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

/** Runs the filter over the cells of one cup's table. */
class TableFill {
  private readonly logs: Float64Array;
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
    private readonly table: CupTable,
  ) {
    const { grid, prior, survival } = context;
    const paces = Array.from({ length: grid.pace.size }, (_, p) => cellValue(grid.pace, p));
    this.logs = new Float64Array(table.likelihood.length).fill(-Infinity);
    this.yields = Array.from({ length: grid.yield.size }, (_, y) => Math.exp(cellValue(grid.yield, y)));
    this.seen = paces.map((pace) => sightingLogLikelihood(sightings, pace, prior.wrongEntryShare));
    this.gaps = paces.map((pace) => {
      const emerged = warpedEmergence(cup.emergedByAge, pace, cup.ageDays);
      return gapsBetween(events, emerged, survival, cup.ageDays);
    });
  }

  /** Log likelihoods of all cells. */
  fill(): Float64Array {
    const vaguest = Math.max(...this.layers.map((l) => l.countSd));
    const vague = this.layers.map((l) => l.countSd === vaguest);
    const everywhere = this.gaps.map(() => new Uint8Array(this.yields.length).fill(1));
    this.layers.forEach((_, layer) => vague[layer] && this.fillLayer(layer, everywhere));
    const worthwhile = this.worthwhileCells(vague);
    this.layers.forEach((_, layer) => vague[layer] || this.fillLayer(layer, worthwhile));
    return this.logs;
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
        this.table.stockZ[row + y] = this.end.z;
        this.table.stockW[row + y] = this.end.w;
      }
    }
  }
}

function normalise(logs: Float64Array, table: CupTable): void {
  let greatest = -Infinity;
  for (let i = 0; i < logs.length; i++) greatest = Math.max(greatest, logs[i] as number);
  const cells = logs.length / table.layers;
  for (let i = 0; i < logs.length; i++) {
    const log = (logs[i] as number) - greatest;
    table.likelihood[i] = Math.exp(log);
    table.logByCell[(i % cells) * table.layers + Math.floor(i / cells)] = log;
  }
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
