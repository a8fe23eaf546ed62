/**
 * The household's posterior by Gibbs sampling: cups given the household, the household given its cups.
 * Every kept state is one scenario, in which household, recipes, places, sessions and cups belong
 * together. Deterministic for a seed.
 */
import type { RandomStream } from '../foundation/index.ts';
import { CellDraw } from './cell-draw.ts';
import { type CupTable, cellInBox } from './cup-table.ts';
import { type Design, fitted } from './design.ts';
import { drawCoefficients } from './gaussian-draw.ts';
import { type KeeperSetting, settingWithWordsMoved } from './keeper-settings.ts';
import { cellOf, type ParameterGrid } from './parameter-grid.ts';
import type { FullPrior } from './priors.ts';
import { drawIndex, drawSpread } from './spread.ts';

export interface ChainInput {
  tables: CupTable[];
  pace: Design;
  yield: Design;
  /** Index of each cup's session, 0..sessions-1. */
  sessionOf: Uint32Array;
  sessions: number;
  grid: ParameterGrid;
  prior: FullPrior;
  settings: KeeperSetting[];
  random: RandomStream;
}

/** Log likelihood of a cell that was left out of a table: as good as none, and finite. */
const ruledOut = -60;

/** So many cups hold their household too fast for a wide step ever to be taken. */
const manyCups = 30;

/** Log sd by which yields stray from the words' scale when both are moved. */
const wordJitter = 0.05;

/** The sampler's state; read it between sweeps. */
export class HouseholdChain {
  readonly paceCoefficients: Float64Array;
  readonly yieldCoefficients: Float64Array;
  readonly cupPace: Float64Array;
  readonly cupYield: Float64Array;
  paceSpread: number;
  yieldSpread: number;
  setting: number;
  private readonly sessionEffect: Float64Array;
  private readonly sessionSize: Float64Array;
  private readonly used: Uint8Array;
  private readonly usedCount: number;
  private readonly residual: Float64Array;
  private readonly cells: CellDraw;

  constructor(private readonly input: ChainInput) {
    const cups = input.tables.length;
    this.paceCoefficients = new Float64Array(input.pace.columns);
    this.yieldCoefficients = new Float64Array(input.yield.columns);
    this.cupPace = new Float64Array(cups);
    this.cupYield = new Float64Array(cups);
    this.residual = new Float64Array(cups);
    this.paceSpread = input.prior.cupPaceSd;
    this.yieldSpread = input.prior.cupYieldSd;
    this.setting = Math.floor(input.settings.length / 2);
    this.used = Uint8Array.from(input.tables, (t) => (t.informative ? 1 : 0));
    this.usedCount = this.used.reduce((a, b) => a + b, 0);
    this.sessionEffect = new Float64Array(input.sessions);
    this.sessionSize = new Float64Array(input.sessions);
    input.sessionOf.forEach((s, i) => {
      this.sessionSize[s] = (this.sessionSize[s] as number) + (this.used[i] as number);
    });
    this.cells = new CellDraw(input.grid, input.random);
  }

  /** One pass over every unknown. */
  sweep(): void {
    this.drawCups();
    this.drawSpreads();
    this.drawHousehold();
    this.drawSessions();
    this.shift(this.input.pace, this.paceCoefficients, this.cupPace, this.paceSpread);
    this.shift(this.input.yield, this.yieldCoefficients, this.cupYield, this.yieldSpread);
    this.shiftWords();
    this.drawSetting();
  }

  /** Mean of the cups' expected values: the household as it is, over its recipes and places. */
  householdMean(design: Design, coefficients: Float64Array): number {
    const cups = this.input.tables.length;
    if (cups === 0) return coefficients[0] as number;
    let sum = 0;
    for (let i = 0; i < cups; i++) sum += fitted(design, i, coefficients);
    return sum / cups;
  }

