import { describe, expect, it } from 'vitest';
import { lossOfVariation } from './effective-size.ts';
import { leastRelatedPair } from './line-advice.ts';
import { type PedigreeCup, pedigree } from './pedigree.ts';

const half = (n: number) => ({ females: n / 2, males: n / 2 });
const chain = (length: number, founders: number): PedigreeCup[] =>
  Array.from({ length }, (_, i) => ({ cup: `c${i}`, parents: i === 0 ? [] : [`c${i - 1}`], founders: half(founders) }));

describe('pedigree of cups', () => {
  it('a straight line loses as the formula says', () => {
    const { nodes } = pedigree(chain(6, 20));
    nodes.forEach((node, i) => {
      expect(node.generation).toBe(i);
      expect(node.loss).toBeCloseTo(lossOfVariation(Array(i + 1).fill(20)), 12);
    });
  });
  it('one pair a generation loses a quarter each time, as an ideal population of two', () => {
    // Wright's exact series for brother and sister is slower at first: 1/4, 3/8, 1/2.
    expect(pedigree(chain(3, 2)).nodes.map((node) => node.loss)).toEqual([1 / 4, 7 / 16, 37 / 64]);
  });
  it('two unrelated lines joined are as fresh as their founders allow', () => {
    const cups: PedigreeCup[] = [
      { cup: 'a', parents: [], founders: half(10) },
      { cup: 'b', parents: [], founders: half(10) },
      { cup: 'ab', parents: ['a', 'b'], founders: half(20) },
    ];
    const tree = pedigree(cups);
    expect(tree.coancestry('a', 'b')).toBe(0);
    // Half of the pairs of parents are of one cup, related by 1/20.
    expect(tree.coancestry('ab', 'ab')).toBeCloseTo(1 / 40 + (39 / 40) * (1 / 20 / 2), 12);
    expect(tree.coancestry('ab', 'a')).toBeCloseTo(1 / 20 / 2, 12);
    expect(tree.edges).toEqual([
      { from: 'a', to: 'ab' },
      { from: 'b', to: 'ab' },
    ]);
  });
  it('finds the least related pair', () => {
    const tree = pedigree([...chain(3, 10), { cup: 'other', parents: [], founders: half(10) }]);
    expect(leastRelatedPair(['c2', 'c1', 'other'], tree)?.pair).toContain('other');
    expect(leastRelatedPair(['c2'], tree)).toBeNull();
  });
  it('keeps going with parents that nobody listed, and with circles that cannot be', () => {
    const tree = pedigree([
      { cup: 'a', parents: ['gone'], founders: half(10) },
      { cup: 'x', parents: ['y'], founders: half(10) },
      { cup: 'y', parents: ['x'], founders: half(10) },
    ]);
    expect(tree.unknownParents).toEqual(['gone']);
    expect(tree.impossible).toEqual(['x', 'y']);
    expect(tree.nodes.map((node) => node.cup)).toEqual(['a']);
    expect(() => tree.coancestry('a', 'x')).toThrow(/x is not in the pedigree/);
    expect(() => pedigree([...chain(1, 2), ...chain(1, 2)])).toThrow(/twice/);
  });
  it('takes a year of a facility: 2,000 cups', () => {
    const cups = Array.from({ length: 2000 }, (_, i) => ({
      cup: `${i}`,
      parents: i < 10 ? [] : [`${i - 10}`, `${i - 7}`],
      founders: half(50),
    }));
    expect(pedigree(cups).nodes.at(-1)?.generation).toBeGreaterThan(150);
  });
});
