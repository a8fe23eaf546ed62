/** Kinds of animal: the books' row of a key, and what practice gives them of each fly. */
import { type Range, rangeOf } from '../../animals/index.ts';
import { nearestName } from '../../foundation/index.ts';
import { type PublishedRation, publishedRations } from '../../reference/index.ts';

/** Plain names that the first questions of the page write, and the books' kinds that they stand for. */
const plainNames: Record<string, string> = {
  froglets: 'dart-frog-froglet',
  smallFrogs: 'dart-frog-thumbnail',
  largeFrogs: 'dart-frog-large',
  mantisNymphs: 'mantis-l1',
  spiderlings: 'jumping-spider-i2',
  geckos: 'gecko-hatchling',
  newts: 'newt-eft',
  fish: 'killifish',
};

/** Null for a kind that the books do not know. */
export function kindOf(animal: string | null): PublishedRation | null {
  if (animal === null) return null;
  const key = Object.hasOwn(plainNames, animal) ? plainNames[animal] : animal;
  return publishedRations.find((row) => row.animal === key) ?? null;
}

/** The books' kinds that an unknown name is near to, such as `mantis-l1` to `mantid`; none for one of another sort. */
export function nearKinds(animal: string): string[] {
  const kinds = publishedRations.map((row) => row.animal);
  // A keeper writes the animal; the books' keys go on with its stage.
  const near = nearestName(animal, [...kinds, ...kinds.map((kind) => kind.split('-')[0] as string)]);
  return near === null ? [] : kinds.filter((kind) => kind === near || kind.startsWith(`${near}-`));
}

/** Fresh mass of the flies that practice speaks of, mg: uncrowded ones (leiva2019); hydei from memory. */
export const usualFlyMg = { melanogaster: 0.97, hydei: 2.2 };

/** Flies of a species that practice gives one animal at a feeding; by mass where practice names only the other. */
export function usualFlies(row: PublishedRation, species: string): Range {
  const own = rangeOf(row.fliesLow, row.fliesHigh);
  if (species === row.fly || (species !== 'melanogaster' && species !== 'hydei')) return own;
  if (row.otherFliesLow !== null && row.otherFliesHigh !== null) return rangeOf(row.otherFliesLow, row.otherFliesHigh);
  const ratio = usualFlyMg[row.fly] / usualFlyMg[species];
  return rangeOf(own.low * ratio, own.high * ratio);
}

/** Warmth at which the books' stages are dated, C (an assumption: the tables name none). */
export const stageTemperatureC = 25;
/** Pace of growth with warmth (animaltraits' value for what is not sorted; the other one within its range). */
export const stageQ10 = 2;

/** Animals that moult, and that a loose fly can hurt while they are soft. */
export function moults({ taxon }: PublishedRation): boolean {
  return taxon === 'insect' || taxon === 'spider';
}
