/** PostgreSQL's and the network's errors as messages that an operator can act on. */
import { StoreFault } from '../store.ts';

const advice: [code: RegExp, found: string, expected: string][] = [
  [
    /^(ECONNREFUSED|ECONNRESET|ETIMEDOUT|EPIPE|ENOTFOUND|EAI_AGAIN)$|^08|^57P0/,
    'no answer from the database',
    'a running PostgreSQL at this address',
  ],
  [/^28/, 'a database that refuses this user', 'a user and password that it knows'],
  [/^3D/, 'no database of this name', 'a database made for the logbook'],
  [/^42501/, 'a database role without the rights', 'a role that owns the database'],
  [/^53100/, 'a full disk of the database; nothing was written', 'some free space'],
  [/^53/, 'a database without room for this connection', 'fewer connections, or more of them allowed'],
  [/^(55P03|57014|40)/, 'a database that is busy', 'another try'],
  [/^XX/, 'a damaged database', 'a restore from a copy'],
];

/** The fault that an error of the driver means; an error of another kind is returned as it is. */
export function postgresFault(error: unknown, where: string): unknown {
  if (error instanceof StoreFault || !(error instanceof Error)) return error;
  const code = String((error as { code?: unknown }).code ?? '');
  const known = advice.find(([pattern]) => pattern.test(code));
  const lost = /terminated|timeout|not queryable|Client was closed|Connection ended/i.test(error.message);
  if (!known && !lost && code === '') return error;
  const [, found, expected] = known ?? (advice[0] as (typeof advice)[0]);
  const detail = known || lost ? (code === '' ? error.message : code) : `${code}: ${error.message}`;
  return new StoreFault({ where, found: `${found} (${detail})`, expected }, error);
}
