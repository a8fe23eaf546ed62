/** The people of a facility: their accounts and what they may do in a household. */
import { randomBytes } from 'node:crypto';
import { failed, ok, type Result } from '../../foundation/index.ts';
import { hashedPassword, leastPasswordLength } from '../../server/index.ts';
import type { PostgresLogbooks } from '../../store/postgres/index.ts';
import { askedSecret } from '../asked-secret.ts';
import type { Command, CommandInput } from '../command.ts';
import { type ExitStatus, exitStatus } from '../exit-status.ts';
import { databaseUrl, usualHousehold } from '../household.ts';
import type { Options } from '../options.ts';
import { printJson, printLines } from '../text/print.ts';

export const command: Command = {
  usage: 'flylarder accounts [add NAME | password NAME | remove NAME] [OPTIONS]',
  about: `Lists who may enter a household of a database. \`add\` lets someone in with --role
(a keeper may do everything, a helper records the day's work, a reader only
looks), or changes the role; a new account's password is asked for, or read from
standard input. \`remove\` ends it at once.`,
  options: ['database', 'household', 'role', 'json'],
  mostWords: 2,
  run: accounts,
};

async function accounts({ words: [act, name], options }: CommandInput): Promise<Result<ExitStatus>> {
  const url = databaseUrl(options);
  if (url === undefined) {
    return failed({ where: 'accounts', found: 'no database', expected: '--database URL, or DATABASE_URL' });
  }
  const { openPostgres } = await import('../../store/postgres/index.ts');
  const logbooks = await openPostgres(url);
  try {
    const household = options.household ?? usualHousehold;
    if (act === undefined) return await list(logbooks, household, options);
    if (name !== undefined && act === 'add') return await add(logbooks, household, name, options);
    if (name !== undefined && act === 'password') return await changePassword(logbooks, name);
    if (name !== undefined && act === 'remove') return await remove(logbooks, household, name);
    return failed({ where: 'accounts', found: `"${[act, name].filter(Boolean).join(' ')}"`, expected: command.usage });
  } finally {
    await logbooks.close();
  }
}

async function list({ accounts: people }: PostgresLogbooks, household: string, { json }: Options) {
  const members = await people.members(household);
  if (json) printJson(members.map(({ name, role }) => ({ name, role })));
  else if (members.length === 0) printLines([`Nobody may enter ${household}.`]);
  else printLines(members.map(({ name, role }) => `${name}  ${role} of ${household}`));
  return ok(exitStatus.done);
}

async function add(logbooks: PostgresLogbooks, household: string, name: string, { role }: Options) {
  if (role === undefined) {
    return failed({ where: '--role', found: 'nothing', expected: '--role keeper, helper or reader' });
  }
  if (name.trim() !== name || name.length > 80) {
    return failed({ where: 'accounts add', found: `"${name}"`, expected: 'a name of at most 80 characters' });
  }
  let known = await logbooks.accounts.named(name);
  if (!known) {
    const passwordHash = await newPassword();
    if (!passwordHash.ok) return passwordHash;
    known = { account: randomBytes(8).toString('hex'), name, passwordHash: passwordHash.value };
    await logbooks.accounts.add(known);
  }
  await (await logbooks.household(household)).close();
  await logbooks.accounts.admit(household, known.account, role);
  printLines([`${name} is ${role} of ${household}.`]);
  return ok(exitStatus.done);
}

async function changePassword({ accounts: people }: PostgresLogbooks, name: string): Promise<Result<ExitStatus>> {
  const known = await people.named(name);
  if (!known) return failed({ where: 'accounts password', found: `no account "${name}"`, expected: 'a known name' });
  const passwordHash = await newPassword();
  if (!passwordHash.ok) return passwordHash;
  await people.setPassword(known.account, passwordHash.value);
  printLines([`${name} has a new password; all of their sessions have ended.`]);
  return ok(exitStatus.done);
}

async function remove({ accounts: people }: PostgresLogbooks, household: string, name: string) {
  const known = await people.named(name);
  if (!known || !(await people.dismiss(household, known.account))) {
    const members = (await people.members(household)).map((member) => member.name).join(', ');
    return failed({
      where: 'accounts remove',
      found: `no "${name}" in ${household}`,
      expected: members || 'nobody is',
    });
  }
  printLines([`${name} may no longer enter ${household}.`]);
  return ok(exitStatus.done);
}

/** The digest of a password typed now. The password itself is never repeated in a message. */
async function newPassword(): Promise<Result<string>> {
  const password = await askedSecret(`New password (at least ${leastPasswordLength} characters): `);
  if (password.length >= leastPasswordLength && password.length <= 200) return ok(await hashedPassword(password));
  const found = `${password.length} characters`;
  return failed({ where: 'password', found, expected: `from ${leastPasswordLength} to 200 characters` });
}
