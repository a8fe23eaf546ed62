/** The devices of the home network that a household lets in. */
import { failed, ok, type Result } from '../../foundation/index.ts';
import { type Device, Devices, invite, networkAddresses } from '../../server/index.ts';
import type { Command, CommandInput } from '../command.ts';
import { type ExitStatus, exitStatus } from '../exit-status.ts';
import { householdFolder, missingLogbook } from '../household.ts';
import type { Options } from '../options.ts';
import { invitationLines } from '../text/network-text.ts';
import { printJson, printLines } from '../text/print.ts';

export const command: Command = {
  usage: 'flylarder devices [add | revoke NAME] [OPTIONS]',
  about: `Lists the devices that \`serve --lan\` lets in. \`add\` prints a code, good once and
for ten minutes; \`revoke\` shuts a device out at once, by its name or its id.`,
  options: ['data', 'port', 'public-url', 'json'],
  mostWords: 2,
  run: async (input) => devices(input),
};

function devices({ words: [act, name], options }: CommandInput): Result<ExitStatus> {
  const missing = missingLogbook(options);
  if (missing) return missing;
  const register = new Devices(householdFolder(options));
  if (act === undefined) return list(register, options);
  if (act === 'add' && name === undefined) return add(options);
  if (act === 'revoke' && name !== undefined) return revoke(register, name);
  return failed({ where: 'devices', found: `"${[act, name].filter(Boolean).join(' ')}"`, expected: command.usage });
}

function list(register: Devices, options: Options): Result<ExitStatus> {
  const all = register.list();
  if (options.json) printJson(all);
  else printLines(all.length === 0 ? ['No device is paired.'] : all.map(deviceLine));
  return ok(exitStatus.done);
}

function deviceLine({ id, name, pairedAt, lastSeenAt }: Device): string {
  return `${id}  ${name}  paired ${pairedAt.slice(0, 10)}, last here ${lastSeenAt.slice(0, 10)}`;
}

function add(options: Options): Result<ExitStatus> {
  const invitation = invite(householdFolder(options), Date.now());
  const [address] = networkAddresses();
  const here = address === undefined ? undefined : `http://${address}:${options.port ?? 4180}/`;
  const base = options['public-url'] ?? here;
  const pair = base === undefined ? null : `${new URL('/network/pair', base)}?code=${invitation.code}`;
  printLines(invitationLines(invitation, pair));
  return ok(exitStatus.done);
}

function revoke(register: Devices, name: string): Result<ExitStatus> {
  const all = register.list();
  const meant = all.filter((device) => device.id === name || device.name === name);
  const [device, another] = meant;
  if (!device) {
    const expected = all.length === 0 ? 'no device is paired' : all.map((each) => each.name).join(', ');
    return failed({ where: 'devices revoke', found: `no device "${name}"`, expected });
  }
  if (another) {
    const expected = `one of their ids: ${meant.map(({ id }) => id).join(', ')}`;
    return failed({ where: 'devices revoke', found: `${meant.length} devices "${name}"`, expected });
  }
  register.revoke(device.id);
  printLines([`${device.name} is shut out.`]);
  return ok(exitStatus.done);
}
