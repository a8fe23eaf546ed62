import { describe, expect, it } from 'vitest';
import { addDays } from '../../foundation/index.ts';
import { situation } from '../planning-problem.ts';
import { type Change, changeForms, parseChanges } from './change.ts';
import { changedSituation } from './changed-situation.ts';
import { compare } from './compare.ts';
import { facts, on } from '../../../tests/simulation/frog-household.ts';
import { compareAnswer } from './compare-answers.ts';

const question = { on, seed: 1, weeks: 8, scenarios: 150 };

describe('the short text of changes', () => {
  it('is read as it is written in every form', () => {
    expect(parseChanges(changeForms.join(',')).ok).toBe(true);
    expect(parseChanges('animals:1.25, cooler:2,weekdays:tue+sat')).toEqual({
      ok: true,
      value: [
        { change: 'animals', factor: 1.25 },
        { change: 'warmer', byC: -2 },
        { change: 'weekdays', weekdays: ['tue', 'sat'] },
      ],
    });
  });
  it.each(['animals:many', 'away:2026-12-05', 'sunshine:3', 'warmer:', 'weekdays:tues', 'service:2'])(
    'refuses %s',
    (text) => expect(parseChanges(text)).toMatchObject({ ok: false, problems: [{ where: 'what-if' }] }),
  );
});

describe('one change of the household', () => {
  const at = situation(facts, question, 8);
  const changed = (change: Change) => {
    const result = changedSituation(at, change);
    if (!result.ok) throw new Error(JSON.stringify(result.problems));
    return result.value;
  };
  const strain = (change: Change) => changed(change).problem.strains[0];
  const own = at.problem.strains[0];
  it('touches what it says and leaves the rest', () => {
    expect(strain({ change: 'animals', factor: 1.5 })?.wantedFlies[3]).toBe(90);
    expect(strain({ change: 'animals', factor: 1.5 })?.groups?.[0]?.flies[3]).toBe(90);
    expect(strain({ change: 'lost', culture: 'C3' })?.existing.map((cup) => cup.id)).not.toContain('c3');
    expect(changed({ change: 'service', level: 0.95 }).problem.serviceLevel).toBe(0.95);
    expect(changed({ change: 'purchases', mode: 'none' })).toMatchObject({ purchases: 'none', problem: at.problem });
    // 2026-11-25 is a Wednesday: Tuesdays are day 6, 13 ...
    const tuesdays = changed({ change: 'weekdays', weekdays: ['tue'] }).problem.workDays;
    expect(Array.from(tuesdays.slice(0, 14))).toEqual([0, 0, 0, 0, 0, 0, 1, 0, 0, 0, 0, 0, 0, 1]);
    const away = changed({ change: 'away', from: addDays(on, 1), until: addDays(on, 8) }).problem.workDays;
    expect(Array.from(away.slice(0, 12))).toEqual([1, 0, 0, 0, 0, 0, 0, 0, 0, 0, 1, 0]);
  });
  it('by warmth hastens cups to come, and those that live by what is ahead of them only', () => {
    const warmer = strain({ change: 'warmer', byC: 2 });
    const middle = (curve: { emergedByAge: Float32Array } | undefined) => {
      const flies = Array.from(curve?.emergedByAge ?? []);
      return flies.reduce((sum, n, age) => sum + n * age, 0) / flies.reduce((sum, n) => sum + n, 0);
    };
    expect(middle(warmer?.curves[0])).toBeLessThan(middle(own?.curves[0]) - 1);
    const [oldest, youngest] = [own?.existing[0], own?.existing.at(-1)];
    const hastened = (id: string | undefined) => {
      const before = own?.existing.find((cup) => cup.id === id)?.curve;
      return middle(before) - middle(warmer?.existing.find((cup) => cup.id === id)?.curve);
    };
    expect(hastened(youngest?.id)).toBeGreaterThan(hastened(oldest?.id) + 0.5);
    expect(warmer?.existing[0]?.draws.logPace).toEqual(own?.existing[0]?.draws.logPace);
  });
  it('is refused where it names nothing that is there', () => {
    const nobody = changedSituation(at, { change: 'lost', culture: 'Z9' });
    expect(nobody).toMatchObject({ ok: false, problems: [{ where: 'lost', found: '"Z9"' }] });
    const backwards = changedSituation(at, { change: 'away', from: '2026-12-08', until: '2026-12-01' });
    expect(backwards).toMatchObject({ ok: false, problems: [{ where: 'away' }] });
  });
});

describe('plans side by side', () => {
  it('are all judged in the same worlds; the same household beside itself differs by nothing but its tuning', () => {
    const answer = compare(facts, {
      ...question,
      changes: [
        { change: 'animals', factor: 2 },
        { change: 'animals', factor: 1 },
      ],
    });
    if (!answer.ok) throw new Error(JSON.stringify(answer.problems));
    expect(compareAnswer.parse(answer.value)).toEqual(answer.value);
    const [asIs, twice, same] = answer.value.columns;
    expect(asIs?.against).toBeNull();
    expect(same).toMatchObject({
      culturesPlanned: asIs?.culturesPlanned,
      against: { cups: { mean: 0, standardError: 0 } },
    });
    expect(same?.verdict).toMatch(/^As many cups, as far as can be told\./);
    const more = twice?.against?.cups;
    expect(more?.mean).toBeGreaterThan(3);
    expect(more?.mean).toBeGreaterThan(5 * (more?.standardError ?? 0));
    expect(twice?.title).toBe('100 % more animals');
    expect(twice?.verdict).toMatch(/^\d+ cups more\./);
  });
});
