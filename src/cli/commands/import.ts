/** Brings in what was kept elsewhere: a logbook, or a keeper's own spreadsheet after a look at it. */
import { failed, type Result } from '../../foundation/index.ts';
import type { Command, CommandInput } from '../command.ts';
import type { ExitStatus } from '../exit-status.ts';
import { recordFile } from '../recording.ts';
import { importSheet, undoImport } from '../spreadsheet.ts';

export const command: Command = {
  usage: 'flylarder import (FILE.jsonl | - | SHEET.csv | --undo NAME) [OPTIONS]',
  about: `A JSON Lines logbook is read into the household, all of it or nothing; entries
that are there already are passed over. A whole logbook (from \`flylarder export\`) into an
empty household is taken as it is, with what its people wrote against each other.

A spreadsheet of your own, saved as CSV with one line a cup or an event, is first
shown as it would be read; nothing is written until you add --yes. Columns that
were taken for something else are matched with --match:

  flylarder import cups.csv
  flylarder import cups.csv --match "Made=startedOn,Box=culture" --yes

--undo NAME takes an import back, under the name that was printed with it.`,
  options: ['data', 'database', 'household', 'by', 'match', 'date-order', 'strain', 'yes', 'undo', 'language', 'json'],
  mostWords: 1,
  run: bringIn,
};

async function bringIn({ words, options }: CommandInput): Promise<Result<ExitStatus>> {
  const [file] = words;
  if (options.undo !== undefined) return undoImport(options.undo, options);
  if (file === undefined) return failed({ where: 'import', found: 'no file', expected: command.usage });
  return /\.(csv|tsv|txt)$/i.test(file)
    ? importSheet(file, options)
    : recordFile(file, options, 'kept in a logbook that comes whole');
}
