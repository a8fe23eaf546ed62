import { describe, expect, it } from 'vitest';
import { addDays, day, dayNumber, weekdayOf } from '../../foundation/index.ts';
import { checkBatch, checkDraft, type Entry, type EntryDraft, fold } from '../../logbook/index.ts';
import { demoLogbook } from './demo-logbook.ts';

const asEntries = (drafts: EntryDraft[]) =>
  drafts.map((draft, i) => ({
    ...draft,
    id: `0190a000-0000-7000-8000-${String(i).padStart(12, '0')}`,
    recordedAt: `${draft.on}T20:00:00Z`,
    by: 'test',
  })) as Entry[];

describe('the demo logbook', () => {
  const on = day('2026-11-25');
  const drafts = demoLogbook(on);
  const facts = fold(asEntries(drafts));

  it('is made of entries that every door accepts', () => {
    for (const draft of drafts) {
      const result = checkDraft(draft, 'demo');
      expect(result.ok ? [] : result.problems).toEqual([]);
    }
    expect(checkBatch(asEntries(drafts), []).ok).toBe(true);
  });
  it('contradicts itself nowhere', () => expect(facts.problems).toEqual([]));
  it('works on other weekdays than Tuesday and Friday', () => {
    expect(facts.household.workWeekdays).toEqual(['mon', 'thu']);
    for (const culture of facts.cultures) expect(['mon', 'thu']).toContain(weekdayOf(culture.startedOn));
  });
  it('has a failed cup, a cool spell, unrecorded days and a hatch in about six weeks', () => {
    expect(facts.cultures.filter((c) => c.ended?.reason === 'mould')).toHaveLength(1);
    const cool = facts.places.flatMap((p) => p.readings).filter((r) => r.meanC < 20);
    expect(cool.length).toBeGreaterThanOrEqual(6);
    const written = new Set(drafts.filter((d) => d.kind === 'harvested').map((d) => d.on));
    const days = Array.from({ length: 70 }, (_, i) => addDays(on, -1 - i));
    const silent = days.filter((d) => !written.has(d)).length;
    expect(silent).toBeGreaterThan(10);
    expect(silent).toBeLessThan(50);
    const hatch = facts.groups.flatMap((g) => g.periods).find((p) => p.arrival);
    const wait = dayNumber(hatch?.arrival?.earliest ?? on) - dayNumber(on);
    expect(wait).toBeGreaterThan(28);
    expect(wait).toBeLessThan(56);
  });
  it('says that its animals ate from the cups that ran before the log, whose flies would be too many otherwise', () => {
    const firstCup = facts.cultures.map((c) => c.startedOn).sort()[0] as string;
    for (const { group, periods } of facts.groups.filter((g) => g.group !== 'nymphs'))
      expect([group, (periods[0]?.from as string) <= firstCup]).toEqual([group, true]);
  });
  it('is the same log for the same day, and ends on the evening before it', () => {
    expect(demoLogbook(on)).toEqual(drafts);
    expect(drafts.every((d) => d.on !== undefined && d.on < on)).toBe(true);
  });
});
