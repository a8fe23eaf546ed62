/** What is believed of one strain in this household, and of its living cups. */
import type { RandomStream } from '../foundation/index.ts';
import type { CupPrior } from './cell-draw.ts';
import { tableIndex } from './cell-draw.ts';
import type { CupTable, TableContext } from './cup-table.ts';
import { type Design, fitted, paceDesign, yieldDesign } from './design.ts';
import type { CupBelief, CupEvidence, LevelBelief, StrainBelief, StrainEvidence } from './evidence.ts';
import { drawFailureChance, failureSummary, failureWeights } from './failure.ts';
import { fliesPerTap } from './flies-per-tap.ts';
import { HouseholdChain } from './household-chain.ts';
import { type KeeperSetting, keeperSettings } from './keeper-settings.ts';
import { offCourse } from './off-course.ts';
import { cellOf, parameterGrid } from './parameter-grid.ts';
import type { FullPrior } from './priors.ts';
import type { TableMemory } from './table-memory.ts';
import { drawEndAge, logLife } from './useful-life.ts';

const warmUpSweeps = 150;
/** The chain runs at least this long, and is thinned when fewer draws are wanted. */
const leastSweeps = 600;

interface Work {
  strain: StrainEvidence;
  prior: FullPrior;
  context: TableContext;
  tables: CupTable[];
  pace: Design;
  yield: Design;
  chain: HouseholdChain;
  random: RandomStream;
  draws: number;
}

/** Everything that is learned of one strain. */
export function learnStrain(
  strain: StrainEvidence,
  prior: FullPrior,
  draws: number,
  random: RandomStream,
  memory: TableMemory,
): { belief: StrainBelief; cups: Map<string, CupBelief> } {
  const work = prepare(strain, prior, draws, random, memory);
  const kept = new Kept(work);
  for (let i = 0; i < warmUpSweeps; i++) work.chain.sweep();
  const thin = Math.max(1, Math.ceil(leastSweeps / draws));
  for (let s = 0; s < draws; s++) {
    for (let i = 0; i < thin; i++) work.chain.sweep();
    kept.keep(s);
  }
  return { belief: kept.belief(), cups: kept.cups() };
}

function prepare(
  strain: StrainEvidence,
  prior: FullPrior,
  draws: number,
  random: RandomStream,
  memory: TableMemory,
): Work {
  const grid = parameterGrid(prior);
  const settings = keeperSettings(prior);
  const taps = fliesPerTap(strain);
  const context = { grid, prior, settings, survival: strain.adultDailySurvival, taps };
  const tables = strain.cups.map((cup) => memory.tableOf(cup, context));
  const pace = paceDesign(strain.cups, prior);
  const yields = yieldDesign(strain.cups, prior);
  const days = [...new Set(strain.cups.map((c) => c.session))].sort((a, b) => a - b);
  const sessionOf = Uint32Array.from(strain.cups, (c) => days.indexOf(c.session));
  const sessions = days.length;
  const chain = new HouseholdChain({ tables, pace, yield: yields, sessionOf, sessions, grid, prior, settings, random });
  return { strain, prior, context, tables, pace, yield: yields, chain, random, draws };
}

/** Collects the chain's kept states. */
class Kept {
  private readonly meanPace: Float64Array;
  private readonly meanYield: Float64Array;
  private readonly newPace: Float64Array;
  private readonly newYield: Float64Array;
  private readonly yieldSpread: Float64Array;
  private readonly paceSpread: Float64Array;
  private readonly failure: Float64Array;
  private readonly generation: Float64Array;
  private readonly settingCount: Float64Array;
  private readonly recipes: LevelBelief[];
  private readonly places: LevelBelief[];
  private readonly failureWeights: Float64Array;
  private readonly life: { mean: number; sd: number };
  private readonly newest: number;
  private readonly living: LivingCup[];

  constructor(private readonly work: Work) {
    const { draws, strain, prior } = work;
    const column = () => new Float64Array(draws);
    [this.meanPace, this.meanYield, this.newPace, this.newYield] = [column(), column(), column(), column()];
    [this.yieldSpread, this.paceSpread, this.failure, this.generation] = [column(), column(), column(), column()];
    this.settingCount = new Float64Array(work.context.settings.length);
    this.recipes = levelBeliefs(work.yield.recipes, (c) => c.recipe ?? '', work);
    this.places = levelBeliefs(work.yield.places, (c) => c.place, work);
    this.failureWeights = failureWeights(prior.failure, strain.cups);
    this.life = logLife(strain.cups, prior.lifeSd);
    this.newest = newestCup(strain.cups);
    this.living = strain.cups.flatMap((cup, i) => (cup.ended === null ? [livingCup(cup, i, draws)] : []));
  }

  keep(s: number): void {
    const { chain, pace, yield: yields, random } = this.work;
    this.meanPace[s] = chain.householdMean(pace, chain.paceCoefficients);
    this.meanYield[s] = chain.householdMean(yields, chain.yieldCoefficients);
    this.newPace[s] = this.ofNewest(pace, chain.paceCoefficients);
    this.newYield[s] = this.ofNewest(yields, chain.yieldCoefficients);
    this.yieldSpread[s] = chain.yieldSpread;
    this.paceSpread[s] = chain.paceSpread;
    this.failure[s] = drawFailureChance(this.failureWeights, random);
    if (yields.generation !== null) this.generation[s] = chain.yieldCoefficients[yields.generation] as number;
    this.settingCount[chain.setting] = (this.settingCount[chain.setting] as number) + 1;
    this.keepLevels(this.recipes, pace.recipes, yields.recipes, s);
    this.keepLevels(this.places, pace.places, yields.places, s);
    const life = this.life.mean + this.life.sd * random.normal();
    for (const cup of this.living) this.keepCup(cup, s, life);
  }

