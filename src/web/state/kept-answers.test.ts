import { describe, expect, it } from 'vitest';
import type { Entry } from '../../logbook/index.ts';
import { basisOf } from './kept-answers.ts';

const entry = (id: string) => ({ id }) as Entry;

describe('what an answer follows from', () => {
  const basis = basisOf('2026-11-25', [entry('b'), entry('a')], 'build 1');

  it('is the same for the same entries in any order', () => {
    expect(basisOf('2026-11-25', [entry('a'), entry('b')], 'build 1')).toBe(basis);
  });

  it('differs by day, by entry and by build', () => {
    expect(basisOf('2026-11-26', [entry('b'), entry('a')], 'build 1')).not.toBe(basis);
    expect(basisOf('2026-11-25', [entry('b'), entry('a'), entry('c')], 'build 1')).not.toBe(basis);
    expect(basisOf('2026-11-25', [entry('b')], 'build 1')).not.toBe(basis);
    expect(basisOf('2026-11-25', [entry('b'), entry('a')], 'build 2')).not.toBe(basis);
  });
});
