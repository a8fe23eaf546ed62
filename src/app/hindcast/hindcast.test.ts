import { describe, expect, it } from 'vitest';
import { addDays, day } from '../../foundation/index.ts';
import type { Entry } from '../../logbook/index.ts';
import { crps, rankAmong } from '../../learning/index.ts';
import { hindcast } from './hindcast.ts';

const on = day('2026-11-25');
const ago = (days: number) => addDays(on, -days);

/** Entries in the order of their list, recorded on the evening of the day unless `recorded` says otherwise. */
function log(...drafts: ({ kind: string; on: string; recorded?: string } & Record<string, unknown>)[]): Entry[] {
  return drafts.map(({ recorded, ...draft }, i) => ({
    ...draft,
    id: `0190a000-0000-7000-8000-${String(i).padStart(12, '0')}`,
    recordedAt: `${recorded ?? draft.on}T20:00:00Z`,
    by: 'test',
  })) as unknown as Entry[];
}

const cup = { kind: 'started', on: ago(28), culture: 'c', strain: 'melanogaster', place: 'shelf', founders: 40 };
const settings = [
  { kind: 'place', on: ago(40), place: 'shelf', name: 'Shelf', temperatureC: 23 },
  { kind: 'strain', on: ago(40), strain: 'melanogaster', name: 'melanogaster', base: 'melanogaster' },
];
const count = (days: number, flies: number, recorded?: string) => ({
  kind: 'seen',
  on: ago(days),
  culture: 'c',
  present: ['adults'],
  count: flies,
  ...(recorded === undefined ? {} : { recorded }),
});
const answer = (...drafts: Parameters<typeof log>) => hindcast(log(...settings, ...drafts), { on, seed: 1, weeks: 3 });

describe('a hindcast', () => {
  it('holds each count of the week after against the forecast of the week before', () => {
    const { notes, total } = answer(cup, count(12, 150), count(5, 260));
    const counted = notes.filter((n) => n.kind === 'count').map((n) => [n.madeOn, n.seenOn, n.cameLow]);
    expect(counted).toEqual([
      [ago(14), ago(12), 150],
      [ago(7), ago(5), 260],
    ]);
    expect(total.counts).toBe(2);
    for (const note of notes) expect(note.forecast.p05).toBeLessThanOrEqual(note.forecast.p95);
  });

  it('does not know what was recorded later, even of an earlier day', () => {
    const then = answer(cup, count(12, 150), count(5, 260));
    const late = answer(cup, count(12, 150), count(8, 20, ago(6)), count(5, 260));
    const early = answer(cup, count(12, 150), count(8, 20), count(5, 260));
    const of = (a: typeof then) => a.notes.find((n) => n.seenOn === ago(5) && n.kind === 'count')?.forecast;
    expect(late.knownBy).toBe('recorded');
    expect(of(late)).toEqual(of(then));
    expect(of(early)?.p50).toBeLessThan((of(then)?.p50 ?? 0) - 20);
  });

  it('says of a log that was typed in later that it is known by what had happened', () => {
    const typed = { recorded: on };
    const { knownBy, why, notes } = answer(
      { ...cup, ...typed },
      { ...count(12, 150), ...typed },
      { ...count(5, 260), ...typed },
    );
    expect(knownBy).toBe('happened');
    expect(why).toContain('had happened by its day');
    expect(notes.some((n) => n.kind === 'count')).toBe(true);
  });

  it('takes no harvest that leaves flies behind for the supply, and one that empties the cup for a count', () => {
    const taken = { kind: 'harvested', on: ago(5), culture: 'c', flies: 30 };
    const left = answer(cup, taken);
    expect(left.notes.filter((n) => n.kind === 'emptied' || n.kind === 'count')).toEqual([]);
    expect(left.harvests).toEqual({ taken: 1, beyondTheBand: 0 });
    expect(answer(cup, { ...taken, flies: 9000 }).harvests.beyondTheBand).toBe(1);
    expect(answer(cup, { ...taken, emptied: true }).notes.map((n) => n.kind)).toContain('emptied');
  });

  it('is told in German', () => {
    const { why } = hindcast(log(...settings, cup, count(5, 260)), { on, seed: 1, weeks: 2, language: 'de' });
    expect(why).toContain('Jede Vorhersage kennt');
  });
});

describe('scores', () => {
  it('the ranked probability score of two points is the one worked by hand', () => {
    // Draws 0 and 2, truth 3: mean |x - y| = 2, half the mean |x - x'| = 0.5.
    expect(crps(Float64Array.of(0, 2), 3)).toBeCloseTo(1.5, 12);
  });
  it('a place lies between what is below an interval and what is not above it', () => {
    const draws = [1, 2, 3, 4];
    expect(rankAmong(draws, 3, 3, 0)).toBe(0.5);
    expect(rankAmong(draws, 3, 3, 1)).toBe(0.75);
    expect(rankAmong(draws, 10, Number.POSITIVE_INFINITY, 0.5)).toBe(1);
  });
});