  private ofNewest(design: Design, coefficients: Float64Array): number {
    return this.newest < 0 ? (coefficients[0] as number) : fitted(design, this.newest, coefficients);
  }

  private keepLevels(levels: LevelBelief[], pace: Map<string, number>, yields: Map<string, number>, s: number): void {
    const { chain } = this.work;
    for (const level of levels) {
      level.draws.logPace[s] = chain.paceCoefficients[pace.get(level.key) as number] as number;
      level.draws.logYield[s] = chain.yieldCoefficients[yields.get(level.key) as number] as number;
    }
  }

  private keepCup(cup: LivingCup, s: number, life: number): void {
    const { chain, prior, random, pace, yield: yields } = this.work;
    const x = chain.cupPace[cup.index] as number;
    const y = chain.cupYield[cup.index] as number;
    cup.expectedPace[s] = fitted(pace, cup.index, chain.paceCoefficients);
    cup.expectedYield[s] = fitted(yields, cup.index, chain.yieldCoefficients);
    cup.draws.logPace[s] = x;
    // The curve is not the world: what is yet to come strays by the structural discrepancy.
    cup.draws.logYield[s] = y + prior.discrepancySd * random.normal();
    cup.draws.endAge[s] = drawEndAge(
      cup.evidence,
      this.failure[s] as number,
      { mean: life, cupSd: prior.lifeSd },
      random,
    );
    cup.draws.fliesNow[s] = this.fliesNow(cup.index, x, y);
  }

  private fliesNow(i: number, x: number, y: number): number {
    const { tables, chain, context, random } = this.work;
    const { grid } = context;
    const table = tables[i] as CupTable;
    const inside = (axis: typeof grid.pace, v: number) => (cellOf(axis, v) >= 0 ? v : Math.sign(v) * -axis.first);
    const at = tableIndex(grid, table.layerOf[chain.setting] as number, inside(grid.pace, x), inside(grid.yield, y));
    const z = (table.stockZ[at] as number) + Math.sqrt(table.stockW[at] as number) * random.normal();
    return Math.max(0, Math.exp(z) - 1);
  }

  belief(): StrainBelief {
    const { work } = this;
    return {
      logPace: meanAndSd(this.meanPace),
      logYield: meanAndSd(this.meanYield),
      cupYieldSd: meanAndSd(this.yieldSpread).mean,
      cupPaceSd: meanAndSd(this.paceSpread).mean,
      failureChance: failureSummary(this.failureWeights),
      countSd: this.meanCountSd(),
      fliesPerTap: work.context.taps.takes > 0 ? work.context.taps.median : null,
      logLife: this.life,
      generationYield: work.yield.generation === null ? null : meanAndSd(this.generation),
      recipes: this.recipes,
      places: this.places,
      informativeCups: work.tables.filter((t) => t.informative).length,
      draws: {
        logPace: this.newPace,
        logYield: this.newYield,
        failureChance: this.failure,
        cupYieldSd: this.yieldSpread,
      },
    };
  }

  private meanCountSd(): number {
    const { settings } = this.work.context;
    return settings.reduce((sum, k, i) => sum + k.countSd * (this.settingCount[i] as number), 0) / this.work.draws;
  }

  cups(): Map<string, CupBelief> {
    const { context } = this.work;
    const usual = context.settings[this.settingCount.indexOf(Math.max(...this.settingCount))] as KeeperSetting;
    return new Map(
      this.living.map((cup) => [
        cup.evidence.id,
        { draws: cup.draws, offCourse: offCourse(cup.evidence, context, usual, this.expectedOf(cup)) },
      ]),
    );
  }

  private expectedOf(cup: LivingCup): CupPrior {
    const pace = meanAndSd(cup.expectedPace);
    const yields = meanAndSd(cup.expectedYield);
    return {
      paceMean: pace.mean,
      paceSd: Math.hypot(pace.sd, meanAndSd(this.paceSpread).mean),
      yieldMean: yields.mean,
      yieldSd: Math.hypot(yields.sd, meanAndSd(this.yieldSpread).mean, this.work.prior.sessionYieldSd),
    };
  }
}

interface LivingCup {
  index: number;
  evidence: CupEvidence;
  draws: CupBelief['draws'];
  expectedPace: Float64Array;
  expectedYield: Float64Array;
}

function livingCup(evidence: CupEvidence, index: number, draws: number): LivingCup {
  const column = () => new Float64Array(draws);
  return {
    index,
    evidence,
    draws: { logPace: column(), logYield: column(), endAge: column(), fliesNow: column() },
    expectedPace: column(),
    expectedYield: column(),
  };
}

function levelBeliefs(columns: Map<string, number>, keyOf: (cup: CupEvidence) => string, work: Work): LevelBelief[] {
  return [...columns.keys()].map((key) => ({
    key,
    cups: work.strain.cups.filter((cup, i) => keyOf(cup) === key && work.tables[i]?.informative).length,
    draws: { logPace: new Float64Array(work.draws), logYield: new Float64Array(work.draws) },
  }));
}

/** Index of the cup of the latest session, or -1. */
function newestCup(cups: readonly CupEvidence[]): number {
  let newest = -1;
  cups.forEach((cup, i) => {
    if (newest < 0 || cup.session > (cups[newest] as CupEvidence).session) newest = i;
  });
  return newest;
}

function meanAndSd(values: Float64Array): { mean: number; sd: number } {
  const mean = values.reduce((a, b) => a + b, 0) / values.length;
  const squares = values.reduce((a, b) => a + (b - mean) ** 2, 0);
  return { mean, sd: Math.sqrt(squares / Math.max(1, values.length - 1)) };
}
