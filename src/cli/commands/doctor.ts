/** Looks for damage in a logbook, and saves what can be read. */
import { existsSync } from 'node:fs';
import { failed, ok, problemText, type Result } from '../../foundation/index.ts';
import { type Examination, examineLogbook, logbookFile, salvageLogbook } from '../../store/sqlite/index.ts';
import type { Command, CommandInput } from '../command.ts';
import { type ExitStatus, exitStatus } from '../exit-status.ts';
import { householdFolder } from '../household.ts';
import { counted, wrapped } from '../text/layout.ts';
import { printJson, printLines } from '../text/print.ts';

export const command: Command = {
  usage: 'flylarder doctor [FILE] [--data DIR] [--save DIR]',
  about: `Examines the household's logbook, or FILE, and names any damage; the file is not
changed. --save puts every entry that can be read into a new household in DIR.
Exit status 1: there is damage.`,
  options: ['data', 'save', 'json'],
  mostWords: 1,
  run: doctor,
};

async function doctor({ words, options }: CommandInput): Promise<Result<ExitStatus>> {
  const file = words[0] ?? logbookFile(householdFolder(options));
  if (!existsSync(file)) return failed({ where: file, found: 'no such file', expected: 'a logbook' });
  if (options.save !== undefined && existsSync(logbookFile(options.save))) {
    return failed({ where: '--save', found: `a logbook in ${options.save}`, expected: 'a folder without one' });
  }
  const found = options.save === undefined ? examineLogbook(file) : await salvageLogbook(file, options.save);
  if (options.json) printJson(found);
  else printLines(examinationText(found, options.save));
  return ok(found.damage.length > 0 ? exitStatus.warning : exitStatus.done);
}

function examinationText({ file, readable, lost, damage }: Examination, savedIn: string | undefined): string[] {
  const lostText = lost > 0 ? `, ${lost} lost` : '';
  const verdict = damage.length === 0 ? 'No damage found.' : `${counted(damage.length, 'damage', 'damages')} found:`;
  const saved = savedIn === undefined ? [] : [`Every readable entry is now in ${savedIn}`];
  const advice =
    damage.length > 0 && savedIn === undefined
      ? wrapped('Save what can be read with --save DIR, or put an older copy back with `flylarder restore`.')
      : [];
  return [
    `${file}: ${counted(readable, 'readable entry', 'readable entries')}${lostText}`,
    verdict,
    ...damage.flatMap((problem) => wrapped(problemText(problem), '! ')),
    ...advice,
    ...saved,
  ];
}
