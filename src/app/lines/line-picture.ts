/** A strain's cups as a pedigree: those that live, and all their ancestors. */
import type { CultureFacts, Facts } from '../../logbook/index.ts';
import { leastRelatedPair, type Pedigree, pedigree, refreshAdvice } from '../../strains/index.ts';
import type { LinesAnswer } from './line-answer.ts';
import { mutationOf } from './strain-genetics.ts';
import type { LineVoice } from './text/line-voice.ts';

type StrainLines = LinesAnswer['strains'][number];

/** Cups that have flies to spare for a joint cup: old enough, not many. */
const mostToCompare = 40;

/** Null for a strain that has no cup. */
export function linePicture(facts: Facts, strain: string, voice: LineVoice): StrainLines | null {
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
    advice: newestAdvice(tree, living, voice),
    spread: spreadOf(
      cups.filter(({ ended }) => ended === null),
      voice,
    ),
    joinCups: leastRelatedPair(living.slice(-mostToCompare), tree)?.pair ?? null,
  };
}

function spreadOf(living: CultureFacts[], voice: LineVoice): StrainLines['spread'] {
  const kinds = (of: (culture: CultureFacts) => string | null | undefined) =>
    new Set(living.flatMap((culture) => of(culture) ?? [])).size;
  const places = kinds(({ places }) => places.at(-1)?.place);
  const batches = kinds(({ batch }) => batch);
  const startingDays = kinds(({ on }) => on);
  const counts = { livingCups: living.length, places, batches, startingDays };
  const shared = { oneCup: living.length === 1, onePlace: places <= 1, oneDay: startingDays === 1 };
  if (!Object.values(shared).includes(true)) return { ...counts, verdict: 'split', why: voice.sayHere('spread-split') };
  const values = Object.fromEntries(Object.entries(shared).map(([key, holds]) => [key, Number(holds)]));
  return { ...counts, verdict: 'one mishap takes all', why: voice.sayHere('spread-hangs', values) };
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

function newestAdvice(tree: Pedigree, living: readonly string[], voice: LineVoice): StrainLines['advice'] {
  const alive = new Set(living);
  const nodes = tree.nodes.filter(({ cup }) => alive.has(cup));
  const newest = nodes.reduce((best, node) => (!best || node.generation >= best.generation ? node : best), nodes[0]);
  if (!newest) return null;
  const { verdict, why } = refreshAdvice({ loss: newest.loss, effectiveSize: newest.effectiveSize });
  return { culture: newest.cup, verdict, why: voice.say(why) };
}
