/** A strain's cups as a pedigree: those that live, and all their ancestors. */
import { said } from '../../foundation/index.ts';
import type { CultureFacts, Facts } from '../../logbook/index.ts';
import { leastRelatedPair, type Pedigree, pedigree, refreshAdvice } from '../../strains/index.ts';
import type { SaidLines } from './line-said.ts';
import { mutationOf } from './strain-genetics.ts';

/** Cups that have flies to spare for a joint cup: old enough, not many. */
const mostToCompare = 40;

/** Null for a strain that has no cup. */
export function linePicture(facts: Facts, strain: string): SaidLines | null {
  const cups = withAncestors(facts.cultures.filter((culture) => culture.strain === strain));
  if (cups.length === 0) return null;
  const tree = pedigree(
    cups.map(({ culture, fromCultures, founders }) => ({
      cup: culture,
      parents: fromCultures,
      founders: { females: founders / 2, males: founders / 2 },
    })),
  );
  const own = facts.strains.find((one) => one.strain === strain);
  const byKey = new Map(cups.map((culture) => [culture.culture, culture]));
  const living = tree.nodes.filter(({ cup }) => byKey.get(cup)?.ended === null).map(({ cup }) => cup);
  return {
    strain,
    mutation: own ? mutationOf(own) : 'unknown',
    cups: tree.nodes.map((node) => ({
      culture: node.cup,
      label: byKey.get(node.cup)?.label ?? node.cup,
      ended: byKey.get(node.cup)?.ended !== null,
      generation: node.generation,
      row: node.row,
      effectiveFounders: node.effectiveSize,
      lossShare: node.loss,
    })),
    edges: tree.edges,
    advice: newestAdvice(tree, living),
    spread: spreadOf(cups.filter(({ ended }) => ended === null)),
    joinCups: leastRelatedPair(living.slice(-mostToCompare), tree)?.pair ?? null,
  };
}

function spreadOf(living: CultureFacts[]): SaidLines['spread'] {
  const kinds = (of: (culture: CultureFacts) => string | null | undefined) =>
    new Set(living.flatMap((culture) => of(culture) ?? [])).size;
  const places = kinds(({ places }) => places.at(-1)?.place);
  const batches = kinds(({ batch }) => batch);
  const startingDays = kinds(({ on }) => on);
  const counts = { livingCups: living.length, places, batches, startingDays };
  const shared = [
    ...(living.length === 1 ? [said`one cup`] : []),
    ...(places <= 1 ? [said`one place`] : []),
    ...(startingDays === 1 ? [said`one day's work`] : []),
  ];
  if (shared.length === 0)
    return {
      ...counts,
      verdict: 'split',
      why: said`Its cups stand in more than one place and come from more than one day.`,
    };
  const all = shared.reduce((before, next) => said`${before} and ${next}`);
  const why = said`The line hangs on ${all}: keep a backup cup elsewhere, started on another day on another batch of medium.`;
  return { ...counts, verdict: 'one mishap takes all', why };
}

/** Living cups and whatever of their forebears is written down, oldest first. */
function withAncestors(cups: CultureFacts[]): CultureFacts[] {
  const byKey = new Map(cups.map((culture) => [culture.culture, culture]));
  const kept = new Set(cups.filter(({ ended }) => ended === null));
  for (const { fromCultures } of kept) {
    for (const parent of fromCultures) {
      const found = byKey.get(parent);
      if (found) kept.add(found);
    }
  }
  return cups.filter((culture) => kept.has(culture));
}

function newestAdvice(tree: Pedigree, living: readonly string[]): SaidLines['advice'] {
  const alive = new Set(living);
  const nodes = tree.nodes.filter(({ cup }) => alive.has(cup));
  const newest = nodes.reduce((best, node) => (!best || node.generation >= best.generation ? node : best), nodes[0]);
  if (!newest) return null;
  const { verdict, why } = refreshAdvice({ loss: newest.loss, effectiveSize: newest.effectiveSize });
  return { culture: newest.cup, verdict, why };
}
