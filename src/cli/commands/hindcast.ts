import { hindcast } from '../../app/index.ts';
import { ok } from '../../foundation/index.ts';
import { fold } from '../../logbook/index.ts';
import type { Command } from '../command.ts';
import { exitStatus } from '../exit-status.ts';
import { readEntries } from '../household.ts';
import { todayIn } from '../shell.ts';
import { hindcastText } from '../text/hindcast-text.ts';
import { printJson, printLines } from '../text/print.ts';

export const command: Command = {
  usage: 'flylarder hindcast [OPTIONS]',
  about: `The old logbook run again: for each of the last weeks the forecast as it was
then, from what was known by then, held against what was seen in the seven days
after. --weeks says how far to look back (default: 13).`,
  options: ['data', 'database', 'household', 'logbook', 'on', 'seed', 'weeks', 'language', 'json'],
  mostWords: 0,
  run: async ({ options }) => {
    const entries = await readEntries(options);
    if (!entries.ok) return entries;
    const on = options.on ?? todayIn(fold(entries.value).household.timeZone);
    const { seed = 1, weeks, language } = options;
    const answer = hindcast(entries.value, {
      on,
      seed,
      ...(weeks !== undefined && { weeks }),
      ...(language && { language }),
    });
    if (options.json) printJson(answer);
    else printLines(hindcastText(answer));
    return ok(exitStatus.done);
  },
};
