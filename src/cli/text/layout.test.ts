import * as fc from 'fast-check';
import { describe, expect, it } from 'vitest';
import { bandText, chance, columns, percent, reflowed, table, wrapped } from './layout.ts';

describe('text of 80 columns', () => {
  it('wraps at spaces, under the first word', () =>
    expect(wrapped('one two three', '* ', 9)).toEqual(['* one two', '  three']));

  it('keeps every word, and no line is longer unless one word is', () =>
    fc.assert(
      fc.property(fc.array(fc.stringMatching(/^[a-z]{1,20}$/), { minLength: 1 }), (words) => {
        const lines = wrapped(words.join(' '), '  - ');
        expect(lines.every((line) => line.length <= columns)).toBe(true);
        expect(lines.join(' ').replace('-', '').trim().split(/\s+/)).toEqual(words);
      }),
    ));

  it('wraps sentences anew and leaves examples alone', () => {
    const long = 'word '.repeat(20).trim();
    expect(reflowed(`${long}\n${long}\n\n  example   here\nend`)).toEqual([
      ...wrapped(`${long} ${long}`),
      '',
      '  example   here',
      'end',
    ]);
  });

  it('aligns a table', () =>
    expect(
      table(
        ['a', 'n'],
        [
          ['x', '5'],
          ['yy', '10'],
        ],
        [1],
      ),
    ).toEqual(['a    n', '--  --', 'x    5', 'yy  10']));

  it('never rounds a risk away', () => {
    expect(percent(0.9999)).toBe('99.9 %');
    expect(percent(1)).toBe('100 %');
    expect(percent(0.00001)).toBe('<0.1 %');
    expect(percent(0)).toBe('0 %');
    expect([chance(1, 2000), chance(0.97, 2000), chance(0, 2000)]).toEqual(['>99.8 %', '97 %', '<0.2 %']);
    expect(bandText({ p05: 59.6, p50: 84.5, p95: 120 })).toBe('85 (60-120)');
  });
});
