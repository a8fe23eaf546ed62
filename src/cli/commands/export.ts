/** Writes the whole logbook as JSON Lines. */
import { once } from 'node:events';
import { mkdir, writeFile } from 'node:fs/promises';
import { join } from 'node:path';
import { failed, ok, type Result } from '../../foundation/index.ts';
import { canonicalText, csvTables, type Entry } from '../../logbook/index.ts';
import type { Store } from '../../store/store.ts';
import type { Command } from '../command.ts';
import { type ExitStatus, exitStatus } from '../exit-status.ts';
import { fileFault } from '../file-fault.ts';
import { allEntries, withExistingStore } from '../household.ts';
import { printLines } from '../text/print.ts';
import { textChunks } from '../text-chunks.ts';

export const command: Command = {
  usage: 'flylarder export [--csv DIR] [OPTIONS] > logbook.jsonl',
  about: `Writes the whole logbook to standard output as JSON Lines, one entry a line, in
the order it was kept. \`flylarder record FILE\` reads it back. --csv writes tables
for a spreadsheet in place of it, with all corrections applied.`,
  options: ['data', 'database', 'household', 'csv'],
  mostWords: 0,
  run: ({ options }) =>
    withExistingStore(options, (store) =>
      options.csv === undefined ? writeAll(store) : writeTables(store, options.csv),
    ),
};

async function writeAll(store: Store): Promise<Result<ExitStatus>> {
  for await (const { entry } of store.entries()) await writeLine(entry);
  return ok(exitStatus.done);
}

async function writeLine(entry: Entry): Promise<void> {
  // Waits for a slow reader, so that a large logbook never piles up in memory.
  if (!process.stdout.write(`${canonicalText(entry)}\n`)) await once(process.stdout, 'drain');
}

/** A table a kind; files that are there already are written anew. */
async function writeTables(store: Store, folder: string): Promise<Result<ExitStatus>> {
  const tables = csvTables(await allEntries(store));
  try {
    await mkdir(folder, { recursive: true });
    for (const { name, lines } of tables) await writeFile(join(folder, `${name}.csv`), textChunks(lines()));
  } catch (error) {
    return failed({
      where: '--csv',
      found: `${folder}: ${fileFault(error)}`,
      expected: 'a folder that can be written',
    });
  }
  printLines(tables.map(({ name, rows }) => `${join(folder, `${name}.csv`)}: ${rows} rows`));
  return ok(exitStatus.done);
}
