/** Where a command finds its household: a folder, a database, or a logbook file that is only read. */
import { existsSync } from 'node:fs';
import { resolve } from 'node:path';
import { type Day, failed, ok, type Result } from '../foundation/index.ts';
import { type Entry, type Facts, fold } from '../logbook/index.ts';
import { logbookFile, openSqliteStore } from '../store/sqlite/index.ts';
import { EntrySources, type ReadReceipts } from '../store/receipts.ts';
import type { Store } from '../store/store.ts';
import { fileEntryMaker, readLogbookFile } from './logbook-file.ts';
import type { Options } from './options.ts';
import { todayIn } from './shell.ts';

/** The folder that holds the household when none is named. */
export function householdFolder(options: Options): string {
  return options.data ?? process.env.FLYLARDER_DATA ?? 'household';
}

/** Runs `act` with the household's store open; the folder is made when missing. `sources` name who sends what. */
export async function withStore<T>(
  options: Options,
  act: (store: Store, receipts: ReadReceipts) => Promise<T>,
  sources = new EntrySources(),
): Promise<T> {
  const url = databaseUrl(options);
  if (url !== undefined) return withDatabase(url, options.household ?? usualHousehold, act, sources);
  const store = openSqliteStore(householdFolder(options), { sourceOf: sources.of });
  try {
    return await act(store, (before, limit) => store.receipts(before, limit));
  } finally {
    await store.close();
  }
}

/** Which household of a database, when none is named. */
export const usualHousehold = 'home';

/** A folder that is named goes before a database of the environment. */
export function databaseUrl({ database, data }: Options): string | undefined {
  return database ?? (data === undefined ? process.env.DATABASE_URL : undefined);
}

/** PostgreSQL's driver is loaded only where it is used. */
async function withDatabase<T>(
  url: string,
  household: string,
  act: (store: Store, receipts: ReadReceipts) => Promise<T>,
  sources: EntrySources,
): Promise<T> {
  const { openPostgres } = await import('../store/postgres/index.ts');
  const logbooks = await openPostgres(url);
  try {
    const store = await logbooks.household(household, sources.of);
    return await act(store, (before, limit) => logbooks.receipts(household, before, limit));
  } finally {
    await logbooks.close();
  }
}

/** The household's place in words, without a database's password. */
export function householdPlace(options: Options): string {
  const url = databaseUrl(options);
  if (url === undefined) return resolve(householdFolder(options));
  const { host, pathname } = new URL(url);
  return `${options.household ?? usualHousehold} in the database ${host}${pathname}`;
}

/** Is there a household to read? */
export function householdExists(options: Options): boolean {
  return databaseUrl(options) !== undefined || existsSync(logbookFile(householdFolder(options)));
}

/** The problem of a folder without a logbook, or null when there is one. */
export function missingLogbook(options: Options): Result<never> | null {
  if (householdExists(options)) return null;
  const expected = 'a household: `flylarder demo` or `flylarder record` makes one, --data DIR names another';
  return failed({ where: householdFolder(options), found: 'no logbook', expected });
}

/** As `withStore`, for commands that only read: a folder without a logbook is a problem, not a new household. */
export async function withExistingStore<T>(
  options: Options,
  act: (store: Store, receipts: ReadReceipts) => Promise<Result<T>>,
): Promise<Result<T>> {
  return missingLogbook(options) ?? withStore(options, act);
}

export async function allEntries(store: Store): Promise<Entry[]> {
  const entries: Entry[] = [];
  for await (const { entry } of store.entries()) entries.push(entry);
  return entries;
}

export interface Household {
  facts: Facts;
  /** The day that counts as today. */
  on: Day;
}

/** What the household's logbook says, up to the day asked for when that is not today. */
export async function readHousehold(options: Options): Promise<Result<Household>> {
  const entries = await readEntries(options);
  if (!entries.ok) return entries;
  const facts = fold(entries.value);
  const now = todayIn(facts.household.timeZone);
  const on = options.on ?? now;
  return ok({ on, facts: on < now ? fold(entries.value, { until: on }) : facts });
}

/** The entries of `--logbook FILE`, or else of the household's folder. */
export async function readEntries(options: Options): Promise<Result<Entry[]>> {
  if (options.logbook === undefined) {
    return withExistingStore(options, async (store) => ok(await allEntries(store)));
  }
  const beside = (['data', 'database'] as const).find((name) => options[name] !== undefined);
  if (beside) return failed({ where: '--logbook', found: `--${beside} beside it`, expected: 'one of the two' });
  return readLogbookFile(options.logbook, fileEntryMaker());
}
