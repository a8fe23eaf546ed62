/** Rows of a published table: text cells by column, checked as they are read. A bad table is a bug and throws. */
import { parse } from 'csv-parse/browser/esm/sync';

export interface CsvRow {
  /** All cells as text, by column. */
  cells: Readonly<Record<string, string>>;
  /** The cell's text; RangeError when the column does not exist. */
  text(column: string): string;
  /** The cell as a number; RangeError when it is none. */
  number(column: string): number;
  /** As `number`, but null for an empty cell. */
  numberOrNull(column: string): number | null;
  /** The cell, if it is one of `words`. */
  oneOf<T extends string>(column: string, words: readonly T[]): T;
}

/** The rows of `table` (its name is for messages). */
export function csvRows(table: string, csv: string): CsvRow[] {
  const records = parse(csv, { columns: true, skip_empty_lines: true, trim: true }) as Record<string, string>[];
  return records.map((record, i) => rowOf(`${table}, line ${i + 2}`, record));
}

function rowOf(where: string, record: Record<string, string>): CsvRow {
  const text = (column: string): string => {
    const cell = record[column];
    if (cell === undefined) throw new RangeError(`${where}: there is no column ${column}`);
    return cell;
  };
  const number = (column: string): number => {
    const value = Number(text(column));
    if (text(column).trim() === '' || !Number.isFinite(value)) {
      throw new RangeError(`${where}, ${column}: "${text(column)}" is not a number`);
    }
    return value;
  };
  return {
    cells: record,
    text,
    number,
    numberOrNull: (column) => (text(column) === '' ? null : number(column)),
    oneOf: (column, words) => {
      const word = words.find((w) => w === text(column));
      if (word === undefined)
        throw new RangeError(`${where}, ${column}: "${text(column)}" is not one of ${words.join(', ')}`);
      return word;
    },
  };
}
