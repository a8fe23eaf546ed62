import pg from 'pg';
import { afterAll, beforeAll, describe, expect, it } from 'vitest';
import { type PostgresServer, startPostgres } from '../../../../tests/postgres/postgres-server.ts';
import { day } from '../../../foundation/index.ts';
import type { Entry } from '../../../logbook/index.ts';
import { numberedEntry, numberedId } from '../../../store/conformance-entries.ts';
import { openPostgres, type PostgresLogbooks } from '../../../store/postgres/index.ts';
import { shell, webFolder } from '../../application-under-test.ts';
import { Facility } from '../facility.ts';
import { endOfDay } from './household-answers.ts';
import { type JobLine, startWorker } from './worker.ts';

let server: PostgresServer;
let url = '';
let logbooks: PostgresLogbooks;

beforeAll(async () => {
  server = await startPostgres();
  await asAdmin("CREATE ROLE zoo LOGIN PASSWORD 'reed'", 'CREATE DATABASE zoo OWNER zoo');
  url = `postgres://zoo:reed@${new URL(server.adminUrl).host}/zoo`;
  logbooks = await openPostgres(url);
}, 120_000);
afterAll(async () => {
  await logbooks?.close();
  await server?.stop();
});

async function asAdmin(...commands: string[]): Promise<void> {
  const client = new pg.Client({ connectionString: server.adminUrl });
  await client.connect();
  for (const sql of commands) await client.query(sql);
  await client.end();
}

/** In a session of the database that names itself one household's, or a worker's. */
async function inSession(setting: string, value: string, sql: string, values: unknown[] = []) {
  const client = new pg.Client({ connectionString: url });
  await client.connect();
  try {
    await client.query('SELECT set_config($1, $2, false)', [setting, value]);
    return (await client.query(sql, values)).rows;
  } finally {
    await client.end();
  }
}

const version = '0.0.0';
const oneCup: Entry = {
  id: numberedId(0, 9),
  kind: 'started',
  on: day('2026-11-10'),
  recordedAt: '2026-11-10T08:00:00.000Z',
  by: 'ada',
  culture: 'M1',
  strain: 'melanogaster',
  founders: 50,
};
const later = new Date('2999-01-01T00:00:00Z');
const done = (cursor: number, answer: unknown, build = version, dueAt = later) => ({
  cursor,
  build,
  dueAt,
  answers: new Map([['today {}', answer]]),
});

/** A worker at work until the household's answers are of its logbook's state. */
async function worked(household: string, cursor: number): Promise<JobLine[]> {
  const lines: JobLine[] = [];
  const worker = await startWorker({ logbooks, databaseUrl: url, shell, version, log: (line) => lines.push(line) });
  try {
    while (!lines.some((line) => line.household === household && (line.cursor ?? 0) >= cursor)) {
      if (lines.some(({ outcome }) => outcome === 'failed' || outcome === 'trouble')) break;
      await new Promise((next) => setTimeout(next, 20));
    }
    expect(await worker.metrics()).toMatch(/flylarder_jobs_total\{outcome="done"\} \d/);
    return lines;
  } finally {
    await worker.stop();
  }
}

const todayOf = async (facility: Facility, name: string) => {
  const { app } = await facility.household(name);
  const env = { caller: { name: 'ada', role: 'keeper', address: '', credential: 'a' } };
  return (await app.request('/api/v1/today', {}, env)).json() as Promise<{ on: string; marked?: boolean }>;
};

