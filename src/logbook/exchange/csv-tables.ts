/**
 * The logbook as tables for a spreadsheet: one for each kind, with all corrections applied. Only the
 * corrections are held; the entries themselves pass by twice, first to be counted, then to be written.
 */
import { type Entry, type EntryKindName, entryKindNames, entryKinds } from '../entries/entry.ts';
import { applyAmendments, type Reported } from '../fold/step-1-amendments.ts';
import { csvRecord } from './csv-text.ts';

export interface CsvTable {
  /** The kind of its entries; the file's name without `.csv`. */
  name: EntryKindName;
  rows: number;
  /** Its columns as a record with its line end. Fields inside a field are columns such as `purchase.leadDays`. */
  header: string;
}

export interface CsvRow {
  table: EntryKindName;
  /** The record with its line end. */
  line: string;
}

const envelope = ['id', 'on', 'time', 'recordedAt', 'by', 'note'];

export class CsvTables {
  private readonly amended: Set<string>;
  private readonly corrected: Map<string, Reported>;
  private readonly rows = new Map<EntryKindName, number>();
  private readonly used = new Map<EntryKindName, Set<string>>();
  private columns = new Map<EntryKindName, string[]>();

  /** @param corrections every amendment of the logbook, and the entries that they name. */
  constructor(corrections: readonly Entry[]) {
    this.amended = new Set(corrections.map(({ id }) => id));
    this.corrected = new Map(applyAmendments(corrections).reports.map((report) => [report.id, report]));
  }

  /** First, of every entry: its kind has a row more, and perhaps a column more. */
  count(entry: Entry): void {
    const row = this.asItHolds(entry);
    if (row === null) return;
    this.rows.set(row.kind, (this.rows.get(row.kind) ?? 0) + 1);
    const used = this.used.get(row.kind) ?? new Set();
    this.used.set(row.kind, used);
    for (const column of flat(row).keys()) used.add(column);
  }

  /** Then: the tables that have rows. */
  tables(): CsvTable[] {
    this.columns = new Map([...this.used].map(([kind, used]) => [kind, columnsOf(kind, used)]));
    return entryKindNames.flatMap((name) => {
      const rows = this.rows.get(name);
      return rows === undefined ? [] : [{ name, rows, header: csvRecord(this.columns.get(name) as string[]) }];
    });
  }

  /** Last, of every entry again: its record, or null where it is a correction or was voided. */
  row(entry: Entry): CsvRow | null {
    const row = this.asItHolds(entry);
    if (row === null) return null;
    const columns = this.columns.get(row.kind);
    if (columns === undefined) throw new RangeError(`row: entry ${entry.id} was not counted before`);
    const cells = flat(row);
    return { table: row.kind, line: csvRecord(columns.map((column) => cells.get(column))) };
  }

  private asItHolds(entry: Entry): Reported | null {
    if (entry.kind === 'amended') return null;
    return this.amended.has(entry.id) ? (this.corrected.get(entry.id) ?? null) : entry;
  }
}

/** All plain fields of the kind, and those inner fields that some entry has. */
function columnsOf(kind: EntryKindName, used: ReadonlySet<string>): string[] {
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
