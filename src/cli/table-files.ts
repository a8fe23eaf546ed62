/** The logbook written as CSV files, a file a kind, while the entries pass by: a large one is never held. */
import { type FileHandle, mkdir, open } from 'node:fs/promises';
import { join } from 'node:path';
import { type CsvTable, CsvTables, type Entry } from '../logbook/index.ts';
import type { Store } from '../store/store.ts';

/** Text that is gathered before it is written, so that a million rows are not a million writes. */
const chunkLength = 65_536;

/** Writes the tables into `folder`, which is made when missing; files that are there already are written anew. */
export async function writeTableFiles(store: Store, folder: string): Promise<CsvTable[]> {
  const until = await store.lastCursor();
  const tables = new CsvTables(await corrections(store, until));
  for await (const entry of entriesUntil(store, until)) tables.count(entry);
  const written = tables.tables();
  await mkdir(folder, { recursive: true });
  const files = new Map<string, TableFile>();
  try {
    for (const { name, header } of written)
      files.set(name, new TableFile(await open(tablePath(folder, name), 'w'), header));
    for await (const entry of entriesUntil(store, until)) {
      const row = tables.row(entry);
      if (row !== null) await files.get(row.table)?.write(row.line);
    }
    for (const file of files.values()) await file.flush();
  } finally {
    for (const file of files.values()) await file.close();
  }
  return written;
}

export function tablePath(folder: string, name: string): string {
  return join(folder, `${name}.csv`);
}

/** Entries that came while the tables were written are left out of all of them. */
async function* entriesUntil(store: Store, until: number): AsyncGenerator<Entry> {
  for await (const { cursor, entry } of store.entries()) {
    if (cursor > until) return;
    yield entry;
  }
}

/** The amendments, and the entries that they amend. */
async function corrections(store: Store, until: number): Promise<Entry[]> {
  const found: Entry[] = [];
  for await (const entry of entriesUntil(store, until)) if (entry.kind === 'amended') found.push(entry);
  const targets = new Set(found.flatMap((entry) => (entry.kind === 'amended' ? [entry.amends] : [])));
  for (const id of targets) {
    const target = await store.entry(id);
    if (target !== null && target.kind !== 'amended') found.push(target);
  }
  return found;
}

class TableFile {
  constructor(
    private readonly file: FileHandle,
    private text: string,
  ) {}

  async write(line: string): Promise<void> {
    this.text += line;
    if (this.text.length >= chunkLength) await this.flush();
  }

  async flush(): Promise<void> {
    await this.file.writeFile(this.text);
    this.text = '';
  }

  close(): Promise<void> {
    return this.file.close();
  }
}
