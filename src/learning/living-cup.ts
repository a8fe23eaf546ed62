/** A living cup's draws, collected along the chain. */
import type { RandomStream } from '../foundation/index.ts';
import type { CupPrior } from './cell-draw.ts';
import { type CupTable, cellInBox, type TableContext } from './cup-table.ts';
import { doubtfulNotes } from './doubtful-notes.ts';
import type { CupBelief, CupEvidence } from './evidence.ts';
import type { ChainInput, HouseholdChain } from './household-chain.ts';
import type { KeeperSetting } from './keeper-settings.ts';
import { offCourse, type PaceAndYield } from './off-course.ts';
import { type Axis, cellOf } from './parameter-grid.ts';
import type { Strays } from './stock-filter.ts';
import { meanAndSd } from './summary.ts';
import { drawEndAge } from './useful-life.ts';

/** What else one scenario says of every cup. */
export interface ScenarioLuck {
  failureChance: number;
  logLife: number;
}

export class LivingCup {
  private readonly believed: PaceAndYield;
  private readonly endAge: Float64Array;
  private readonly failAge: Float64Array;
  private readonly fliesNow: Float64Array;
  private readonly random: RandomStream;

  constructor(
    readonly evidence: CupEvidence,
    private readonly index: number,
    private readonly input: ChainInput,
    private readonly expected: PaceAndYield,
    draws: number,
  ) {
    const column = () => new Float64Array(draws);
    this.believed = { logPace: column(), logYield: column() };
    this.endAge = column();
    this.failAge = column();
    this.fliesNow = column();
    this.random = input.random;
  }

  /** Takes scenario `s` off the chain. */
  keep(chain: HouseholdChain, s: number, luck: ScenarioLuck): void {
    const { index, random } = this;
    const pace = chain.cupPace[index] as number;
    const yieldLog = chain.cupYield[index] as number;
    this.believed.logPace[s] = pace;
    this.believed.logYield[s] = yieldLog;
    const life = { mean: luck.logLife, cupSd: this.input.prior.lifeSd };
    const end = drawEndAge(this.evidence, luck.failureChance, life, random);
    this.endAge[s] = end.endAge;
    this.failAge[s] = end.failAge;
    this.fliesNow[s] = this.drawFlies(chain.setting, pace, yieldLog);
  }

  private drawFlies(setting: number, pace: number, yieldLog: number): number {
    const { grid, tables } = this.input;
    const table = tables[this.index] as CupTable;
    const layer = table.layerOf[setting] as number;
    const { box } = table;
    const p = nearest(grid.pace, pace, box.firstPace, box.paces);
    const y = nearest(grid.yield, yieldLog, box.firstYield, box.yields);
    const at = layer * box.paces * box.yields + cellInBox(box, p, y);
    const z = (table.stockZ[at] as number) + Math.sqrt(table.stockW[at] as number) * this.random.normal();
    return Math.max(0, Math.exp(z) - 1);
  }

  /** What is believed, when all scenarios are in; asked once. `spreads`: log sds from cup to cup; `strays` by scenario. */
  belief(
    context: TableContext,
    setting: KeeperSetting,
    spreads: { pace: number; yield: number },
    strays: readonly Strays[],
  ): CupBelief {
    const { believed, expected, evidence } = this;
    const usual = usualCup(expected, spreads, context.prior.sessionYieldSd);
    const middle = { logPace: meanAndSd(believed.logPace).mean, logYield: meanAndSd(believed.logYield).mean };
    const astray = offCourse(evidence, context, setting, usual, { believed, ordinary: expected });
    this.stray(believed.logPace, (s) => (strays[s] as Strays).paceSd);
    this.stray(believed.logYield, (s) => (strays[s] as Strays).yieldSd);
    const { endAge, failAge, fliesNow } = this;
    return {
      draws: { ...believed, endAge, failAge, fliesNow },
      offCourse: astray,
      doubtful: doubtfulNotes(evidence, context, setting, middle),
    };
  }

  /** The curve is not the world: what is yet to come strays by the structural discrepancies. In place. */
  private stray(logs: Float64Array, sdOf: (s: number) => number): void {
    for (let s = 0; s < logs.length; s++) logs[s] = (logs[s] as number) + sdOf(s) * this.random.normal();
  }
}

/** Pace and yield of a cup like this one, of which nothing was seen. */
function usualCup(expected: PaceAndYield, spreads: { pace: number; yield: number }, sessionSd: number): CupPrior {
  const pace = meanAndSd(expected.logPace);
  const yields = meanAndSd(expected.logYield);
  return {
    paceMean: pace.mean,
    paceSd: Math.hypot(pace.sd, spreads.pace),
    yieldMean: yields.mean,
    yieldSd: Math.hypot(yields.sd, spreads.yield, sessionSd),
  };
}

/** The cell of a value, or the nearest of the `size` cells from `first` on. */
function nearest(axis: Axis, value: number, first: number, size: number): number {
  return Math.min(first + size - 1, Math.max(first, cellOf(axis, value)));
}
