/** A consistent copy of the logbook, made while others may write. */
import { existsSync } from 'node:fs';
import { failed, ok, type Result } from '../../foundation/index.ts';
import { backupLogbook, dailyBackup } from '../../store/sqlite/index.ts';
import type { Command, CommandInput } from '../command.ts';
import { type ExitStatus, exitStatus } from '../exit-status.ts';
import { householdFolder, missingLogbook } from '../household.ts';
import { todayIn } from '../shell.ts';
import { printLines } from '../text/print.ts';

export const command: Command = {
  usage: 'flylarder backup [FILE] [--data DIR]',
  about: `Copies the logbook to FILE, which must be new; without FILE to the day's copy in
DIR/copies, as the server does by itself every day. Copies of the last 7 days
stay, then one a week, then one a month.`,
  options: ['data'],
  mostWords: 1,
  run: async (input) => backup(input),
};

function backup({ words, options }: CommandInput): Result<ExitStatus> {
  const missing = missingLogbook(options);
  if (missing) return missing;
  const folder = householdFolder(options);
  const [file] = words;
  if (file !== undefined && existsSync(file)) {
    return failed({ where: file, found: 'a file that is there already', expected: 'a new file name' });
  }
  if (file !== undefined) backupLogbook(folder, file);
  printLines([`Copied to ${file ?? dailyBackup(folder, todayIn('UTC'))}`]);
  return ok(exitStatus.done);
}
