import { describe, expect, it } from 'vitest';
import { addDays, day } from '../../foundation/index.ts';
import { type Entry, fold } from '../../logbook/index.ts';
import { strainLife } from '../../reference/index.ts';
import { guessLoggerForm, loggerImport, readLogger, temperature, temperatureWhatIf, today } from '../index.ts';
import { correctedForm } from './logger-import.ts';
import { temperatureAnswer, temperatureWhatIfAnswer } from './temperature-answers.ts';

const on = day('2026-11-25');
const question = { on, seed: 1, scenarios: 50, weeks: 4 };
const facts = (drafts: object[]) =>
  fold(
    drafts.map((draft, i) => ({
      on: addDays(on, -30),
      ...draft,
      id: `0190a000-0000-7000-8000-${String(i).padStart(12, '0')}`,
      recordedAt: '2026-11-25T20:00:00Z',
      by: 'test',
    })) as unknown as Entry[],
  );
const shelf = { kind: 'place', place: 'shelf', name: 'Shelf', temperatureC: 23 };
const cellar = { kind: 'place', place: 'cellar', temperatureC: 17 };
const cup = (culture: string, daysAgo: number, place = 'shelf') => ({
  kind: 'started',
  culture,
  strain: 'melanogaster',
  place,
  founders: 50,
  on: addDays(on, -daysAgo),
});
const read = (daysAgo: number, meanC: number, more: object = {}) => ({
  kind: 'temperature',
  place: 'shelf',
  on: addDays(on, -daysAgo),
  meanC,
  ...more,
});
const steady = (meanC: number, from: number, until: number) =>
  Array.from({ length: from - until + 1 }, (_, i) => read(from - i, meanC, { minC: meanC, maxC: meanC }));

describe('the clocks of cups', () => {
  it('have the shape that the doors promise', () => {
    const answer = temperature(facts([shelf, cellar, cup('a', 5)]), question);
    expect(temperatureAnswer.parse(answer)).toEqual(answer);
  });

  it('run at the strain’s rate, and count degree-days above its threshold', () => {
    const life = strainLife('melanogaster') as NonNullable<ReturnType<typeof strainLife>>;
    const answer = temperature(facts([shelf, ...steady(22, 30, 0), cup('a', 6)]), question);
    const clock = answer.cultures[0];
    // The engine looks rates up to 0.05 C.
    expect(Math.abs((clock?.developmentShare ?? 0) - 6 * life.developmentRate(22))).toBeLessThan(0.002);
    expect(clock?.degreeDays).toBeCloseTo(6 * (22 - life.developmentLimitsC.lower), 1);
  });

  it('say what a cool week did, and nothing when the week was as expected', () => {
    const cool = temperature(facts([shelf, ...steady(23, 30, 7), ...steady(18, 6, 0), cup('a', 10)]), question);
    expect(cool.cultures[0]?.shiftDays).toBeGreaterThan(1);
    expect(cool.cultures[0]?.shift).toMatch(/^7 cool days at Shelf .* days later, on/);
    const same = temperature(facts([shelf, ...steady(23, 30, 0), cup('a', 10)]), question);
    expect(same.cultures[0]?.shift).toBeNull();
  });
});

describe('what is ahead', () => {
  it('goes where the place’s own readings point, with a band that widens', () => {
    const answer = temperature(facts([shelf, ...steady(26, 30, 0)]), question);
    const ahead = answer.places[0]?.ahead ?? [];
    expect(ahead[0]?.p50C).toBeCloseTo(26, 0);
    expect(ahead[13]?.p50C).toBeGreaterThan(24.5);
    const width = (i: number) => (ahead[i]?.p95C ?? 0) - (ahead[i]?.p05C ?? 0);
    expect(width(13)).toBeGreaterThan(width(0));
  });
});

describe('alarms', () => {
  const hot = [shelf, cup('a', 5), read(0, 27, { minC: 23, maxC: 31 })];
  it('are in the day’s answer, with what to do, where cups stand', () => {
    expect(today(facts(hot), question).warnings).toEqual([
      expect.stringMatching(/^Shelf, Wed 25 Nov: 31 °C in the cups, above 28\..*sterile/),
    ]);
    expect(today(facts([shelf, cellar, cup('a', 5, 'cellar'), hot[2] as object]), question).warnings).toEqual([]);
  });
  it('keep the keeper’s limits, count the cup’s own warmth, and know frost', () => {
    const limits = { kind: 'place', place: 'shelf', limitsC: { low: 16, high: 32 } };
    expect(today(facts([shelf, limits, cup('a', 5), hot[2] as object]), question).warnings).toEqual([]);
    const offset = { kind: 'place', place: 'shelf', cupOffsetC: 2 };
    expect(today(facts([shelf, limits, offset, cup('a', 5), hot[2] as object]), question).warnings).toHaveLength(1);
    const frost = today(facts([shelf, cup('a', 5), read(1, 2, { minC: -1, maxC: 6 })]), question).warnings;
    expect(frost.join()).toMatch(/-1 °C .* Frost kills/);
  });
  it('of three days ago are past', () => {
    expect(today(facts([shelf, cup('a', 5), read(3, 27, { minC: 23, maxC: 31 })]), question).warnings).toEqual([]);
  });
});

