import pg from 'pg';
import { afterAll, beforeAll, describe, expect, it } from 'vitest';
import { type PostgresServer, startPostgres } from '../postgres/postgres-server.ts';
import { emptyFolder, flylarder } from './command-line.ts';
import { end, type Serving, serve, start } from './serving.ts';

let server: PostgresServer;
let url = '';
const password = 'correct horse 7';
const households = ['frogs', 'newts'];
const notes = 240;

beforeAll(async () => {
  server = await startPostgres();
  const client = new pg.Client({ connectionString: server.adminUrl });
  await client.connect();
  await client.query("CREATE ROLE zoo LOGIN PASSWORD 'reed'");
  await client.query('CREATE DATABASE zoo OWNER zoo');
  await client.end();
  url = `postgres://zoo:reed@${new URL(server.adminUrl).host}/zoo`;
}, 120_000);
afterAll(() => server?.stop());

const facility = () => serve(emptyFolder(), ['--accounts', '--database', url, '--port', '0']);
const worker = (args: string[] = []) => start(emptyFolder(), ['work', '--database', url, ...args], /^Working/m);

async function signedIn({ address }: Serving, household: string): Promise<string> {
  const body = new URLSearchParams({ name: 'ada', password, household });
  const answer = await fetch(`${address}network/sign-in`, { method: 'POST', body, redirect: 'manual' });
  return answer.headers.get('set-cookie')?.split(';')[0] as string;
}

/** The lines of a process's log that have these fields. */
function logged(of: { printed(): string }, fields: object): Record<string, unknown>[] {
  const lines = of.printed().split('\n');
  const objects = lines.filter((line) => /^\{.*\}$/.test(line)).map((line) => JSON.parse(line));
  return objects.filter((each) => Object.entries(fields).every(([key, value]) => each[key] === value));
}

async function until(holds: () => boolean | Promise<boolean>): Promise<void> {
  while (!(await holds())) await new Promise((next) => setTimeout(next, 20));
}

/** Rows of the household's own session. */
async function rows(household: string, sql: string): Promise<Record<string, unknown>[]> {
  const client = new pg.Client({ connectionString: url });
  await client.connect();
  try {
    await client.query("SELECT set_config('flylarder.household', $1, false)", [household]);
    return (await client.query(sql)).rows;
  } finally {
    await client.end();
  }
}

describe('two processes that answer and two that work', () => {
  it('lose nothing, and do nothing twice that matters, when one of each is killed under load', async () => {
    for (const household of households) {
      const role = ['--role', 'keeper', '--household', household];
      flylarder(emptyFolder(), ['accounts', 'add', 'ada', ...role, '--database', url], `${password}\n`);
    }
    const [first, second, lost, left] = await Promise.all([facility(), facility(), worker(), worker()]);
    const cookies = new Map<string, string>();
    for (const household of households) cookies.set(household, await signedIn(first, household));
    const record = ({ address }: Serving, household: string, entry: object) =>
      fetch(`${address}api/v1/entries`, {
        method: 'POST',
        headers: { cookie: cookies.get(household) as string, 'content-type': 'application/json' },
        body: JSON.stringify({ entries: [entry] }),
      }).catch(() => null);
    for (const household of households) await record(first, household, cup);
    let sent = 0;
    const again: [string, number][] = [];
    const writer = async (through: Serving) => {
      while (sent < notes) {
        const n = sent++;
        const household = households[n % households.length] as string;
        const answer = await record(through, household, noteOf(n));
        if (answer?.status !== 201) again.push([household, n]);
        if (answer === null) return;
      }
    };
    const writing = [first, first, second, second].map(writer);
    // Each worker has one job in hand at most: of two, one is this worker's.
    await until(async () => sent > notes / 3 && (await jobsInHand()) === 2);
    await Promise.all([end(lost, 'SIGKILL'), end(first, 'SIGKILL')]);
    await Promise.all(writing);
    for (const [household, n] of again) expect((await record(second, household, noteOf(n)))?.status).toBe(201);
    await until(async () => (await unfinished()) === 0);
    for (const [i, household] of households.entries()) {
      const entries = await rows(household, `SELECT id FROM entries WHERE text LIKE '%"note"%' ORDER BY id`);
      const sentHere = Array.from({ length: notes }, (_, n) => n).filter((n) => n % households.length === i);
      expect(entries.map(({ id }) => id)).toEqual(sentHere.map((n) => noteOf(n).id));
      expect(await rows(household, 'SELECT count(*)::int AS n FROM receipts')).toEqual([{ n: 1 + sentHere.length }]);
      const kept = await rows(household, "SELECT answer FROM kept_answers WHERE question LIKE 'today {%'");
      const computed = flylarder(emptyFolder(), ['today', '--json', '--database', url, '--household', household]);
      expect(kept.map(({ answer }) => JSON.parse(answer as string))).toEqual([JSON.parse(computed.out)]);
    }
    expect(logged(left, { outcome: 'failed' })).toEqual([]);
    expect([await end(left, 'SIGTERM'), await end(second, 'SIGTERM')]).toEqual([0, 0]);
  }, 180_000);

  it('are watched: a worker says how it is, what it did and how many wait', async () => {
    const working = await worker(['--metrics-port', '0']);
    const port = /Metrics: port (\d+)/.exec(working.printed())?.[1];
    expect((await fetch(`http://127.0.0.1:${port}/healthz`)).status).toBe(200);
    const text = await (await fetch(`http://127.0.0.1:${port}/metrics`)).text();
    expect(text).toMatch(/\nflylarder_jobs_waiting \d+\n/);
    expect(await end(working, 'SIGTERM')).toBe(0);
    expect(working.printed()).not.toContain('reed');
  });
});

const cup = { kind: 'started', on: '2026-11-10', culture: 'M1', strain: 'melanogaster', founders: 50 };

function noteOf(n: number) {
  const id = `019ab000-0000-7000-8000-${n.toString(16).padStart(12, '0')}`;
  return { id, kind: 'note', on: '2026-11-25', recordedAt: '2026-11-25T08:00:00.000Z', by: 'ada', text: `note ${n}` };
}

async function jobsInHand(): Promise<number> {
  return (await rows('', "SELECT 1 FROM jobs.job WHERE state = 'active'")).length;
}

/** Households whose kept answers are not of their logbook's last state. */
async function unfinished(): Promise<number> {
  let count = 0;
  for (const household of households) {
    const sql = 'SELECT 1 FROM households LEFT JOIN household_work AS w USING (household) WHERE w.cursor = last_cursor';
    if ((await rows(household, sql)).length === 0) count++;
  }
  return count;
}
