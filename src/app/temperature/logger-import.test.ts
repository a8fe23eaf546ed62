import { describe, expect, it } from 'vitest';
import { factsWritten } from '../../../tests/fixtures/facts-written.ts';
import { addDays, day } from '../../foundation/index.ts';
import { guessLoggerForm, loggerImport, loggerPlan, readLogger } from '../index.ts';
import { correctedForm } from './logger-import.ts';

const on = day('2026-11-25');
const facts = (drafts: object[]) => factsWritten(drafts, addDays(on, -30));
const shelf = { kind: 'place', place: 'shelf', name: 'Shelf', temperatureC: 23 };
const cellar = { kind: 'place', place: 'cellar', temperatureC: 17 };

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

describe('a logger that is known', () => {
  const file = (days: string[]) =>
    `when;in;out\n${days.flatMap((d) => Array.from({ length: 24 }, (_, h) => `${d} ${h}:00;21,5;8`)).join('\n')}`;
  const first = file(['03.11.2026']);
  const plan = (text: string, log: object[], given: Parameters<typeof loggerPlan>[3] = {}) => {
    const made = loggerPlan(text, 'a.csv', facts([shelf, cellar, ...log]), given, on);
    if (!made.ok) throw new Error(JSON.stringify(made.problems));
    return made.value;
  };
  const said = { place: 'cellar', temperature: 'out', timeOrder: 'dmy' as const, timeZone: '+01:00' };

  it('is asked about once: the next file with the same headings is read as the last was', () => {
    const asked = plan(first, [], { place: 'cellar' });
    expect(asked.known).toBe(false);
    expect(asked.doubts.map((d) => d.about).sort()).toEqual(['temperatureColumn', 'timeOrder']);
    const settled = plan(first, [], said);
    expect(settled.doubts).toEqual([]);
    const remember = settled.remember as object;
    const next = plan(file(['05.11.2026', '06.11.2026']), [remember]);
    expect(next).toMatchObject({ known: true, doubts: [], place: 'cellar', remember: null });
    expect(next.form).toMatchObject({ temperatureColumn: 2, timeOrder: 'dmy', timeZone: '+01:00' });
  });
  it('with other headings is another one; what is said now overrides', () => {
    const remember = plan(first, [], said).remember as object;
    expect(plan(first.replace('out', 'outside'), [remember], { place: 'shelf' }).known).toBe(false);
    const again = plan(first, [remember], { temperature: 'in' });
    expect(again.form.temperatureColumn).toBe(1);
    expect(again.remember).toMatchObject({ temperature: 'in', place: 'cellar', timeZone: '+01:00' });
    // The latest matching is the whole of it.
    expect(plan(first, [remember, again.remember as object]).form.temperatureColumn).toBe(1);
  });
  it('whose dates settle their own order needs no remembered one', () => {
    const remember = plan(first, [], { ...said, timeOrder: 'mdy' }).remember as object;
    expect(plan(file(['24.11.2026', '25.11.2026']), [remember]).form.timeOrder).toBe('dmy');
  });
  it('may have two columns with one heading', () => {
    const twice = first.replace('in;out', 'c;c');
    const remember = plan(twice, [], { ...said, temperature: '3' }).remember as object;
    expect(remember).toMatchObject({ temperature: '3' });
    expect(plan(twice, [remember]).form.temperatureColumn).toBe(2);
  });
  it('notes on the day how many readings were left out', () => {
    const lines = file(['03.11.2026', '04.11.2026']).split('\n');
    const spiked = [...lines.slice(0, 11), '03.11.2026 9:30;45,0;8', ...lines.slice(11)].join('\n');
    const form = plan(spiked, [], { ...said, temperature: 'in' }).form;
    const report = readLogger(spiked, form, 'a.csv', 'UTC');
    const drafts = report.ok && loggerImport(report.value, 'shelf', facts([shelf]));
    expect(drafts && drafts.ok && drafts.value.drafts.map((d) => d.note)).toEqual([
      expect.stringMatching(/^1 reading/),
      undefined,
    ]);
  });
});
