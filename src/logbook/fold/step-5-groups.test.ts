import { describe, expect, it } from 'vitest';
import { checkDraft } from '../entries/entry-check.ts';
import type { Entry } from '../entries/entry.ts';
import { checkBatch } from './batch-check.ts';
import { fold } from './fold.ts';

const entries = (...drafts: object[]) =>
  drafts.map((draft, i) => ({
    on: '2026-03-01',
    ...draft,
    id: `0190a000-0000-7000-8000-${String(i).padStart(12, '0')}`,
    recordedAt: `2026-03-20T20:00:${String(i).padStart(2, '0')}Z`,
    by: 'test',
  })) as unknown as Entry[];
const frogs = { kind: 'group', group: 'frogs', count: 6, fliesPerFeeding: 20, strain: 'melanogaster' };
const gone = (change: number, on: string, reason = 'died') => ({
  kind: 'headcount',
  group: 'frogs',
  change,
  on,
  reason,
});
const countsOf = (...drafts: object[]) =>
  fold(entries(...drafts)).groups[0]?.periods.map(({ from, count }) => [from, count]);
const found = (...drafts: object[]) => fold(entries(...drafts)).problems.map((p) => `${p.found}; ${p.expected}`);

describe('animals that join and leave', () => {
  it('change the count from their day on, one after the other', () => {
    expect(countsOf(frogs, gone(-1, '2026-03-05'), gone(2, '2026-03-09', 'bought'))).toEqual([
      ['2026-03-01', 6],
      ['2026-03-05', 5],
      ['2026-03-09', 7],
    ]);
  });
  it('add up when two devices write on the same day', () => {
    expect(countsOf(frogs, gone(-1, '2026-03-05'), gone(-2, '2026-03-05', 'sold'))?.at(-1)).toEqual(['2026-03-05', 3]);
  });
  it('change what was planned before, and not what was counted afterwards', () => {
    const planned = { ...frogs, from: '2026-04-01', count: 10 };
    const counted = { ...frogs, on: '2026-03-10', count: 4 };
    expect(countsOf(frogs, planned, gone(-1, '2026-03-05'))?.at(-1)).toEqual(['2026-04-01', 9]);
    expect(countsOf(frogs, gone(-1, '2026-03-05'), counted)?.at(-1)).toEqual(['2026-03-10', 4]);
  });
  it('are in a count of that day that was written after them', () => {
    const counted = { ...frogs, on: '2026-03-05', count: 5 };
    expect(countsOf(frogs, gone(-1, '2026-03-05'), counted)?.at(-1)).toEqual(['2026-03-05', 5]);
    expect(countsOf(frogs, counted, gone(-1, '2026-03-05'))?.at(-1)).toEqual(['2026-03-05', 4]);
  });
  it('count for a group that was written down later', () =>
    expect(countsOf({ ...frogs, on: '2026-03-20', from: '2026-03-01' }, gone(-1, '2026-03-05'))?.at(-1)).toEqual([
      '2026-03-05',
      5,
    ]));
  it('cannot be more than there are, nor leave before the group began, nor a group that is not there', () => {
    expect(found(frogs, gone(-7, '2026-03-05'))).toEqual(['-7 of 6 animals; at least -6']);
    expect(found(frogs, gone(-1, '2026-02-01'))[0]).toMatch(/before the group began/);
    expect(found(frogs, { ...gone(-1, '2026-03-05'), group: 'newts' })[0]).toMatch(/newts, a group that no entry/);
    expect(checkBatch(entries(frogs, gone(-7, '2026-03-05')).slice(1), entries(frogs)).ok).toBe(false);
  });
});

describe('a hatch', () => {
  const arrival = { earliest: '2026-03-20', latest: '2026-03-30', countLow: 40, countHigh: 200 };
  const expected = { ...frogs, from: '2026-03-25', count: 120, arrival };
  const of = (...drafts: object[]) =>
    fold(entries(...drafts)).groups[0]?.periods.map(({ from, count, arrival: range }) => [from, count, range !== null]);
  it('that came early is expected no more', () =>
    expect(of(expected, { ...frogs, on: '2026-03-18', count: 87 })).toEqual([['2026-03-18', 87, false]]));
  it('beside animals that are there already is still expected', () =>
    expect(of(frogs, expected, { ...frogs, on: '2026-03-10', count: 5 })).toEqual([
      ['2026-03-01', 6, false],
      ['2026-03-10', 5, false],
      ['2026-03-25', 120, true],
    ]));
});

describe('what no keeper can mean about animals', () => {
  const refused = (draft: object) => {
    const result = checkDraft({ on: '2026-03-01', ...draft });
    return result.ok ? 'accepted' : result.problems.map((p) => `${p.where}: ${p.expected}`).join('\n');
  };
  it.each([
    [{ kind: 'weighed', group: 'frogs', massG: 0 }, /massG.*0\.0001 to 200/],
    [{ kind: 'weighed', group: 'frogs', massG: 10_000 }, /massG.*0\.0001 to 200/],
    [{ kind: 'weighed', group: 'frogs' }, /at least one of the two/],
    [{ kind: 'weighed', group: 'frogs', massG: 2, animals: 1e9 }, /animals.*100000/],
    [{ ...frogs, massG: 10_000 }, /massG.*200/],
    [{ ...frogs, temperatureC: -5 }, /temperatureC.*5 to 40/],
    [{ ...frogs, count: 1e9 }, /count.*100000/],
    [{ kind: 'headcount', group: 'frogs', change: -1e9, reason: 'died' }, /change.*100000/],
    [{ kind: 'headcount', group: 'frogs', change: 0, reason: 'died' }, /how many more/],
    [{ kind: 'headcount', group: 'frogs', change: 2, reason: 'died' }, /below 0/],
    [{ kind: 'headcount', group: 'frogs', change: -2, reason: 'born' }, /above 0/],
    [{ kind: 'headcount', group: 'frogs', change: -2, reason: 'eaten' }, /reason.*one of died/],
  ])('%j is refused with its reason', (draft, reason) => expect(refused(draft)).toMatch(reason));
});

describe('weighings', () => {
  it('are kept with their group, oldest first', () => {
    const weighed = (massG: number, on: string) => ({ kind: 'weighed', group: 'frogs', massG, on });
    const { weighings, problems } = fold(entries(frogs, weighed(1.2, '2026-03-15'), weighed(1.1, '2026-03-08')));
    expect(weighings.map(({ on, massG, animals }) => [on, massG, animals])).toEqual([
      ['2026-03-08', 1.1, 1],
      ['2026-03-15', 1.2, 1],
    ]);
    expect(problems).toEqual([]);
    expect(found(frogs, { ...weighed(1, '2026-03-08'), group: 'newts' })[0]).toMatch(/newts/);
  });
});
