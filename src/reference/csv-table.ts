/** Reads a table of `data/`: a header line and one line a value; the tables are the project's own. */
import { parse } from 'csv-parse/browser/esm/sync';

/** Rows by column name, as text. Throws RangeError naming `file` when the columns are not those. */
export function tableRows<Column extends string>(
  file: string,
  text: string,
  columns: readonly Column[],
): Record<Column, string>[] {
  const rows = parse(text, { columns: true, skip_empty_lines: true, trim: true }) as Record<string, string>[];
  const found = Object.keys(rows[0] ?? {});
  const missing = columns.filter((column) => !found.includes(column));
  if (missing.length > 0) throw new RangeError(`${file}: columns ${missing.join(', ')} are missing`);
  return rows as Record<Column, string>[];
}

/** A cell as a finite number, or RangeError naming file, column and what was found. */
export function numberIn(file: string, column: string, text: string): number {
  const value = Number(text);
  if (text === '' || !Number.isFinite(value)) throw new RangeError(`${file}: ${column} is "${text}", not a number`);
  return value;
}