  /** Each cup's yield against what household, recipe, place and session expect, in spreads of cups. */
  yieldScores(): Float64Array {
    this.takeSessionsOff();
    return this.residual.map(
      (yieldLog, i) => (yieldLog - fitted(this.input.yield, i, this.yieldCoefficients)) / this.yieldSpread,
    );
  }

  private drawCups(): void {
    const { tables, pace, yield: yields, random, sessionOf } = this.input;
    tables.forEach((table, i) => {
      const paceMean = fitted(pace, i, this.paceCoefficients);
      const session = this.sessionEffect[sessionOf[i] as number] as number;
      const yieldMean = fitted(yields, i, this.yieldCoefficients) + session;
      if (!table.informative) {
        this.cupPace[i] = paceMean + this.paceSpread * random.normal();
        this.cupYield[i] = yieldMean + this.yieldSpread * random.normal();
        return;
      }
      const prior = { paceMean, paceSd: this.paceSpread, yieldMean, yieldSd: this.yieldSpread };
      this.cells.draw(table, table.layerOf[this.setting] as number, prior);
      this.cupPace[i] = this.cells.pace;
      this.cupYield[i] = this.cells.yield;
    });
  }

  private drawSpreads(): void {
    const { prior, random } = this.input;
    this.paceSpread = drawSpread(prior.cupPaceSd, this.usedCount, this.squaresOfPace(), random);
    this.yieldSpread = drawSpread(prior.cupYieldSd, this.usedCount, this.squaresOfYield(), random);
  }

  private squaresOfPace(): number {
    let sum = 0;
    for (let i = 0; i < this.cupPace.length; i++) {
      if (this.used[i]) sum += ((this.cupPace[i] as number) - fitted(this.input.pace, i, this.paceCoefficients)) ** 2;
    }
    return sum;
  }

  private squaresOfYield(): number {
    this.takeSessionsOff();
    let sum = 0;
    for (let i = 0; i < this.residual.length; i++) {
      if (this.used[i])
        sum += ((this.residual[i] as number) - fitted(this.input.yield, i, this.yieldCoefficients)) ** 2;
    }
    return sum;
  }

  /** `residual` = the cups' yields less their sessions' luck. */
  private takeSessionsOff(): void {
    this.input.sessionOf.forEach((s, i) => {
      this.residual[i] = (this.cupYield[i] as number) - (this.sessionEffect[s] as number);
    });
  }

  private drawHousehold(): void {
    const { pace, yield: yields, random } = this.input;
    drawCoefficients(pace, this.cupPace, this.used, this.paceSpread, random, this.paceCoefficients);
    this.takeSessionsOff();
    drawCoefficients(yields, this.residual, this.used, this.yieldSpread, random, this.yieldCoefficients);
  }

  private drawSessions(): void {
    const { prior, random, sessionOf, yield: yields } = this.input;
    const sums = new Float64Array(this.sessionEffect.length);
    sessionOf.forEach((s, i) => {
      if (!this.used[i]) return;
      sums[s] = (sums[s] as number) + (this.cupYield[i] as number) - fitted(yields, i, this.yieldCoefficients);
    });
    const weight = 1 / (this.yieldSpread * this.yieldSpread);
    for (let s = 0; s < sums.length; s++) {
      const precision = 1 / prior.sessionYieldSd ** 2 + weight * (this.sessionSize[s] as number);
      this.sessionEffect[s] = (weight * (sums[s] as number)) / precision + random.normal() / Math.sqrt(precision);
    }
  }

  /**
   * Moves the household and all its cups together (Metropolis): where notes are vague, cups and their
   * mean hold each other fast and the one-at-a-time draws creep.
   */
  private shift(design: Design, coefficients: Float64Array, values: Float64Array, spread: number): void {
    if (this.usedCount === 0) return;
    const { random } = this.input;
    const householdSd = design.priorSd[0] as number;
    const small = spread / Math.sqrt(this.usedCount);
    for (const step of this.usedCount > manyCups ? [small] : [small, householdSd / 2]) {
      const move = step * random.normal();
      const was = coefficients[0] as number;
      const priorChange = (was * was - (was + move) ** 2) / (2 * householdSd * householdSd);
      const change = priorChange + this.likelihoodChange(values, move, this.setting);
      if (Math.log(random.uniform() + 1e-300) < change) this.moveAll(coefficients, values, move);
    }
  }

