import { afterEach, beforeEach, describe, expect, it, vi } from 'vitest';
import type { TodayAnswer } from '../../app/index.ts';
import type { Entry } from '../../logbook/index.ts';
import { basisOf, keepAhead, keepAnswers, keptAnswers } from './kept-answers.ts';

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

describe('answers that are kept', () => {
  const texts = new Map<string, string>();
  beforeEach(() => {
    texts.clear();
    vi.stubGlobal('localStorage', {
      getItem: (key: string) => texts.get(key) ?? null,
      setItem: (key: string, text: string) => texts.set(key, text),
    });
  });
  afterEach(() => vi.unstubAllGlobals());
  const today = (on: string) => ({ on }) as TodayAnswer;

  it('come back for what they follow from, and for nothing else', () => {
    keepAnswers('monday', { today: today('monday') });
    expect(keptAnswers('monday').today?.on).toBe('monday');
    expect(keptAnswers('monday with another entry')).toEqual({});
  });

  it('may have been worked out the day before', () => {
    keepAnswers('monday', { today: today('monday') });
    keepAhead('tuesday', { today: today('tuesday') });
    expect([keptAnswers('monday').today?.on, keptAnswers('tuesday').today?.on]).toEqual(['monday', 'tuesday']);
  });
});
