/** The logbook as tables for a spreadsheet: one for each kind, with all corrections applied. */
import { type Entry, entryKindNames, entryKinds } from '../entries/entry.ts';
import { applyAmendments, type Reported } from '../fold/step-1-amendments.ts';
import { inOrder } from '../fold/step-2-order.ts';
import { csvRecord } from './csv-text.ts';

export interface CsvTable {
  /** The kind of its entries; the file's name without `.csv`. */
  name: string;
  rows: number;
  /** The header and a record for each entry, each with its line end. */
  lines(): Generator<string>;
}

const envelope = ['id', 'on', 'time', 'recordedAt', 'by', 'note'];

/** The tables that have rows, oldest entries first. Fields inside a field are columns such as `purchase.leadDays`. */
export function csvTables(entries: Iterable<Entry>): CsvTable[] {
  const reports = inOrder(applyAmendments(entries).reports);
  return entryKindNames.flatMap((kind) => {
    const rows = reports.filter((r) => r.kind === kind);
    return rows.length === 0
      ? []
      : [{ name: kind, rows: rows.length, lines: () => lines(rows, columnsOf(kind, rows)) }];
  });
}

function* lines(rows: readonly Reported[], columns: readonly string[]): Generator<string> {
  yield csvRecord(columns);
  for (const row of rows) {
    const cells = flat(row);
    yield csvRecord(columns.map((column) => cells.get(column)));
  }
}

/** All plain fields of the kind, and those inner fields that some entry has. */
function columnsOf(kind: (typeof entryKindNames)[number], rows: readonly Reported[]): string[] {
  const used = new Set(rows.flatMap((row) => [...flat(row).keys()]));
  const own = entryKinds[kind].fieldNames.flatMap((field) => {
    const inner = [...used].filter((column) => column.startsWith(`${field}.`)).sort();
    return inner.length > 0 ? inner : [field];
  });
  return [...envelope, ...own];
}

type Cell = string | number | boolean;

function flat(row: Reported): Map<string, Cell> {
  const cells = new Map<string, Cell>();
  const put = (column: string, value: unknown): void => {
    if (Array.isArray(value)) cells.set(column, listCell(value));
    else if (typeof value === 'object' && value !== null) {
      for (const [field, inner] of Object.entries(value)) put(`${column}.${field}`, inner);
    } else if (value !== undefined && value !== null) cells.set(column, value as Cell);
  };
  for (const [field, value] of Object.entries(row)) put(field, value);
  return cells;
}

/** Words are separated by blanks; anything else is JSON. */
function listCell(items: readonly unknown[]): string {
  return items.every((item) => typeof item === 'string') ? items.join(' ') : JSON.stringify(items);
}
