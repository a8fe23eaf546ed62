/** Writes the whole logbook as JSON Lines. */
import { once } from 'node:events';
import { ok, type Result } from '../../foundation/index.ts';
import { canonicalText, type Entry } from '../../logbook/index.ts';
import type { Store } from '../../store/store.ts';
import type { Command } from '../command.ts';
import { type ExitStatus, exitStatus } from '../exit-status.ts';
import { withExistingStore } from '../household.ts';

export const command: Command = {
  usage: 'flylarder export [--data DIR] > logbook.jsonl',
  about: `Writes the whole logbook to standard output as JSON Lines, one entry a line, in
the order it was kept. \`flylarder record FILE\` reads it back.`,
  options: ['data', 'database', 'household'],
  mostWords: 0,
  run: ({ options }) => withExistingStore(options, writeAll),
};

async function writeAll(store: Store): Promise<Result<ExitStatus>> {
  for await (const { entry } of store.entries()) await writeLine(entry);
  return ok(exitStatus.done);
}

async function writeLine(entry: Entry): Promise<void> {
  // Waits for a slow reader, so that a large logbook never piles up in memory.
  if (!process.stdout.write(`${canonicalText(entry)}\n`)) await once(process.stdout, 'drain');
}
