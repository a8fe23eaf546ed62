import { parse } from 'csv-parse/sync';
import { describe, expect, it } from 'vitest';
import { filesIn, textOf } from './sources.ts';

const tables = filesIn('data', ['.csv']);
const keysOf = (bibliography: string) =>
  new Set([...bibliography.matchAll(/^@\w+\{([^,\s]+)/gm)].map((entry) => entry[1]));
const sources = keysOf(textOf('data/sources.bib'));

describe('data tables: every published value names where it was read', () => {
  it('there are tables and sources', () => {
    expect(tables.length).toBeGreaterThan(5);
    expect(sources.size).toBeGreaterThan(10);
  });

  for (const table of tables) {
    it(table, () => {
      const rows = parse(textOf(table), { columns: true, comment: '#', skip_empty_lines: true }) as Record<
        string,
        string
      >[];
      expect(rows.length).toBeGreaterThan(0);
      const missing = rows.flatMap((row, i) =>
        (row.source ?? '')
          .split(/[;|]\s*/)
          .filter((key) => !sources.has(key))
          .map((key) => `row ${i + 2}: "${key}"`),
      );
      expect(missing).toEqual([]);
    });
  }
});
