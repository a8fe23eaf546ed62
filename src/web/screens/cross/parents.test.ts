import { describe, expect, it } from 'vitest';
import { cross } from '../../../app/index.ts';
import { carriers, grounded, wild } from './parents.ts';

/** Share of flies that can fly among the parents' own kind, from a cross within it. */
function wingedInF1(female: string, male: string): number {
  const answer = cross({ female, male, generations: 1 });
  if (!answer.ok) throw new Error(JSON.stringify(answer.problems));
  return answer.value.generations.find(({ n }) => n === 1)?.wingedShare ?? Number.NaN;
}

describe('parents to pick', () => {
  const pairs = grounded('female').map(({ symbol, genotype }, i) => ({
    symbol,
    female: genotype,
    male: grounded('male')[i]?.genotype ?? '',
  }));

  it.each(pairs)('two that lack flight by $symbol have young that Mendel gives them', ({ symbol, female, male }) => {
    // A dominant that kills in two copies leaves one wild to two of its own kind; a recessive breeds true.
    const expected = ['Cy', 'Ly'].includes(symbol) ? 1 / 3 : 0;
    expect(wingedInF1(female, male)).toBeCloseTo(expected, 12);
  });

  it.each(carriers('male').map(({ genotype }) => genotype))(
    '%s flies: two carriers have a quarter without',
    (genotype) => {
      expect(wingedInF1(genotype, genotype)).toBeCloseTo(0.75, 12);
    },
  );

  it('a wild pair has flying young', () => expect(wingedInF1(wild, wild)).toBe(1));
});
