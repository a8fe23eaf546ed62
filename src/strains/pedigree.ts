/**
 * The pedigree of cups as a plain graph, read off their lists of parent cups: generations, inbreeding and
 * how related any two cups are. A cup without parents is taken as unrelated to the others.
 */
import { effectiveSize, type Founders } from './effective-size.ts';

export interface PedigreeCup {
  cup: string;
  /** Cups that its founders came from; names that are not in the list are kept as unknown parents. */
  parents: readonly string[];
  founders: Founders;
}

export interface PedigreeNode {
  cup: string;
  /** 0 for a cup without parents; else one more than its oldest line of parents. */
  generation: number;
  effectiveSize: number;
  /** Share of the variation of its ancestors that its flies have lost: their mean inbreeding. */
  loss: number;
  /** Row of the drawing, from 0, within its generation. */
  row: number;
}

export interface Pedigree {
  nodes: PedigreeNode[];
  edges: { from: string; to: string }[];
  /** Parents named but not in the list. */
  unknownParents: string[];
  /** Cups that are their own ancestors, which cannot be: they are left out. */
  impossible: string[];
  /** Chance that two alleles, one drawn from either cup, are copies of one ancestor's. */
  coancestry(a: string, b: string): number;
}

/**
 * Coancestry of cups with parents P and Q is the mean over pairs of parents; within a cup two draws are
 * of the same founder gene with 1/(2 Ne), else of founders related as its parent cups are.
 * Throws RangeError when a cup is listed twice.
 */
export function pedigree(cups: readonly PedigreeCup[]): Pedigree {
  const byName = new Map(cups.map((cup) => [cup.cup, cup]));
  if (byName.size !== cups.length) throw new RangeError('pedigree: a cup is listed twice');
  const order = parentsFirst(byName);
  const generations = new Map<string, number>();
  for (const { cup, parents } of order) {
    const known = parents.flatMap((parent) => generations.get(parent) ?? []);
    generations.set(cup, known.length > 0 ? 1 + Math.max(...known) : 0);
  }
  const coancestry = coancestryOf(order);
  const rows = new Map<number, number>();
  const nodes = order.map(({ cup, founders }) => {
    const generation = generations.get(cup) ?? 0;
    const row = rows.get(generation) ?? 0;
    rows.set(generation, row + 1);
    return { cup, generation, effectiveSize: effectiveSize(founders), loss: coancestry(cup, cup), row };
  });
  const listed = new Set(order.map(({ cup }) => cup));
  const edges = order.flatMap(({ cup, parents }) =>
    parents.filter((parent) => listed.has(parent)).map((from) => ({ from, to: cup })),
  );
  const unknownParents = [
    ...new Set(cups.flatMap(({ parents }) => parents.filter((parent) => !byName.has(parent)))),
  ].sort();
  const impossible = cups.map(({ cup }) => cup).filter((cup) => !listed.has(cup));
  return { nodes, edges, unknownParents, impossible, coancestry };
}

/** Cups after all their parents; those in a circle, and their offspring, never become ready. */
function parentsFirst(byName: Map<string, PedigreeCup>): PedigreeCup[] {
  const waitingFor = new Map<string, number>();
  const offspring = new Map<string, string[]>();
  for (const { cup, parents } of byName.values()) {
    const known = parents.filter((parent) => byName.has(parent));
    waitingFor.set(cup, known.length);
    for (const parent of known) offspring.set(parent, [...(offspring.get(parent) ?? []), cup]);
  }
  const ready = [...byName.keys()].filter((cup) => waitingFor.get(cup) === 0);
  for (const cup of ready) {
    for (const child of offspring.get(cup) ?? []) {
      const left = (waitingFor.get(child) ?? 0) - 1;
      waitingFor.set(child, left);
      if (left === 0) ready.push(child);
    }
  }
  return ready.map((cup) => byName.get(cup) as PedigreeCup);
}

function coancestryOf(order: readonly PedigreeCup[]): (a: string, b: string) => number {
  const place = new Map(order.map(({ cup }, i) => [cup, i]));
  const parentsOf = order.map(({ parents }) => parents.flatMap((parent) => place.get(parent) ?? []));
  // Known values by the younger cup, then the older: small whole keys keep large pedigrees quick.
  const known = order.map(() => new Map<number, number>());
  const between = (i: number, j: number): number => {
    // The younger of the two (later in the order) is resolved into its parents.
    const [young, old] = i > j ? [i, j] : [j, i];
    const found = known[young]?.get(old);
    if (found !== undefined) return found;
    const parents = parentsOf[young] as number[];
    const value =
      young === old ? within(order[young] as PedigreeCup, parents, between) : meanOf(parents, (p) => between(p, old));
    known[young]?.set(old, value);
    return value;
  };
  return (a, b) => {
    const i = place.get(a);
    const j = place.get(b);
    if (i === undefined || j === undefined)
      throw new RangeError(`coancestry: ${i === undefined ? a : b} is not in the pedigree`);
    return between(i, j);
  };
}

function within({ founders }: PedigreeCup, parents: number[], between: (i: number, j: number) => number): number {
  const same = 1 / (2 * Math.max(effectiveSize(founders), 0.5));
  return same + (1 - same) * meanOf(parents, (p) => meanOf(parents, (q) => between(p, q)));
}

/** Mean over cups, 0 over none: parents that nobody knows are unrelated. */
function meanOf(cups: number[], value: (cup: number) => number): number {
  let sum = 0;
  for (const cup of cups) sum += value(cup);
  return cups.length === 0 ? 0 : sum / cups.length;
}
