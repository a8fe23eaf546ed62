/** CSV as RFC 4180 has it: written for spreadsheets without anything they could run, and read back. */
import { failed, ok, type Result } from '../../foundation/index.ts';

/** Text that begins so would be run as a formula by a spreadsheet. */
const runnable = /^[=+\-@\t\r]/;

/**
 * One record with its line end. Numbers stay numbers; text that a spreadsheet could take for a formula
 * gets an apostrophe in front, which `plainCell` takes off again.
 */
export function csvRecord(cells: readonly (string | number | boolean | null | undefined)[]): string {
  return `${cells.map(csvCell).join(',')}\r\n`;
}

function csvCell(value: string | number | boolean | null | undefined): string {
  if (value === null || value === undefined) return '';
  if (typeof value !== 'string') return String(value);
  const safe = runnable.test(value) || value.startsWith("'") ? `'${value}` : value;
  return /[",\r\n]/.test(safe) ? `"${safe.replaceAll('"', '""')}"` : safe;
}

/** The text of a cell as it was before `csvRecord` made it safe. */
export function plainCell(cell: string): string {
  return cell.startsWith("'") && (cell.startsWith("''") || runnable.test(cell.slice(1))) ? cell.slice(1) : cell;
}

export interface CsvRecord {
  /** Line on which the record begins. */
  line: number;
  cells: string[];
}

export interface CsvSheet {
  delimiter: string;
  records: CsvRecord[];
}

/** The records of a CSV text; the delimiter (comma, semicolon or tab) is the one its first line uses most. */
export function parseCsv(text: string, file: string): Result<CsvSheet> {
  const body = text.startsWith('\ufeff') ? text.slice(1) : text;
  const delimiter = delimiterOf(body);
  const reader = new RecordReader(body, delimiter);
  const records: CsvRecord[] = [];
  while (!reader.isAtEnd) {
    const record = reader.next();
    if (record === null) {
      const where = `${file}, line ${reader.quoteLine}`;
      return failed({ where, found: 'a quotation mark that is never closed', expected: 'a closing quotation mark' });
    }
    if (record.cells.some((cell) => cell.trim() !== '')) records.push(record);
  }
  return ok({ delimiter, records });
}

function delimiterOf(text: string): string {
  const first = text.slice(0, text.search(/[\r\n]|$/)).replaceAll(/"[^"]*"/g, '');
  const counts = [',', ';', '\t'].map((d) => ({ d, n: first.split(d).length }));
  return counts.reduce((best, c) => (c.n > best.n ? c : best)).d;
}

class RecordReader {
  quoteLine = 1;
  private at = 0;
  private line = 1;
  private readonly text: string;
  private readonly delimiter: string;

  constructor(text: string, delimiter: string) {
    this.text = text;
    this.delimiter = delimiter;
  }

  get isAtEnd(): boolean {
    return this.at >= this.text.length;
  }

  next(): CsvRecord | null {
    const record: CsvRecord = { line: this.line, cells: [] };
    for (;;) {
      const cell = this.text[this.at] === '"' ? this.quotedCell() : this.bareCell();
      if (cell === null) return null;
      record.cells.push(cell);
      if (this.text[this.at] !== this.delimiter) break;
      this.at++;
    }
    this.passLineEnd();
    return record;
  }

  private bareCell(): string {
    const from = this.at;
    while (!this.isAtEnd && !this.isCellEnd()) this.at++;
    return this.text.slice(from, this.at);
  }

  private isCellEnd(): boolean {
    const c = this.text[this.at];
    return c === this.delimiter || c === '\n' || c === '\r';
  }

  /** What stands between a closing mark and the next delimiter is kept, as spreadsheets do. */
  private quotedCell(): string | null {
    this.quoteLine = this.line;
    let cell = '';
    for (this.at++; ; this.at++) {
      if (this.isAtEnd) return null;
      const c = this.text[this.at] as string;
      if (c === '\n') this.line++;
      if (c !== '"') cell += c;
      else if (this.text[this.at + 1] === '"') cell += this.text[this.at++];
      else break;
    }
    this.at++;
    return cell + this.bareCell();
  }

  private passLineEnd(): void {
    if (this.text[this.at] === '\r') this.at++;
    if (this.text[this.at] === '\n') this.at++;
    this.line++;
  }
}
