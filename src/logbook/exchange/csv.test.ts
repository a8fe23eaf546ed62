import { parse } from 'csv-parse/sync';
import * as fc from 'fast-check';
import { describe, expect, it } from 'vitest';
import { randomLogbook } from '../../../tests/replicas/random-logbook.ts';
import type { Entry } from '../entries/entry.ts';
import { applyAmendments } from '../fold/step-1-amendments.ts';
import { CsvTables } from './csv-tables.ts';
import { csvRecord, parseCsv, plainCell } from './csv-text.ts';

const cell = fc.oneof(
  fc.string(),
  fc.constantFrom('=1+1', "'", "'=x", '-5', '@a', '\t', 'a"b', 'a,b', 'a\r\nb', '+', ''),
);
const table = fc.array(fc.array(cell, { minLength: 2, maxLength: 4 }), { minLength: 1 });

describe('CSV', () => {
  it('is read by an independent RFC 4180 parser (csv-parse) as what it was, but for the guards', () => {
    fc.assert(
      fc.property(table, (rows) => {
        const text = rows.map(csvRecord).join('');
        const read = parse(text, {
          relax_column_count: true,
          skip_empty_lines: false,
          record_delimiter: '\r\n',
        }) as string[][];
        expect(read.map((r) => r.map(plainCell))).toEqual(rows);
      }),
    );
  });

  it('is read back as what it was, blank records apart', () => {
    fc.assert(
      fc.property(table, (rows) => {
        // The first line settles the delimiter.
        const sheet = parseCsv(`head,line,of,columns\r\n${rows.map(csvRecord).join('')}`, 'x');
        // A tab or a return at the beginning is guarded and so no blank.
        const filled = rows.filter((r) => r.some((c) => c.trim() !== '' || /^[\t\r]/.test(c)));
        expect(sheet.ok && sheet.value.records.slice(1).map((r) => r.cells.map(plainCell))).toEqual(filled);
      }),
    );
  });

  it('reads what csv-parse reads, whatever the text', () => {
    const text = fc
      .array(fc.constantFrom('a', '1', ',', '"', '\n', '\r\n', ' ', ''), { maxLength: 30 })
      .map((p) => p.join(''));
    fc.assert(
      fc.property(text, (body) => {
        const whole = `x,y\n${body}`;
        let expected: string[][] | null = null;
        try {
          expected = parse(whole, { relax_column_count: true, record_delimiter: ['\r\n', '\n'] }) as string[][];
        } catch {
          return;
        }
        const sheet = parseCsv(whole, 'x');
        const filled = expected.filter((r) => r.some((c) => c.trim() !== ''));
        expect(sheet.ok && sheet.value.records.map((r) => r.cells)).toEqual(filled);
      }),
      { numRuns: 500 },
    );
  });

  it('nothing that a spreadsheet would run', () => {
    for (const text of ['=HYPERLINK("http://x")', '+1', '-2+3', '@SUM(A1)', '\t=1', '\r=1']) {
      expect(csvRecord([text])).toMatch(/^"?'/);
    }
    expect(csvRecord([-5, 'cup -5', 1.5, true, null])).toBe('-5,cup -5,1.5,true,\r\n');
  });

  it('a quotation mark that is never closed is named with its line', () => {
    const sheet = parseCsv('a,b\n1,2\n3,"4\n5,6\n', 'cups.csv');
    expect(sheet.ok ? null : sheet.problems[0]?.where).toBe('cups.csv, line 3');
  });

  it('semicolons, tabs and a byte order mark', () => {
    const sheet = parseCsv('\ufeffcup;"date, started"\n"a;b";2,5\n', 'x');
    expect(sheet.ok && sheet.value.records.map((r) => r.cells)).toEqual([
      ['cup', 'date, started'],
      ['a;b', '2,5'],
    ]);
    const tabs = parseCsv('cup\tdate\n1\t2\n', 'x');
    expect(tabs.ok && tabs.value.delimiter).toBe('\t');
  });
});

/** The tables' texts, as a logbook that passes by twice gives them. */
function texts(log: readonly Entry[]): Map<string, string> {
  const amended = new Set(log.flatMap((e) => (e.kind === 'amended' ? [e.amends] : [])));
  const tables = new CsvTables(log.filter((e) => e.kind === 'amended' || amended.has(e.id)));
  for (const entry of log) tables.count(entry);
  const files = new Map<string, string>(tables.tables().map(({ name, header }) => [name, header]));
  for (const entry of log) {
    const row = tables.row(entry);
    if (row) files.set(row.table, (files.get(row.table) as string) + row.line);
  }
  return files;
}

describe('tables', () => {
  it('every report that holds is a row of its kind, with its id', () => {
    const log = randomLogbook(5, 200);
    const files = texts(log);
    expect([...files.keys()]).toContain('harvested');
    const ids = [...files.values()].flatMap((text) =>
      (parse(text, { columns: true }) as { id: string }[]).map((r) => r.id),
    );
    const voided = new Set(log.flatMap((e) => (e.kind === 'amended' ? [e.amends] : [])));
    const untouched = log.filter((e) => e.kind !== 'amended' && !voided.has(e.id)).map((e) => e.id);
    expect(untouched.filter((id) => !ids.includes(id))).toEqual([]);
    expect(new Set(ids).size).toBe(ids.length);
    const held = applyAmendments(log).reports.map((r) => r.id);
    expect(ids.sort()).toEqual(held.sort());
  });

  it('a correction is applied, inner fields are columns', () => {
    const envelope = { on: '2026-06-01', recordedAt: '2026-06-01T10:00:00Z', by: '=Ana' };
    const [settings, wrong] = ['019f0000-0000-7000-8000-000000000001', '019f0000-0000-7000-8000-000000000002'];
    const files = texts([
      { ...envelope, id: settings, kind: 'household', purchase: { leadDays: 3 }, workWeekdays: ['mon', 'thu'] },
      { ...envelope, id: wrong, kind: 'stock', item: 'agar', amount: 5, unit: 'g' },
      {
        ...envelope,
        id: '019f0000-0000-7000-8000-000000000003',
        kind: 'amended',
        amends: wrong,
        replacement: { kind: 'stock', item: 'agar', amount: 50, unit: 'g' },
      },
    ] as never);
    const [household, stock] = ['household', 'stock'].map(
      (name) => parse(files.get(name) as string, { columns: true })[0] as Record<string, string>,
    );
    expect(files.size).toBe(2);
    expect(household).toMatchObject({ 'purchase.leadDays': '3', workWeekdays: 'mon thu', by: "'=Ana" });
    expect(stock).toMatchObject({ item: 'agar', amount: '50' });
  });
});