  /**
   * Moves the words' scale and all yields together: a keeper of words alone cannot tell rich cups from a
   * generous tongue, and neither moves without the other.
   */
  private shiftWords(): void {
    if (this.usedCount === 0) return;
    const { random, settings, prior } = this.input;
    const to = settingWithWordsMoved(this.setting, random.uniform() < 0.5 ? 1 : -1);
    const jitter = wordJitter * random.normal();
    if (to < 0) return;
    const [was, will] = [settings[this.setting] as KeeperSetting, settings[to] as KeeperSetting];
    const move = will.wordOffset - was.wordOffset + jitter;
    const household = this.yieldCoefficients[0] as number;
    const change =
      will.logPrior -
      was.logPrior +
      (household * household - (household + move) ** 2) / (2 * prior.householdYieldSd ** 2) +
      this.likelihoodChange(this.cupYield, move, to);
    if (!(Math.log(random.uniform() + 1e-300) < change)) return;
    this.setting = to;
    this.moveAll(this.yieldCoefficients, this.cupYield, move);
  }

  private moveAll(coefficients: Float64Array, values: Float64Array, move: number): void {
    coefficients[0] = (coefficients[0] as number) + move;
    for (let i = 0; i < values.length; i++) values[i] = (values[i] as number) + move;
  }

  private likelihoodChange(values: Float64Array, move: number, setting: number): number {
    const paceMove = values === this.cupPace ? move : 0;
    const yieldMove = values === this.cupYield ? move : 0;
    let sum = 0;
    for (let i = 0; i < values.length; i++) {
      if (!this.used[i]) continue;
      const moved = this.logLikelihood(i, setting, paceMove, yieldMove);
      if (moved === -Infinity) return moved;
      sum += moved - this.logLikelihood(i, this.setting, 0, 0);
    }
    return sum;
  }

  /** Log likelihood of one cup's notes at its present place, moved; -Infinity outside the grid. */
  private logLikelihood(i: number, setting: number, paceMove: number, yieldMove: number): number {
    const { layers, layerOf, logByCell } = this.input.tables[i] as CupTable;
    const cell = this.cellOfCup(i, paceMove, yieldMove);
    return cell < 0 ? -Infinity : (logByCell[cell * layers + (layerOf[setting] as number)] as number);
  }

  private cellOfCup(i: number, paceMove: number, yieldMove: number): number {
    const { grid, tables } = this.input;
    const p = cellOf(grid.pace, (this.cupPace[i] as number) + paceMove);
    const y = cellOf(grid.yield, (this.cupYield[i] as number) + yieldMove);
    return cellInBox((tables[i] as CupTable).box, p, y);
  }

  private drawSetting(): void {
    const { settings, random } = this.input;
    const logs = settings.map((setting) => setting.logPrior);
    for (let i = 0; i < this.used.length; i++) if (this.used[i]) this.addLayers(i, logs);
    const greatest = Math.max(...logs);
    this.setting = drawIndex(
      logs.map((l) => Math.exp(l - greatest)),
      random.uniform(),
    );
  }

  /** Adds one cup's log likelihood under every setting. */
  private addLayers(i: number, logs: number[]): void {
    const { layerOf, layers, logByCell } = this.input.tables[i] as CupTable;
    const at = this.cellOfCup(i, 0, 0);
    if (layers === 1 || at < 0) return;
    for (let k = 0; k < logs.length; k++) {
      logs[k] = (logs[k] as number) + Math.max(ruledOut, logByCell[at * layers + (layerOf[k] as number)] as number);
    }
  }
}
