import { describe, expect, it } from 'vitest';
import { type Entry, fold } from '../../logbook/index.ts';
import { standingEntry, standings } from './standing-entries.ts';

const id = (n: number) => `0198c000-0000-7000-8000-${String(n).padStart(12, '0')}`;
const entry = (n: number, fields: object): Entry =>
  ({ id: id(n), on: '2026-11-20', recordedAt: `2026-11-20T10:00:0${n}Z`, by: 'test', ...fields }) as Entry;

const started = entry(1, { kind: 'started', culture: 'M1', strain: 'melanogaster', founders: 50, note: 'first' });
const harvest = entry(2, { kind: 'harvested', culture: 'M1', flies: 30, on: '2026-11-25' });
const corrected = entry(3, {
  kind: 'amended',
  amends: id(2),
  replacement: { kind: 'harvested', culture: 'M1', flies: 40 },
});
const again = entry(4, {
  kind: 'amended',
  amends: id(2),
  replacement: { kind: 'harvested', culture: 'M1', flies: 50 },
});
const takenBack = entry(5, { kind: 'amended', amends: id(4), void: true });
const restored = entry(6, { kind: 'amended', amends: id(5), void: true });

/** Flies of the only harvest as the logbook's own fold reads them. */
const folded = (...entries: Entry[]) => fold(entries).cultures[0]?.harvests[0]?.flies;
const standing = (...entries: Entry[]) => standingEntry(entries, id(2)) as { flies?: number } | null;

describe('an entry as it stands', () => {
  it.each([
    ['as written', [started, harvest]],
    ['after a correction', [started, harvest, corrected]],
    ['after two', [started, harvest, corrected, again]],
    ['after the second was taken back', [started, harvest, corrected, again, takenBack]],
    ['after that was taken back in turn', [started, harvest, corrected, again, takenBack, restored]],
  ])('is what the fold makes of it: %s', (_, entries) => {
    expect(standing(...entries)?.flies).toBe(folded(...entries));
  });

  it('keeps its own day and note where the correction gives none', () => {
    const to60 = entry(3, {
      kind: 'amended',
      amends: id(1),
      replacement: { kind: 'started', culture: 'M1', strain: 'hydei', founders: 60 },
    });
    expect(standingEntry([started, to60], id(3))).toMatchObject({ on: '2026-11-20', note: 'first', founders: 60 });
  });

  it('is told apart in the list', () => {
    const all = standings([started, harvest, corrected, again, takenBack]);
    expect([1, 2, 3, 4].map((n) => all.get(id(n)))).toEqual(['holds', 'corrected', 'holds', 'struck']);
    expect(standings([harvest, takenBack, entry(7, { kind: 'amended', amends: id(2), void: true })]).get(id(2))).toBe(
      'struck',
    );
  });
});
