import { describe, expect, it } from 'vitest';
import type { CultureFacts } from '../../../logbook/index.ts';
import { forebears } from './pedigree.ts';

const cup = (culture: string, ...fromCultures: string[]) => ({ culture, fromCultures }) as CultureFacts;
const shelf = [cup('A'), cup('B'), cup('C', 'A', 'B'), cup('D', 'C', 'A'), cup('E', 'D', 'gone')];
const keys = (culture: string, generations = 5) =>
  forebears(shelf, culture, generations).map((row) => row.map((each) => each.culture));

describe('a pedigree', () => {
  it('goes back a generation a row, each cup once, unknown ones left out', () => {
    expect(keys('E')).toEqual([['D'], ['C', 'A'], ['B']]);
  });

  it('stops where it is told, and where nothing is known', () => {
    expect(keys('E', 1)).toEqual([['D']]);
    expect(keys('A')).toEqual([]);
  });

  it('does not go round in a logbook that contradicts itself', () => {
    expect(forebears([cup('X', 'Y'), cup('Y', 'X')], 'X', 9).length).toBe(1);
  });
});
