/**
 * Selection by eye: which flies of a generation become parents. Virgins are chosen before any mating,
 * so that both parents are chosen; of already mated flies only the mothers are, and the sperm they
 * carry comes from every male that emerged.
 */
import type { Layout } from './layout.ts';
import type { Sex } from './notation.ts';
import { flies, type Population } from './population.ts';

export interface Selection {
  /** Which flies are kept; the others are culled. */
  keep: 'flightless' | 'winged';
  /** `virgins`: culled before they mate. `mated`: females are chosen after they mated with any male. */
  of: 'virgins' | 'mated';
  /** Share of the flies to be culled that the eye misses, 0 to 1; 0 when not given. */
  missedShare?: number;
}

/** How flies of a generation weigh as parents, besides being culled. */
export interface ParentRule {
  selection?: Selection | undefined;
  /** How much a winged fly counts as a parent beside a flightless one, e.g. 1.5; 1 when not given. */
  wingedFitness?: number | undefined;
}

/** The parents of the next generation, as weights. Either sex may come out empty. */
export function parentsOf(layout: Layout, generation: Population, rule: ParentRule): Population {
  const { selection } = rule;
  const fathersChosen = selection?.of === 'virgins';
  return {
    females: weighted(layout, 'female', generation.females, rule, selection),
    males: weighted(layout, 'male', generation.males, rule, fathersChosen ? selection : undefined),
  };
}

function weighted(
  layout: Layout,
  sex: Sex,
  shares: Float64Array,
  { wingedFitness = 1 }: ParentRule,
  selection: Selection | undefined,
): Float64Array {
  const missed = selection?.missedShare ?? 0;
  return shares.map((share, index) => {
    if (share === 0) return 0;
    const winged = flies(layout, sex, Math.floor(index / layout.haplotypes), index % layout.haplotypes);
    const kept = !selection || winged === (selection.keep === 'winged') ? 1 : missed;
    return share * kept * (winged ? wingedFitness : 1);
  });
}

/** Throws RangeError when a share or a fitness is out of its range. */
export function checkParentRule(caller: string, { selection, wingedFitness = 1 }: ParentRule): void {
  const missed = selection?.missedShare ?? 0;
  if (!(missed >= 0 && missed <= 1)) throw new RangeError(`${caller}: missedShare ${missed} is not from 0 to 1`);
  if (!(wingedFitness > 0 && Number.isFinite(wingedFitness)))
    throw new RangeError(`${caller}: wingedFitness ${wingedFitness} is not above 0`);
}
