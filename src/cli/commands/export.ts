/** Writes the whole logbook, as JSON Lines or as tables. */
import { once } from 'node:events';
import { failed, ok, type Result } from '../../foundation/index.ts';
import { canonicalText, type Entry } from '../../logbook/index.ts';
import { type Store, StoreFault } from '../../store/store.ts';
import type { Command } from '../command.ts';
import { type ExitStatus, exitStatus } from '../exit-status.ts';
import { fileFault } from '../file-fault.ts';
import { withExistingStore } from '../household.ts';
import { tablePath, writeTableFiles } from '../table-files.ts';
import { printLines } from '../text/print.ts';

export const command: Command = {
  usage: 'flylarder export [--csv DIR] [OPTIONS] > logbook.jsonl',
  about: `Writes the whole logbook to standard output as JSON Lines, one entry a line, in
the order it was kept. \`flylarder import FILE\` reads it back. --csv writes tables for
a spreadsheet in place of it, in the same order, with all corrections applied.`,
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

async function writeTables(store: Store, folder: string): Promise<Result<ExitStatus>> {
  try {
    const tables = await writeTableFiles(store, folder);
    printLines(tables.map(({ name, rows }) => `${tablePath(folder, name)}: ${rows} rows`));
    return ok(exitStatus.done);
  } catch (error) {
    if (error instanceof StoreFault) throw error;
    return failed({
      where: '--csv',
      found: `${folder}: ${fileFault(error)}`,
      expected: 'a folder that can be written',
    });
  }
}
