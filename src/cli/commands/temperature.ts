/** How warm the places are, logger files, and what warming or carrying would change. */
import { type Question, temperature, type TemperatureWhatIf, temperatureWhatIf } from '../../app/index.ts';
import { failed, ok, type Result } from '../../foundation/index.ts';
import type { Facts } from '../../logbook/index.ts';
import type { Command, CommandInput } from '../command.ts';
import { type ExitStatus, exitStatus } from '../exit-status.ts';
import { readHousehold } from '../household.ts';
import { importLoggerFile } from '../logger-file.ts';
import type { Options } from '../options.ts';
import { printJson, printLines } from '../text/print.ts';
import { temperatureText, whatIfText } from '../text/temperature-text.ts';

export const command: Command = {
  usage: 'flylarder temperature [import FILE] [OPTIONS]',
  about: `How warm each place was and is likely to be, and how far each cup's own clock has
run. Exit status 1: a place is warmer or colder than its limits.

  flylarder temperature --place shelf --warmer 2   what if it were 2 C warmer
  flylarder temperature --move M12 --to cellar     what if that cup stood there

A logger's file is a table of times and degrees in any language. It is first shown
as it would be read; nothing is written until you add --yes. Each day becomes one
entry: mean, lowest, highest. How its columns were matched is kept: the next file
with the same headings is read the same way.

  flylarder temperature import log.csv --place shelf
  flylarder temperature import log.csv --match "T2=temperature" --yes`,
  options: [
    'data',
    'database',
    'household',
    'logbook',
    'on',
    'place',
    'warmer',
    'move',
    'to',
    'match',
    'date-order',
    'unit',
    'zone',
    'by',
    'yes',
    'json',
  ],
  mostWords: 2,
  run,
};

async function run({ words, options }: CommandInput): Promise<Result<ExitStatus>> {
  const [word, file] = words;
  if (word === 'import' && file !== undefined) return importLoggerFile(file, options);
  if (word !== undefined) {
    return failed({ where: 'temperature', found: `"${words.join(' ')}"`, expected: command.usage });
  }
  const household = await readHousehold(options);
  if (!household.ok) return household;
  const { facts, on } = household.value;
  const question = { on, seed: 1 };
  const asked = whatIfOf(options);
  if (!asked.ok) return asked;
  return asked.value ? whatIf(facts, question, asked.value, options) : overview(facts, question, options);
}

function overview(facts: Facts, question: Question, options: Options): Result<ExitStatus> {
  const answer = temperature(facts, question);
  if (options.json) printJson(answer);
  else printLines(temperatureText(answer));
  return ok(answer.places.some(({ alarms }) => alarms.length > 0) ? exitStatus.warning : exitStatus.done);
}

function whatIf(facts: Facts, question: Question, asked: TemperatureWhatIf, options: Options): Result<ExitStatus> {
  const answer = temperatureWhatIf(facts, question, asked);
  if (!answer.ok) return answer;
  if (options.json) printJson(answer.value);
  else printLines(whatIfText(answer.value));
  return ok(exitStatus.done);
}

function whatIfOf({ place, warmer, move, to }: Options): Result<TemperatureWhatIf | null> {
  if (move !== undefined || to !== undefined) {
    if (move !== undefined && to !== undefined) return ok({ culture: move, to });
    return failed({ where: '--move', found: 'one of --move and --to', expected: 'both: a cup and a place' });
  }
  if (warmer === undefined) return ok(null);
  if (place !== undefined) return ok({ place, byC: warmer });
  return failed({ where: '--place', found: 'nothing', expected: 'the place that is to be warmer' });
}
