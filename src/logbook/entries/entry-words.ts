/** The words that entries' sentences are made of: counts, lists, stages, amounts. */
import { type Said, type SaidValue, said } from '../../foundation/index.ts';
import type { AmountWord, SeenStage } from '../fold/facts.ts';

/** A part of a sentence, or nothing where the entry says nothing. */
export type Part = Said | string | null | undefined | false;

export const fliesSaid = (n: number) => (n === 1 ? said`1 fly` : said`${n} flies`);
export const foundersSaid = (n: number) => (n === 1 ? said`1 founder` : said`${n} founders`);
export const animalsSaid = (n: number) => (n === 1 ? said`1 animal` : said`${n} animals`);
export const cupsSaid = (n: number) => (n === 1 ? said`1 cup` : said`${n} cups`);

export const amountSaid: Record<AmountWord, Said> = {
  none: said`no flies`,
  few: said`a few flies`,
  some: said`some flies`,
  plenty: said`plenty of flies`,
  swarming: said`swarming with flies`,
};

export const stageSaid: Record<SeenStage, Said> = {
  eggs: said`eggs`,
  larvae: said`larvae`,
  pupae: said`pupae`,
  adults: said`adults`,
};

/** Joins the parts that are there: `a, b and c`; null where there is none. */
export function listed(parts: readonly Part[]): SaidValue | null {
  const there = thoseThere(parts);
  const [last, before] = [there.at(-1), there.slice(0, -1)];
  if (last === undefined) return null;
  return before.length === 0 ? last : said`${{ list: before }} and ${last}`;
}

/** `head: a, b, c.`, or `head.` where no part is there. */
export function detailed(head: Said, ...parts: Part[]): Said {
  const there = thoseThere(parts);
  return there.length === 0 ? said`${head}.` : said`${head}: ${{ list: there }}.`;
}

/** `head, a, b.` */
export function withCommas(...parts: Part[]): Said {
  return said`${{ list: thoseThere(parts) }}.`;
}

function thoseThere(parts: readonly Part[]): (Said | string)[] {
  return parts.filter((part): part is Said | string => Boolean(part));
}