describe('a worker', () => {
  it('works out what is asked most, and the application answers with it', async () => {
    const store = await logbooks.household('frogs');
    await store.append([oneCup]);
    const facility = new Facility({ logbooks, shell, version, webFolder });
    const computed = await todayOf(facility, 'frogs');
    await facility.close();
    const cursor = await store.lastCursor();
    const lines = await worked('frogs', cursor);
    expect(lines.map(({ household, outcome }) => [household, outcome])).toEqual([['frogs', 'done']]);
    const key = 'today {"on":"2026-11-25","seed":1}';
    expect(await logbooks.work.answer('frogs', cursor, version, key)).toEqual(computed);
    // Marked, to see where the application has its answer from.
    await inSession(
      'flylarder.household',
      'frogs',
      `UPDATE kept_answers SET answer = '{"on":"2026-11-25","marked":true}' WHERE question = $1`,
      [key],
    );
    const other = new Facility({ logbooks, shell, version, webFolder });
    expect(await todayOf(other, 'frogs')).toMatchObject({ marked: true });
    await store.append([numberedEntry(1)]);
    const afterwards = await todayOf(other, 'frogs');
    expect(afterwards.marked).toBeUndefined();
    await other.close();
  });

  it('finds what is due by itself when it starts, and does nothing twice', async () => {
    const store = await logbooks.household('newts');
    await store.append([numberedEntry(1)]);
    expect(await logbooks.work.due(version)).toContain('newts');
    await worked('newts', await store.lastCursor());
    expect(await logbooks.work.due(version)).not.toContain('newts');
    const jobs = () =>
      inSession('x.x', '', "SELECT count(*)::int AS n FROM jobs.job WHERE data->>'household' = 'newts'");
    const before = await jobs();
    const idle = await startWorker({ logbooks, databaseUrl: url, shell, version, log: () => {} });
    await idle.stop();
    expect(await jobs()).toEqual(before);
  });
});

describe('work that is done', () => {
  it('is never replaced by older work', async () => {
    const store = await logbooks.household('toads');
    await store.append([numberedEntry(1), numberedEntry(2)]);
    expect(await logbooks.work.keep('toads', done(2, 'new'))).toBe(true);
    expect(await logbooks.work.keep('toads', done(1, 'old'))).toBe(false);
    expect(await logbooks.work.answer('toads', 2, version, 'today {}')).toBe('new');
    expect(await logbooks.work.answer('toads', 1, version, 'today {}')).toBeUndefined();
    expect(await logbooks.work.answer('toads', 2, 'another build', 'today {}')).toBeUndefined();
  });

  it('is due again when the logbook grows, the day ends, or the program changes', async () => {
    const store = await logbooks.household('geckos');
    const isDue = async (build = version) => (await logbooks.work.due(build)).includes('geckos');
    expect(await isDue()).toBe(false);
    await store.append([numberedEntry(1)]);
    expect(await isDue()).toBe(true);
    await logbooks.work.keep('geckos', done(1, ''));
    expect([await isDue(), await isDue('another build')]).toEqual([false, true]);
    await store.append([numberedEntry(2)]);
    expect(await isDue()).toBe(true);
    await logbooks.work.keep('geckos', done(2, '', version, new Date(0)));
    expect(await isDue()).toBe(true);
  });

  it("is seen in its household's session alone; a worker's sees which households there are", async () => {
    await logbooks.household('skinks');
    await logbooks.work.keep('skinks', done(0, 'where the skinks sleep'));
    const kept = 'SELECT household, answer FROM kept_answers';
    expect(await inSession('flylarder.household', 'skinks', kept)).toHaveLength(1);
    expect(JSON.stringify(await inSession('flylarder.household', 'frogs', kept))).not.toContain('skinks');
    expect(await inSession('flylarder.worker', 'on', kept)).toEqual([]);
    expect(await inSession('flylarder.worker', 'on', 'SELECT text FROM entries')).toEqual([]);
    const households = await inSession('flylarder.worker', 'on', 'SELECT household FROM households');
    expect(households.map(({ household }) => household)).toContain('skinks');
    const moved = "UPDATE households SET last_cursor = 0 WHERE household = 'skinks' RETURNING 1";
    expect(await inSession('flylarder.worker', 'on', moved)).toEqual([]);
  });
});

describe('a day', () => {
  it('ends at midnight of its time zone, whatever the clocks do', () => {
    expect(endOfDay(day('2026-11-25'), 'UTC')).toEqual(new Date('2026-11-26T00:00:00Z'));
    expect(endOfDay(day('2026-11-25'), 'America/New_York')).toEqual(new Date('2026-11-26T05:00:00Z'));
    // Clocks go forward at midnight: the day after begins at one.
    expect(endOfDay(day('2026-09-05'), 'America/Santiago')).toEqual(new Date('2026-09-06T04:00:00Z'));
    expect(endOfDay(day('2026-11-25'), 'No/Such_Zone')).toEqual(new Date('2026-11-26T00:00:00Z'));
  });
});
