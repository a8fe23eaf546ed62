/** The chain's kept states of one strain, and the beliefs that they add up to. */
import { type ChainSnapshot, snapshotOf, snapshotsWanted } from './chain-snapshot.ts';
import type { TableContext } from './cup-table.ts';
import { type Design, fitted, placeOf, recipeOf } from './design.ts';
import { doubtfulNotes } from './doubtful-notes.ts';
import type { CupBelief, CupEvidence, DoubtfulNote, LevelBelief, StrainBelief, StrainEvidence } from './evidence.ts';
import { type Band, bandOf } from '../foundation/index.ts';
import type { FliesPerTap } from './flies-per-tap.ts';
import { drawFailure, type FailurePosterior, failurePosterior, failureSummary } from './failure.ts';
import type { ChainInput, HouseholdChain } from './household-chain.ts';
import { countSpread, type KeeperSetting } from './keeper-settings.ts';
import { drawStrays, type LearnedStrays, learnedStrays } from './learned-strays.ts';
import { LivingCup } from './living-cup.ts';
import { logFit } from './log-fit.ts';
import { OrdinaryDraws } from './ordinary-draws.ts';
import { meanAndSd } from './summary.ts';
import { logLife } from './useful-life.ts';

export class KeptDraws {
  private readonly mean: { pace: Float64Array; yield: Float64Array };
  /** Cups to come: recipe and place of the newest cup. */
  private readonly next: { pace: Float64Array; yield: Float64Array };
  private readonly spread: { pace: Float64Array; yield: Float64Array };
  private readonly slopes: { generation: Float64Array; founders: Float64Array };
  private readonly failureChance: Float64Array;
  private readonly settingCount: Float64Array;
  private readonly writing: { countSd: Float64Array; wordOffset: Float64Array };
  private readonly recipes: LevelBelief[];
  private readonly places: LevelBelief[];
  private readonly failure: FailurePosterior;
  private readonly life: { mean: number; sd: number };
  private readonly newest: number;
  private readonly ordinary: OrdinaryDraws;
  private readonly living: LivingCup[];
  private readonly snapshots: ChainSnapshot[] = [];
  private strays: LearnedStrays | null = null;
  private readonly cupSums: { pace: Float64Array; yield: Float64Array };

  constructor(
    private readonly strain: StrainEvidence,
    private readonly context: TableContext,
    private readonly input: ChainInput,
    private readonly draws: number,
  ) {
    const column = () => new Float64Array(draws);
    this.mean = { pace: column(), yield: column() };
    this.next = { pace: column(), yield: column() };
    this.spread = { pace: column(), yield: column() };
    this.slopes = { generation: column(), founders: column() };
    this.failureChance = column();
    this.settingCount = new Float64Array(context.settings.length);
    this.writing = { countSd: column(), wordOffset: column() };
    this.recipes = this.levelBeliefs(input.yield.recipes, recipeOf);
    this.places = this.levelBeliefs(input.yield.places, placeOf);
    this.failure = failurePosterior(context.prior, strain.cups);
    this.life = logLife(strain.cups, context.prior.lifeSd);
    this.newest = newestCup(strain.cups);
    this.cupSums = { pace: new Float64Array(strain.cups.length), yield: new Float64Array(strain.cups.length) };
    this.ordinary = new OrdinaryDraws(input.pace, input.yield, draws);
    this.living = strain.cups.flatMap((cup, i) =>
      cup.ended === null ? [new LivingCup(cup, i, input, this.ordinary.of(i), draws)] : [],
    );
  }

  /** Keeps the chain's state as scenario `s`. */
  keep(chain: HouseholdChain, s: number): void {
    const { pace, yield: yields, random } = this.input;
    this.mean.pace[s] = chain.householdMean(pace, chain.paceCoefficients);
    this.mean.yield[s] = chain.householdMean(yields, chain.yieldCoefficients);
    this.next.pace[s] = this.ofNewest(pace, chain.paceCoefficients);
    this.next.yield[s] = this.ofNewest(yields, chain.yieldCoefficients);
    this.spread.pace[s] = chain.paceSpread;
    this.spread.yield[s] = chain.yieldSpread;
    for (const [name, c] of yields.slopes) this.slopes[name][s] = chain.yieldCoefficients[c] as number;
    this.keepSetting(chain.setting, s);
    this.keepLevels(chain, this.recipes, pace.recipes, yields.recipes, s);
    this.keepLevels(chain, this.places, pace.places, yields.places, s);
    const failureChance = drawFailure(this.failure, random).cup;
    this.failureChance[s] = failureChance;
    const luck = { failureChance, logLife: this.life.mean + this.life.sd * random.normal() };
    this.ordinary.keep(s, chain.paceCoefficients, chain.yieldCoefficients);
    for (const cup of this.living) cup.keep(chain, s, luck);
    if (s % Math.ceil(this.draws / snapshotsWanted) === 0) this.snapshots.push(snapshotOf(chain));
    addTo(this.cupSums.pace, chain.cupPace);
    addTo(this.cupSums.yield, chain.cupYield);
  }

  private keepSetting(setting: number, s: number): void {
    const { countSd, wordOffset } = this.context.settings[setting] as KeeperSetting;
    this.settingCount[setting] = (this.settingCount[setting] as number) + 1;
    this.writing.countSd[s] = countSd;
    this.writing.wordOffset[s] = wordOffset;
  }

  private ofNewest(design: Design, coefficients: Float64Array): number {
    return this.newest < 0 ? (coefficients[0] as number) : fitted(design, this.newest, coefficients);
  }

