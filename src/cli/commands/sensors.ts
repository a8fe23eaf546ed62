/** The sensors whose readings the server takes. */
import { placeAsked } from '../../app/index.ts';
import { failed, ok, type Result } from '../../foundation/index.ts';
import { SensorRegister } from '../../server/index.ts';
import type { Command, CommandInput } from '../command.ts';
import { type ExitStatus, exitStatus } from '../exit-status.ts';
import { householdFolder, missingLogbook, readHousehold } from '../household.ts';
import type { Options } from '../options.ts';
import { now } from '../shell.ts';
import { printJson, printLines } from '../text/print.ts';

export const command: Command = {
  usage: 'flylarder sensors [add NAME | revoke ID] [OPTIONS]',
  about: `Lists the sensors that may send readings to \`flylarder serve\`. \`add\` prints the
sensor's token, once; \`revoke\` shuts it out. A sensor sends

  POST /api/v1/sensors/readings
  Authorization: Bearer TOKEN
  {"temperatureC": 22.5}

A broker is set in sensors/mqtt.json of the household's folder: docs/formats/sensors.md.`,
  options: ['data', 'place', 'json'],
  mostWords: 2,
  run: sensors,
};

async function sensors({ words: [act, name], options }: CommandInput): Promise<Result<ExitStatus>> {
  const missing = missingLogbook(options);
  if (missing) return missing;
  const register = new SensorRegister(householdFolder(options));
  if (act === undefined) return list(register, options);
  if (act === 'add' && name !== undefined) return add(register, name, options);
  if (act === 'revoke' && name !== undefined) return revoke(register, name);
  return failed({ where: 'sensors', found: `"${[act, name].filter(Boolean).join(' ')}"`, expected: command.usage });
}

function list(register: SensorRegister, options: Options): Result<ExitStatus> {
  const all = register.list();
  if (options.json) printJson(all);
  else if (all.length === 0) printLines(['No sensor is known.']);
  else printLines(all.map(({ id, name, place, addedAt }) => `${id}  ${name}  ${place}  since ${addedAt.slice(0, 10)}`));
  return ok(exitStatus.done);
}

async function add(register: SensorRegister, name: string, options: Options): Promise<Result<ExitStatus>> {
  const household = await readHousehold(options);
  if (!household.ok) return household;
  const { facts } = household.value;
  const place = placeAsked(facts, options.place);
  if (!place.ok) return place;
  if (!facts.places.some((known) => known.place === place.value)) {
    const expected = `one of ${facts.places.map((known) => known.place).join(', ')}`;
    return failed({ where: '--place', found: `"${place.value}"`, expected });
  }
  const token = register.add(name, place.value, now());
  if (options.json) printJson({ name, place: place.value, token });
  else printLines([`${name} measures ${place.value}. Its token, shown this once:`, token]);
  return ok(exitStatus.done);
}

function revoke(register: SensorRegister, id: string): Result<ExitStatus> {
  const meant = register.list().filter((sensor) => sensor.id === id || sensor.name === id);
  const [sensor, another] = meant;
  if (!sensor || another) {
    const expected = (sensor ? meant : register.list()).map((each) => each.id).join(', ') || 'no sensor is known';
    return failed({ where: 'sensors revoke', found: `"${id}"`, expected });
  }
  register.revoke(sensor.id);
  printLines([`${sensor.name} is shut out.`]);
  return ok(exitStatus.done);
}
