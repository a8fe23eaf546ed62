import * as fc from 'fast-check';
import { describe, expect, it } from 'vitest';
import { editDistance, nearestName } from './nearest-name.ts';

describe('edit distance (optimal string alignment)', () => {
  // The textbook examples of Levenshtein's distance and of a swap of neighbours.
  it.each([
    ['kitten', 'sitting', 3],
    ['saturday', 'sunday', 3],
    ['ca', 'ac', 1],
    ['ca', 'abc', 3],
    ['', 'abc', 3],
    ['same', 'same', 0],
  ])('%s to %s', (a, b, distance) => expect(editDistance(a, b)).toBe(distance));

  it('is symmetric, and never more than the longer word', () =>
    fc.assert(
      fc.property(fc.string({ maxLength: 12 }), fc.string({ maxLength: 12 }), (a, b) => {
        const distance = editDistance(a, b);
        return distance === editDistance(b, a) && distance <= Math.max(a.length, b.length);
      }),
    ));
});

describe('nearest name', () => {
  const names = ['today', 'forecast', 'plan', 'record', 'export'];
  it.each([
    ['todya', 'today'],
    ['forcast', 'forecast'],
    ['PLAN', 'plan'],
    ['exprot', 'export'],
    ['xyzzy', null],
    ['', null],
    ['pla', null],
  ])('of %s is %s', (given, near) => expect(nearestName(given, names)).toBe(near));
});
