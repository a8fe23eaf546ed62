/** One cup's pace and yield, drawn from its evidence times the normal prior that the household gives. */
import type { RandomStream } from '../foundation/index.ts';
import type { CupTable } from './cup-table.ts';
import { type Axis, cellValue, type ParameterGrid } from './parameter-grid.ts';

/** Means and sds of the two priors. */
export interface CupPrior {
  paceMean: number;
  paceSd: number;
  yieldMean: number;
  yieldSd: number;
}

/** Draws cells of one grid; keeps its work arrays between calls. */
export class CellDraw {
  pace = 0;
  yield = 0;
  private readonly paceWeight: Float64Array;
  private readonly yieldWeight: Float64Array;

  constructor(
    private readonly grid: ParameterGrid,
    private readonly random: RandomStream,
  ) {
    this.paceWeight = new Float64Array(grid.pace.size);
    this.yieldWeight = new Float64Array(grid.yield.size);
  }

  /** Sets `pace` and `yield`: a cell drawn at its chance, then a place within the cell. */
  draw(table: CupTable, layer: number, prior: CupPrior): void {
    const { grid } = this;
    const { box } = table;
    const [p0, p1] = within(box.firstPace, box.paces, grid.pace, prior.paceMean, prior.paceSd);
    const [y0, y1] = within(box.firstYield, box.yields, grid.yield, prior.yieldMean, prior.yieldSd);
    this.fillYieldWeights(y0, y1, prior);
    fillBell(this.paceWeight, p0, p1, grid.pace, prior.paceMean, prior.paceSd);
    let total = 0;
    for (let p = p0; p <= p1; p++) {
      const weight = (this.paceWeight[p] as number) * this.rowSum(table, layer, p, y0, y1) + 1e-290;
      this.paceWeight[p] = weight;
      total += weight;
    }
    const p = pick(this.paceWeight, p0, p1, this.random.uniform() * total);
    const y = this.drawYield(table, layer, p, y0, y1);
    this.pace = cellValue(grid.pace, p) + (this.random.uniform() - 0.5) * grid.pace.step;
    this.yield = cellValue(grid.yield, y) + (this.random.uniform() - 0.5) * grid.yield.step;
  }

  private fillYieldWeights(y0: number, y1: number, prior: CupPrior): void {
    fillBell(this.yieldWeight, y0, y1, this.grid.yield, prior.yieldMean, prior.yieldSd);
  }

  private rowSum(table: CupTable, layer: number, p: number, y0: number, y1: number): number {
    const row = rowStart(table, layer, p);
    const { likelihood } = table;
    const { yieldWeight } = this;
    let sum = 0;
    for (let y = y0; y <= y1; y++) sum += (likelihood[row + y] as number) * (yieldWeight[y] as number);
    return sum;
  }

  private drawYield(table: CupTable, layer: number, p: number, y0: number, y1: number): number {
    const row = rowStart(table, layer, p);
    let total = 0;
    for (let y = y0; y <= y1; y++) {
      this.yieldWeight[y] = (this.yieldWeight[y] as number) * (table.likelihood[row + y] as number) + 1e-290;
      total += this.yieldWeight[y] as number;
    }
    return pick(this.yieldWeight, y0, y1, this.random.uniform() * total);
  }
}

/**
 * Normal weights of cells `first` to `last`, up to a factor. Each is the one before times a ratio that
 * itself shrinks by a constant factor, which spares an exponential a cell.
 */
function fillBell(weights: Float64Array, first: number, last: number, axis: Axis, mean: number, sd: number): void {
  const step = axis.step / sd;
  const z = (cellValue(axis, first) - mean) / sd;
  const shrink = Math.exp(-step * step);
  let ratio = Math.exp(-z * step - 0.5 * step * step);
  let weight = Math.exp(-0.5 * z * z);
  for (let i = first; i <= last; i++) {
    weights[i] = weight;
    weight *= ratio;
    ratio *= shrink;
  }
}

/** The part of a box that the prior does not rule out (4.5 sds); all of it when nothing would be left. */
function within(first: number, size: number, axis: Axis, mean: number, sd: number): [number, number] {
  const last = first + size - 1;
  const low = Math.max(first, Math.floor((mean - 4.5 * sd - axis.first) / axis.step));
  const high = Math.min(last, Math.ceil((mean + 4.5 * sd - axis.first) / axis.step));
  return low <= high ? [low, high] : [first, last];
}

function pick(weights: Float64Array, first: number, last: number, at: number): number {
  let left = at;
  for (let i = first; i < last; i++) {
    left -= weights[i] as number;
    if (left < 0) return i;
  }
  return last;
}

/** Where yield 0 of one pace would stand in a table's likelihood. */
function rowStart({ box }: CupTable, layer: number, pace: number): number {
  return (layer * box.paces + pace - box.firstPace) * box.yields - box.firstYield;
}
