import { describe, expect, it } from 'vitest';
import type { Problem } from '../../foundation/index.ts';
import { checkDraft, checkEntry, type Entry, entryKinds, fold } from '../../logbook/index.ts';
import { deProblems } from './de-problems.ts';
import { recognised } from './recognised.ts';

const problemsOf = (value: unknown): Problem[] => {
  const checked = checkDraft(value);
  return checked.ok ? [] : checked.problems;
};

/** Every field of every kind, with values that fit nowhere. */
function refusals(): Problem[] {
  return Object.values(entryKinds).flatMap(({ kind, fieldNames }) =>
    fieldNames.flatMap((field) =>
      [{}, -1e12, 1e12, '', [], [{}, {}], ['a', 'a', 'a']].flatMap((value) =>
        problemsOf({ kind, on: '2026-11-25', [field]: value }),
      ),
    ),
  );
}

/** Contradictions that no field shows alone. */
const on = '2026-11-25';
const contradictory = [
  { kind: 'absence', on, until: '2026-11-01' },
  { kind: 'batch', on, batch: 'b', goodUntil: '2026-11-01' },
  { kind: 'bought', on, culture: 'M1', strain: 's', ageDays: 1, quarantineUntil: '2026-11-01' },
  { kind: 'purchase', on, purchase: 'p', strain: 's', cups: 1, arrives: '2026-11-01' },
  { kind: 'started', on, culture: 'M1', strain: 's', founders: 2, fromCultures: ['M1'] },
  { kind: 'seen', on, culture: 'M1', present: ['eggs'], absent: ['eggs'] },
  { kind: 'temperature', on, place: 'p' },
  { kind: 'temperature', on, place: 'p', cupC: 20 },
  { kind: 'temperature', on, place: 'p', cupC: 40, shelfC: 20 },
  { kind: 'temperature', on, place: 'p', minC: 20, maxC: 10 },
  { kind: 'place', on, place: 'p', limitsC: { low: 20, high: 10 } },
  { kind: 'headcount', on, group: 'g', change: 0, reason: 'died' },
  { kind: 'headcount', on, group: 'g', change: 2, reason: 'died' },
  { kind: 'headcount', on, group: 'g', change: -2, reason: 'born' },
  { kind: 'weighed', on, group: 'g' },
  { kind: 'amended', on, amends: '019f0000-0000-7000-8000-000000000001' },
  { kind: 'group', on, group: 'g', count: 1, fliesPerFeeding: 1, strain: 's', feedingWeekdays: [] },
];

/** A log that speaks of things that are not there. */
function foldProblems(): Problem[] {
  const drafts = [
    {
      kind: 'started',
      on,
      culture: 'M1',
      strain: 'none',
      founders: 20,
      place: 'none',
      container: 'none',
      batch: 'none',
    },
    { kind: 'seen', on: '2026-11-20', culture: 'M1', mould: true },
    { kind: 'seen', on, culture: 'gone', mould: true },
    { kind: 'ended', on, culture: 'M1', reason: 'spent' },
    { kind: 'harvested', on: '2026-11-27', culture: 'M1', flies: 3 },
    { kind: 'fed', on, group: 'none', flies: 3, fromCultures: ['gone'] },
    { kind: 'order', on, order: 'o', due: on, strain: 'none', flies: 3 },
  ];
  const entries = drafts.map((draft, i) => {
    const id = `019f0000-0000-7000-8000-${String(i).padStart(12, '0')}`;
    const entry = checkEntry({ id, recordedAt: '2026-11-28T10:00:00Z', by: 'Ana', ...draft });
    if (!entry.ok) throw new Error(JSON.stringify(entry.problems));
    return entry.value as Entry;
  });
  return fold(entries).problems;
}

/** Words of English that are no value: two small words in a row, or one that the checks use. */
const isEnglish = (text: string) => recognised(text, deProblems) === null && /^[a-z][a-z]+( [a-z]+)+/.test(text);

describe('what a German keeper reads when an entry is refused', () => {
  it('is German for every field of every kind', () => {
    const found = refusals();
    expect(found.length).toBeGreaterThan(300);
    expect(
      [...new Set(found.map(({ expected }) => expected))].filter((text) => recognised(text, deProblems) === null),
    ).toEqual([]);
    expect([...new Set(found.map((problem) => problem.found))].filter(isEnglish)).toEqual([]);
  });

  it.each(contradictory)('is German for the contradiction in %j', (value) => {
    const found = problemsOf(value);
    expect(found.length).toBeGreaterThan(0);
    for (const { expected } of found) expect(recognised(expected, deProblems), expected).not.toBeNull();
    expect(found.map((problem) => problem.found).filter(isEnglish)).toEqual([]);
  });

  it('is German where entries do not fit together', () => {
    const found = foldProblems();
    expect(found.length).toBeGreaterThan(6);
    for (const { found: what, expected } of found) {
      expect(recognised(what, deProblems), what).not.toBeNull();
      expect(recognised(expected, deProblems), expected).not.toBeNull();
    }
  });
});

describe('a text that comes filled in', () => {
  const patterns = {
    'a {0}': 'ein {0}',
    'a day not before {0}': 'ein Tag nicht vor {0}',
    '{0} of {1}': '{1}: {0}',
    day: 'Tag',
  };
  it.each([
    ['a day not before 3 May', 'ein Tag nicht vor 3 May'],
    ['a cup', 'ein cup'],
    ['a day', 'ein Tag'],
    ['2 of (3.5)', '(3.5): 2'],
    ['day', 'Tag'],
    ['else', null],
  ])('%s becomes %s', (text, words) => expect(recognised(text, patterns)).toBe(words));
});
