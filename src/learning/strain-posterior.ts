/** What is believed of one strain in this household, and of its living cups. */
import type { RandomStream } from '../foundation/index.ts';
import { paceDesign, yieldDesign } from './design.ts';
import type { CupBelief, CupEvidence, DoubtfulNote, StrainBelief, StrainEvidence } from './evidence.ts';
import { fliesPerTap } from './flies-per-tap.ts';
import { type ChainInput, HouseholdChain } from './household-chain.ts';
import { keeperSettings } from './keeper-settings.ts';
import { KeptDraws } from './kept-draws.ts';
import { parameterGrid } from './parameter-grid.ts';
import type { FullPrior } from './priors.ts';
import type { TableMemory } from './table-memory.ts';

const warmUpSweeps = 100;
/** The chain runs at least this long, and is thinned when fewer draws are wanted. */
const leastSweeps = 600;

/** Everything that is learned of one strain, as `draws` joint scenarios. */
export function learnStrain(
  strain: StrainEvidence,
  prior: FullPrior,
  draws: number,
  random: RandomStream,
  memory: TableMemory,
): { belief: StrainBelief; cups: Map<string, CupBelief>; doubtful: Map<string, DoubtfulNote[]> } {
  const grid = parameterGrid(prior);
  const settings = keeperSettings(prior);
  const context = { grid, prior, settings, survival: strain.adultDailySurvival, taps: fliesPerTap(strain) };
  const input: ChainInput = {
    tables: strain.cups.map((cup) => memory.tableOf(cup, context)),
    pace: paceDesign(strain.cups, prior),
    yield: yieldDesign(strain.cups, prior),
    ...sessionsOf(strain.cups),
    grid,
    prior,
    settings,
    random,
  };
  const kept = new KeptDraws(strain, context, input, draws);
  run(new HouseholdChain(input), kept, draws);
  return { belief: kept.belief(), cups: kept.cups(), doubtful: kept.doubtful() };
}

function sessionsOf(cups: readonly CupEvidence[]): { sessionOf: Uint32Array; sessions: number } {
  const days = [...new Set(cups.map((c) => c.session))].sort((a, b) => a - b);
  return { sessionOf: Uint32Array.from(cups, (c) => days.indexOf(c.session)), sessions: days.length };
}

function run(chain: HouseholdChain, kept: KeptDraws, draws: number): void {
  for (let i = 0; i < warmUpSweeps; i++) chain.sweep();
  const thin = Math.max(1, Math.ceil(leastSweeps / draws));
  for (let s = 0; s < draws; s++) {
    for (let i = 0; i < thin; i++) chain.sweep();
    kept.keep(chain, s);
  }
}