describe('what if', () => {
  const household = facts([shelf, cellar, ...steady(23, 10, 0), cup('a', 3), cup('b', 5)]);
  const asked = (what: Parameters<typeof temperatureWhatIf>[2]) => {
    const answer = temperatureWhatIf(household, question, what);
    if (!answer.ok) throw new Error(JSON.stringify(answer.problems));
    expect(temperatureWhatIfAnswer.parse(answer.value)).toEqual(answer.value);
    return answer.value;
  };
  it('a warmer place hurries its cups, with the caution about mats; a cooler one holds them', () => {
    const warmer = asked({ place: 'shelf', byC: 2 });
    expect(warmer.cultures.map((c) => c.id)).toEqual(['b', 'a']);
    for (const c of warmer.cultures) expect(c.firstAdultsLaterDays).toBeLessThan(-0.5);
    expect(warmer.cautions.join()).toMatch(/thermostat/);
    for (const c of asked({ place: 'shelf', byC: -3 }).cultures) expect(c.firstAdultsLaterDays).toBeGreaterThan(0.5);
    expect(asked({ place: 'shelf', byC: 0 }).cultures[0]?.firstAdultsLaterDays).toBe(0);
  });
  it('a carried cup alone is held', () => {
    const carried = asked({ culture: 'a', to: 'cellar' });
    expect(carried.cultures.map((c) => c.id)).toEqual(['a']);
    expect(carried.cultures[0]?.firstAdultsLaterDays).toBeGreaterThan(2);
  });
  it('names what is not there', () => {
    const where = (what: Parameters<typeof temperatureWhatIf>[2]) => {
      const answer = temperatureWhatIf(household, question, what);
      return answer.ok ? null : answer.problems[0]?.where;
    };
    expect(where({ place: 'attic', byC: 1 })).toBe('place');
    expect(where({ place: 'shelf', byC: 99 })).toBe('byC');
    expect(where({ culture: 'x', to: 'cellar' })).toBe('culture');
    expect(where({ culture: 'a', to: 'attic' })).toBe('to');
  });
});

describe('a logger’s file', () => {
  const text = `when;in;out\n${Array.from({ length: 48 }, (_, i) => `2026-11-${23 + Math.floor(i / 24)} ${i % 24}:00;21,5;8`).join('\n')}`;
  const guess = guessLoggerForm(text, 'a.csv', 'UTC');
  const reportOf = (correction: Parameters<typeof correctedForm>[1]) => {
    if (!guess.ok) throw new Error('no guess');
    const form = correctedForm(guess.value, correction);
    if (!form.ok) throw new Error(JSON.stringify(form.problems));
    const report = readLogger(text, form.value, 'a.csv', 'UTC');
    if (!report.ok) throw new Error('no report');
    return report.value;
  };
  it('becomes one entry a day; what is there already is passed over', () => {
    const first = loggerImport(reportOf({}), 'shelf', facts([shelf]));
    expect(first).toMatchObject({
      ok: true,
      value: { alreadyThere: 0, drafts: [{ meanC: 21.5, on: '2026-11-23' }, {}] },
    });
    const drafts = first.ok ? first.value.drafts : [];
    expect(loggerImport(reportOf({}), 'shelf', facts([shelf, ...drafts]))).toMatchObject({
      value: { alreadyThere: 2, drafts: [] },
    });
  });
  it('is read as the keeper corrects it', () => {
    expect(reportOf({ temperature: 'out' }).days[0]?.meanC).toBe(8);
    expect(reportOf({ temperature: '3', unit: 'C' }).days[0]?.meanC).toBe(8);
    expect(guess.ok && correctedForm(guess.value, { temperature: 'attic' })).toMatchObject({ ok: false });
  });
  it('needs a place that is known', () => {
    expect(loggerImport(reportOf({}), 'attic', facts([shelf]))).toMatchObject({ ok: false });
  });
});