  private keepLevels(
    chain: HouseholdChain,
    levels: LevelBelief[],
    pace: Map<string, number>,
    yields: Map<string, number>,
    s: number,
  ): void {
    for (const level of levels) {
      level.draws.logPace[s] = chain.paceCoefficients[pace.get(level.key) as number] as number;
      level.draws.logYield[s] = chain.yieldCoefficients[yields.get(level.key) as number] as number;
    }
  }

  private levelBeliefs(columns: Map<string, number>, keyOf: (cup: CupEvidence) => string): LevelBelief[] {
    const { strain, input, draws } = this;
    return [...columns.keys()].map((key) => ({
      key,
      cups: strain.cups.filter((cup, i) => keyOf(cup) === key && input.tables[i]?.informative).length,
      draws: { logPace: new Float64Array(draws), logYield: new Float64Array(draws) },
    }));
  }

  belief(): StrainBelief {
    const failure = failureSummary(this.failure);
    const { slopes } = this.input.yield;
    return {
      logPace: meanAndSd(this.mean.pace),
      logYield: meanAndSd(this.mean.yield),
      cupYieldSd: meanAndSd(this.spread.yield).mean,
      cupPaceSd: meanAndSd(this.spread.pace).mean,
      failureChance: failure.cup,
      sessionFailureChance: failure.session,
      countSd: this.meanCountSd(),
      counting: this.counting(),
      fliesPerTap: this.context.taps.takes > 0 ? this.context.taps.median : null,
      perTap: perTap(this.context.taps),
      logLife: this.life,
      generationYield: slopes.has('generation') ? meanAndSd(this.slopes.generation) : null,
      foundersYield: slopes.has('founders') ? meanAndSd(this.slopes.founders) : null,
      recipes: this.recipes,
      places: this.places,
      fit: this.fit(),
      strays: middleOf(this.learnedStrays()),
      informativeCups: this.input.tables.filter((t) => t.informative).length,
      draws: {
        logPace: this.next.pace,
        logYield: this.next.yield,
        failureChance: this.failureChance,
        cupYieldSd: this.spread.yield,
        ...this.writing,
      },
    };
  }

  private learnedStrays(): LearnedStrays {
    this.strays ??= learnedStrays(this.strain.cups, this.context, this.snapshots);
    return this.strays;
  }

  private fit(): StrainBelief['fit'] {
    return logFit({
      cups: this.strain.cups,
      context: this.context,
      setting: this.usualSetting(),
      believedOf: (i) => this.believedOf(i),
      snapshots: this.snapshots,
      strays: this.learnedStrays(),
      random: this.input.random,
    });
  }

  private believedOf(i: number): { logPace: number; logYield: number } {
    const { pace, yield: yields } = this.cupSums;
    return { logPace: (pace[i] as number) / this.draws, logYield: (yields[i] as number) / this.draws };
  }

  /** Doubtful notes of all cups, by cup; cups without any are left out. */
  doubtful(): Map<string, DoubtfulNote[]> {
    const setting = this.usualSetting();
    const byCup = this.strain.cups.map((cup, i): [string, DoubtfulNote[]] => [
      cup.id,
      doubtfulNotes(cup, this.context, setting, this.believedOf(i)),
    ]);
    return new Map(byCup.filter(([, notes]) => notes.length > 0));
  }

  private meanCountSd(): number {
    const { settings } = this.context;
    return settings.reduce((sum, k, i) => sum + k.countSd * (this.settingCount[i] as number), 0) / this.draws;
  }

  /** Count errors over the settings, each spread evenly over half the way to its neighbours. */
  private counting(): Band {
    const { settings } = this.context;
    const values = settings.flatMap(({ countSd }, i) =>
      Array.from(
        { length: this.settingCount[i] as number },
        (_, k) => countSd * Math.exp(countSpread * ((k + 0.5) / (this.settingCount[i] as number) - 0.5)),
      ),
    );
    return bandOf(values);
  }

  private usualSetting(): KeeperSetting {
    const { context, settingCount } = this;
    return context.settings[settingCount.indexOf(Math.max(...settingCount))] as KeeperSetting;
  }

  cups(): Map<string, CupBelief> {
    const usual = this.usualSetting();
    const spreads = { pace: meanAndSd(this.spread.pace).mean, yield: meanAndSd(this.spread.yield).mean };
    const strays = this.learnedStrays();
    const perDraw = Array.from({ length: this.draws }, () => drawStrays(strays, this.input.random));
    return new Map(this.living.map((cup) => [cup.evidence.id, cup.belief(this.context, usual, spreads, perDraw)]));
  }
}

function perTap({ median, medianLogSd, takes }: FliesPerTap): StrainBelief['perTap'] {
  if (takes === 0) return null;
  const at = (z: number) => median * Math.exp(z * medianLogSd);
  return { p05: at(-1.645), p50: median, p95: at(1.645), takes };
}

/** Weighted means. */
function middleOf({ options, weights }: LearnedStrays): StrainBelief['strays'] {
  const mean = (of: 'yieldSd' | 'paceSd') => options.reduce((sum, o, k) => sum + o[of] * (weights[k] as number), 0);
  return { yieldSd: mean('yieldSd'), paceSd: mean('paceSd') };
}

function addTo(sums: Float64Array, values: Float64Array): void {
  for (let i = 0; i < sums.length; i++) sums[i] = (sums[i] as number) + (values[i] as number);
}

/** Index of the cup of the latest session, or -1. */
function newestCup(cups: readonly CupEvidence[]): number {
  let newest = -1;
  cups.forEach((cup, i) => {
    if (newest < 0 || cup.session > (cups[newest] as CupEvidence).session) newest = i;
  });
  return newest;
}
