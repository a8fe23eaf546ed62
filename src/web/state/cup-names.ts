/** Names for cups that are not there yet, and the strains to choose from. */
import type { Facts } from '../../logbook/index.ts';
import { strainName } from './words.ts';

/** The next free labels of a strain: its first letter and a number, M14, M15. */
export function freshLabels(facts: Facts | null, strain: string, count: number): string[] {
  const letter = (strain[0] ?? 'c').toUpperCase();
  const taken = new Set((facts?.cultures ?? []).flatMap((each) => [each.culture, each.label]));
  const numbers = [...taken].map((name) => new RegExp(`^${letter}-?(\\d+)$`).exec(name)?.[1]);
  const highest = Math.max(0, ...numbers.map((text) => Number(text ?? 0)));
  return Array.from({ length: count }, (_, i) => `${letter}${highest + 1 + i}`);
}

/** The strains of the household; the two published ones where it names none. */
export function strainChoices(facts: Facts | null): { value: string; label: string }[] {
  const keys = facts?.strains.map((each) => each.strain) ?? [];
  return (keys.length ? keys : ['melanogaster', 'hydei']).map((value) => ({ value, label: strainName(value) }));
}
