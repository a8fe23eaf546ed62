/** Keys that name nothing, told with the known one that was most likely meant. */
import { nearestName, type Problem } from '../../foundation/index.ts';
import type { Facts } from './facts.ts';

/** A key that names nothing. */
export interface UnknownKey {
  of: 'place' | 'strain' | 'group' | 'culture';
  key: string;
}

type Untold = Problem & { unknown?: UnknownKey };
type Known = Pick<Facts, 'places' | 'strains' | 'groups' | 'cultures'>;

/** Thousands of unknown keys are another logbook's: looking for a name near each would only take long. */
const mostNearNames = 20;

/**
 * The problems as a keeper is told them. Near names come from the facts of the whole logbook, for the first
 * unknown keys by their text, so that it does not matter in which order or pieces it was read.
 */
export function toldProblems<P extends Untold>(problems: readonly P[], facts: Known): Omit<P, 'unknown'>[] {
  const near = nearNames(problems, facts);
  return problems.map(({ unknown, ...problem }) => {
    const name = unknown && near.get(textOf(unknown));
    return name ? { ...problem, expected: `${problem.expected}, perhaps ${name}` } : problem;
  });
}

function nearNames(problems: readonly Untold[], facts: Known): Map<string, string | null> {
  const unknown = new Map(problems.flatMap(({ unknown }) => (unknown ? [[textOf(unknown), unknown]] : [])));
  const first = [...unknown.keys()].sort().slice(0, mostNearNames);
  return new Map(first.map((text) => [text, nearTo(unknown.get(text) as UnknownKey, facts)]));
}

/** A group that was described too late is known; it was not meant to be another. */
function nearTo({ of, key }: UnknownKey, facts: Known): string | null {
  const known = knownKeys[of](facts);
  return known.includes(key) ? null : nearestName(key, known);
}

const knownKeys: Record<UnknownKey['of'], (facts: Known) => string[]> = {
  place: ({ places }) => places.map(({ place }) => place),
  strain: ({ strains }) => strains.map(({ strain }) => strain),
  group: ({ groups }) => groups.map(({ group }) => group),
  culture: ({ cultures }) => cultures.map(({ culture }) => culture),
};

function textOf({ of, key }: UnknownKey): string {
  return `${of} ${key}`;
}
