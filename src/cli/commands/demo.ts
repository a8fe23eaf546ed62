/** Fills an empty household with ten weeks of an invented one. */
import { demoLogbook } from '../../app/index.ts';
import { failed, type Result } from '../../foundation/index.ts';
import { checkBatch } from '../../logbook/index.ts';
import type { Command } from '../command.ts';
import type { ExitStatus } from '../exit-status.ts';
import { householdPlace } from '../household.ts';
import { warmUp } from '../household-command.ts';
import type { Options } from '../options.ts';
import { existingEntries, recordEntries } from '../recording.ts';
import { pastEntryMaker, todayIn } from '../shell.ts';

export const command: Command = {
  usage: 'flylarder demo [--data DIR] [--on DATE]',
  about: `Fills an empty household with ten weeks of logbook of an invented one, up to
today or --on DATE, to look around in.`,
  options: ['data', 'database', 'household', 'on', 'language', 'json'],
  mostWords: 0,
  run: ({ options }) => demo(options),
};

async function demo(options: Options): Promise<Result<ExitStatus>> {
  const existing = await existingEntries(options);
  if (existing.length > 0) {
    const found = `a household with ${existing.length} entries`;
    return failed({
      where: householdPlace(options),
      found,
      expected: 'an empty one: --data DIR names another folder',
    });
  }
  const entries = demoLogbook(options.on ?? todayIn('UTC'), options.language).map(pastEntryMaker('demo'));
  const checked = checkBatch(entries, []);
  if (!checked.ok) return checked;
  const recorded = await recordEntries(entries, options);
  await warmUp(options);
  return recorded;
}
