import pg from 'pg';
import { afterAll, beforeAll, describe, expect, it } from 'vitest';
import { type PostgresServer, startPostgres } from '../postgres/postgres-server.ts';
import { emptyFolder, flylarder } from './command-line.ts';
import { end, type Serving, serve } from './serving.ts';

let server: PostgresServer;
let url = '';
const password = 'correct horse 7';

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

const accounts = (args: string[], input = '') =>
  flylarder(emptyFolder(), ['accounts', ...args, '--database', url], input);
const facility = (args: string[] = []) =>
  serve(emptyFolder(), ['--accounts', '--database', url, '--port', '0', ...args]);

async function signedIn({ address }: Serving, name: string): Promise<string> {
  const body = new URLSearchParams({ name, password });
  const answer = await fetch(`${address}network/sign-in`, { method: 'POST', body, redirect: 'manual' });
  expect(answer.status).toBe(303);
  return answer.headers.get('set-cookie')?.split(';')[0] as string;
}

const record = ({ address }: Serving, cookie: string, id: string, text: string) =>
  fetch(`${address}api/v1/entries`, {
    method: 'POST',
    headers: { cookie, 'content-type': 'application/json' },
    body: JSON.stringify({
      entries: [{ id, kind: 'note', on: '2026-11-25', recordedAt: '2026-11-25T08:00:00.000Z', by: 'ada', text }],
    }),
  });

describe('accounts', () => {
  it('are made, given another role, and ended from the command line', () => {
    expect(accounts(['add', 'ben', '--role', 'helper'], 'short\n')).toMatchObject({ status: 2 });
    expect(accounts(['add', 'ben', '--role', 'helper'], `${password}\n`).out).toBe('ben is helper of home.\n');
    expect(accounts(['add', 'ben', '--role', 'reader']).out).toBe('ben is reader of home.\n');
    expect(JSON.parse(accounts(['--json']).out)).toEqual([{ name: 'ben', role: 'reader' }]);
    expect(accounts(['--household', 'annex']).out).toBe('Nobody may enter annex.\n');
    expect(accounts(['remove', 'ben']).status).toBe(0);
    expect(accounts(['remove', 'ben']).status).toBe(2);
  });
});

describe('two processes on one database', () => {
  it('lose nothing when one of them is killed under load, and each answers for the other', async () => {
    accounts(['add', 'ada', '--role', 'keeper'], `${password}\n`);
    const [first, second] = await Promise.all([facility(), facility()]);
    const cookie = await signedIn(first, 'ada');
    const acknowledged = new Set<string>();
    const again: string[] = [];
    let sent = 0;
    const writer = async (through: Serving) => {
      while (sent < 600) {
        const n = sent++;
        const id = `019ab000-0000-7000-8000-${n.toString(16).padStart(12, '0')}`;
        const answer = await record(through, cookie, id, `note ${n}`).catch(() => null);
        if (answer?.status === 201) acknowledged.add(id);
        else again.push(id);
        if (answer === null) return;
      }
    };
    const writers = [writer(first), writer(first), writer(first), writer(second), writer(second)];
    while (acknowledged.size < 150) await new Promise((done) => setTimeout(done, 5));
    await end(first, 'SIGKILL');
    await Promise.all(writers);
    expect(again.length).toBeGreaterThan(0);
    // What was not acknowledged is sent again to the other process, as a device does: nothing comes in twice.
    for (const id of again) {
      const n = Number.parseInt(id.slice(-12), 16);
      expect((await record(second, cookie, id, `note ${n}`)).status).toBe(201);
      acknowledged.add(id);
    }
    const third = await facility();
    const kept = async (through: Serving) => {
      const text = await (await fetch(`${through.address}api/v1/entries`, { headers: { cookie } })).text();
      return text
        .trim()
        .split('\n')
        .map((line) => JSON.parse(line).id as string);
    };
    const ids = await kept(second);
    expect(ids).toHaveLength(600);
    expect([...acknowledged].sort()).toEqual([...ids].sort());
    expect(await kept(third)).toEqual(ids);
    expect([await end(second, 'SIGTERM'), await end(third, 'SIGTERM')]).toEqual([0, 0]);
  }, 120_000);

  it('know at once what the other did to a session', async () => {
    const [first, second] = await Promise.all([facility(), facility()]);
    const cookie = await signedIn(first, 'ada');
    const facts = () => fetch(`${second.address}api/v1/facts`, { headers: { cookie } });
    expect((await facts()).status).toBe(200);
    const stream = await fetch(`${second.address}api/v1/events`, { headers: { cookie } });
    const reader = (stream.body as ReadableStream<Uint8Array>).getReader();
    await reader.read();
    await fetch(`${first.address}network/sign-out`, { method: 'POST', headers: { cookie }, redirect: 'manual' });
    const ended = (async () => {
      while (!(await reader.read()).done);
      return 'ended';
    })();
    const waited = new Promise((done) => setTimeout(() => done('still open'), 1000));
    expect(await Promise.race([ended, waited])).toBe('ended');
    expect((await facts()).status).toBe(401);
    await Promise.all([end(first, 'SIGTERM'), end(second, 'SIGTERM')]);
  });
});

describe('what is watched', () => {
  it('is on a port of its own: health and OpenMetrics', async () => {
    const serving = await facility(['--metrics-port', '0']);
    const port = /Metrics: port (\d+)/.exec(serving.printed())?.[1];
    await fetch(`${serving.address}api/v1/facts`);
    const metrics = await fetch(`http://127.0.0.1:${port}/metrics`);
    expect(metrics.headers.get('content-type')).toMatch(/^application\/openmetrics-text; version=1\.0\.0/);
    const text = await metrics.text();
    expect(text).toContain('flylarder_http_requests_total{method="GET",code="401"} 1\n');
    expect(text).toMatch(/\n# EOF\n$/);
    expect((await fetch(`http://127.0.0.1:${port}/healthz`)).status).toBe(200);
    expect((await fetch(`${serving.address}metrics`)).headers.get('content-type')).not.toMatch(/openmetrics/);
    await end(serving, 'SIGTERM');
  });

  it('is logged one JSON object a line, without secrets', async () => {
    const serving = await facility();
    const cookie = await signedIn(serving, 'ada');
    await fetch(`${serving.address}api/v1/calendar.ics?key=secret-key`, { headers: { cookie } });
    await new Promise((done) => setTimeout(done, 200));
    await end(serving, 'SIGTERM');
    const printed = serving.printed();
    const lines = printed
      .split('\n')
      .filter((line) => line.startsWith('{'))
      .map((line) => JSON.parse(line));
    expect(lines.map(({ path, status }) => [path, status])).toEqual([
      ['/network/sign-in', 303],
      ['/api/v1/calendar.ics', 200],
    ]);
    for (const secret of [password, 'secret-key', cookie.split('.')[1] as string, 'reed']) {
      expect(printed).not.toContain(secret);
    }
  });
});
