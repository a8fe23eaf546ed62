/** Puts a copy in the place of the logbook; the one that was there is set aside. */
import { existsSync } from 'node:fs';
import { failed, ok, type Result } from '../../foundation/index.ts';
import { examineLogbook, restoreLogbook } from '../../store/sqlite/index.ts';
import type { Command, CommandInput } from '../command.ts';
import { type ExitStatus, exitStatus } from '../exit-status.ts';
import { householdFolder } from '../household.ts';
import { counted } from '../text/layout.ts';
import { printLines } from '../text/print.ts';

export const command: Command = {
  usage: 'flylarder restore FILE [--data DIR]',
  about: `Puts a copy (see backup) in the place of the household's logbook. A damaged copy
is refused; the logbook that was there is set aside, never deleted. Stop the
server first.`,
  options: ['data'],
  mostWords: 1,
  run: async (input) => restore(input),
};

function restore({ words, options }: CommandInput): Result<ExitStatus> {
  const [file] = words;
  if (file === undefined) return failed({ where: 'restore', found: 'no file', expected: command.usage });
  if (!existsSync(file)) return failed({ where: file, found: 'no such file', expected: 'a copy of a logbook' });
  const { damage } = examineLogbook(file);
  if (damage.length > 0) return failed(...damage);
  const { entries, setAside } = restoreLogbook(file, householdFolder(options));
  printLines([
    `Restored ${counted(entries, 'entry', 'entries')}.`,
    ...(setAside ? [`The logbook that was there is ${setAside}`] : []),
  ]);
  return ok(exitStatus.done);
}
