/** One cup from its start to its end, from the models alone: no household is needed. */
import { readFile } from 'node:fs/promises';
import { hourlyFromFile, lifecycle } from '../../app/index.ts';
import { failed, ok, type Result } from '../../foundation/index.ts';
import type { Command } from '../command.ts';
import { type ExitStatus, exitStatus } from '../exit-status.ts';
import { fileFault } from '../file-fault.ts';
import { given } from '../given-options.ts';
import type { Options } from '../options.ts';
import { lifecycleText } from '../text/lifecycle-text.ts';
import { printJson, printLines } from '../text/print.ts';

const usualTemperatureC = 23;

export const command: Command = {
  usage: 'flylarder lifecycle [OPTIONS]',
  about: `One cup from its start to its end: stages, dates, flies. Days are counted from
starting the cup. The temperature is one number, or a file of readings.`,
  options: [
    'strain',
    'temperature',
    'temperature-file',
    'founders',
    'founder-age',
    'medium-g',
    'surface-cm2',
    'harvest-every',
    'harvest-share',
    'humidity',
    'lights-on',
    'yeast',
    'wet',
    'dry',
    'json',
  ],
  mostWords: 0,
  run: ({ options }) => answer(options),
};

async function answer(options: Options): Promise<Result<ExitStatus>> {
  const temperatureC = await temperatureOf(options);
  if (!temperatureC.ok) return temperatureC;
  const life = lifecycle({
    strain: options.strain ?? 'melanogaster',
    temperatureC: temperatureC.value,
    ...given({
      founders: options.founders,
      founderAgeDays: options['founder-age'],
      mediumMassG: options['medium-g'],
      surfaceCm2: options['surface-cm2'],
      harvestEveryDays: options['harvest-every'],
      harvestShare: options['harvest-share'],
      humidityPercent: options.humidity,
      lightsOnHour: options['lights-on'],
      liveYeast: options.yeast,
    }),
    moistureSpells: [
      ...(options.wet ? [{ ...options.wet, state: 'wet' as const }] : []),
      ...(options.dry ? [{ ...options.dry, state: 'dry' as const }] : []),
    ],
  });
  if (!life.ok) return life;
  if (options.json) printJson(life.value);
  else printLines(lifecycleText(life.value));
  return ok(exitStatus.done);
}

/** A number, or hourly values read from a file. */
async function temperatureOf(options: Options): Promise<Result<number | Float64Array>> {
  const { temperature, 'temperature-file': file } = options;
  if (file === undefined) return ok(temperature ?? usualTemperatureC);
  if (temperature !== undefined) {
    return failed({ where: '--temperature-file', found: '--temperature beside it', expected: 'one of the two' });
  }
  try {
    return hourlyFromFile(await readFile(file, 'utf8'), file);
  } catch (error) {
    return failed({ where: file, found: fileFault(error), expected: 'a CSV file that can be read' });
  }
}
