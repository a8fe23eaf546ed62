import pg from 'pg';
import { afterAll, beforeAll, beforeEach, describe, expect, it } from 'vitest';
import { type PostgresServer, startPostgres } from '../../../tests/postgres/postgres-server.ts';
import { numberedEntry } from '../../store/conformance-entries.ts';
import { type AccountRole, openPostgres, type PostgresLogbooks } from '../../store/postgres/index.ts';
import { removePage, shell as fixedShell, webFolder } from '../application-under-test.ts';
import { type FacilityApplication, facilityApplication } from './facility-application.ts';
import { hashPassword } from './password.ts';

let server: PostgresServer;
let url = '';
let logbooks: PostgresLogbooks;
let facility: FacilityApplication;
let nowMs = Date.parse('2026-11-25T12:00:00Z');
const shell = { ...fixedShell, now: () => new Date(nowMs).toISOString() };
const password = 'correct horse 7';

beforeAll(async () => {
  server = await startPostgres();
  const client = new pg.Client({ connectionString: server.adminUrl });
  await client.connect();
  await client.query("CREATE ROLE zoo LOGIN PASSWORD 'reed'");
  await client.query('CREATE DATABASE zoo OWNER zoo');
  await client.end();
  url = `postgres://zoo:reed@${new URL(server.adminUrl).host}/zoo`;
  logbooks = await openPostgres(url);
  for (const household of ['frogs', 'lizards']) await logbooks.household(household);
  await person('ada', { frogs: 'keeper' });
  await person('ben', { frogs: 'helper' });
  await person('cora', { frogs: 'reader' });
  await person('dan', { lizards: 'keeper' });
  await person('eve', { frogs: 'reader', lizards: 'helper' });
  await person('nobody', {});
}, 120_000);
afterAll(async () => {
  await facility?.close();
  await logbooks?.close();
  await server?.stop();
  removePage();
});
beforeEach(async () => {
  nowMs += 3_600_000;
  await facility?.close();
  facility = facilityApplication({ logbooks, shell, version: '0.0.0', webFolder });
});

let people = 0;
async function person(name: string, roles: Record<string, AccountRole>): Promise<void> {
  const account = (++people).toString(16).padStart(16, '0');
  await logbooks.accounts.add({ account, name, passwordHash: await hashPassword(password) });
  for (const [household, role] of Object.entries(roles)) await logbooks.accounts.admit(household, account, role);
}

interface Sent {
  cookie?: string;
  form?: Record<string, string>;
  json?: unknown;
  headers?: Record<string, string>;
  from?: string;
}

async function send(path: string, { cookie, form, json, headers = {}, from = '127.0.0.1' }: Sent = {}) {
  const body = form ? new URLSearchParams(form) : json === undefined ? undefined : JSON.stringify(json);
  const type: Record<string, string> = json === undefined ? {} : { 'content-type': 'application/json' };
  const all = { host: 'localhost:4180', ...(cookie && { cookie }), ...type, ...headers };
  const init = body === undefined ? { headers: all } : { method: 'POST', body, headers: all };
  return facility.app.request(path, init, { incoming: { socket: { remoteAddress: from } } });
}

async function signedIn(name: string, household = ''): Promise<string> {
  const answer = await send('/network/sign-in', { form: { name, password, household } });
  expect(answer.status).toBe(303);
  return (answer.headers.get('set-cookie') as string).split(';')[0] as string;
}

const entriesOf = async (cookie: string) => (await send('/api/v1/entries', { cookie })).text();
const record = (cookie: string, entry: object) =>
  send('/api/v1/entries', { cookie, json: { entries: [{ on: '2026-11-25', ...entry }] } });
const push = async (cookie: string, entries: object[]) =>
  (await send('/api/v1/sync/push', { cookie, json: { entries } })).json() as Promise<{
    added: number;
    refused: { id: string }[];
  }>;

let made = 0;
const envelope = () => ({ ...numberedEntry(5000 + made), id: numberedEntry(5000 + made++, 7).id });
const noteEntry = (text: string) => {
  const { id, recordedAt, on, by } = envelope();
  return { id, recordedAt, on, by, kind: 'note', text };
};

describe('a facility', () => {
  it('answers nobody without a session, from wherever they come', async () => {
    for (const path of ['facts', 'entries', 'health', 'events', 'openapi.json', 'calendar.ics']) {
      expect((await send(`/api/v1/${path}`)).status, path).toBe(401);
    }
    expect((await send('/api/v1/entries', { json: { entries: [] } })).status).toBe(401);
    expect((await send('/')).headers.get('location')).toBe('/network/sign-in');
  });

  it('opens a session for a name and its password; the cookie is out of reach of programs', async () => {
    const answer = await send('/network/sign-in', { form: { name: 'ada', password } });
    expect(answer.headers.get('set-cookie')).toMatch(/HttpOnly.*SameSite=Strict/);
    const cookie = await signedIn('ada');
    expect((await record(cookie, { kind: 'note', text: 'hello' })).status).toBe(201);
    expect(await entriesOf(cookie)).toContain('"by":"ada"');
  });

  it('says the same of a wrong password and of a name that nobody has', async () => {
    const [wrong, unknown] = [
      await send('/network/sign-in', { form: { name: 'ada', password: 'wrong horse 7' } }),
      await send('/network/sign-in', { form: { name: 'zoe', password } }),
    ];
    expect([wrong.status, unknown.status]).toEqual([401, 401]);
    expect(await wrong.text()).toBe(await unknown.text());
  });

  it('keeps passwords and secrets as digests alone', async () => {
    const cookie = await signedIn('ada');
    const client = new pg.Client({ connectionString: url });
    await client.connect();
    const { rows } = await client.query('SELECT password_hash FROM accounts');
    const sessions = await client.query('SELECT * FROM sessions');
    await client.end();
    expect(rows.every((row) => row.password_hash.startsWith('$argon2id$v=19$m=19456,t=2,p=1$'))).toBe(true);
    expect(JSON.stringify(sessions.rows)).not.toContain(cookie.split('.')[1]);
  });

  it('asks someone of several households which one', async () => {
    const unsaid = await send('/network/sign-in', { form: { name: 'eve', password } });
    expect(unsaid.status).toBe(400);
    expect(await unsaid.text()).toMatch(/frogs, lizards/);
    expect((await send('/network/sign-in', { form: { name: 'nobody', password } })).status).toBe(400);
    expect((await send('/network/sign-in', { form: { name: 'ada', password, household: 'lizards' } })).status).toBe(
      400,
    );
  });

  it('slows down who guesses: by name, whatever the address', async () => {
    const guess = (i: number) =>
      send('/network/sign-in', { form: { name: 'dan', password: `guess ${i}` }, from: `10.0.0.${i}` });
    const tries: number[] = [];
    for (let i = 0; i < 12; i++) tries.push((await guess(i)).status);
    expect(tries).toEqual([...new Array(10).fill(401), 429, 429]);
    expect((await send('/network/sign-in', { form: { name: 'dan', password } })).status).toBe(429);
  });

  it('refuses forms and writes of other sites', async () => {
    const cookie = await signedIn('ada');
    const evil = { origin: 'http://evil.example' };
    expect((await send('/network/sign-in', { form: { name: 'ada', password }, headers: evil })).status).toBe(403);
    expect((await send('/network/sign-out', { form: {}, cookie, headers: evil })).status).toBe(403);
    expect((await send('/api/v1/entries', { json: { entries: [] }, cookie, headers: evil })).status).toBe(403);
  });
});

describe('a session', () => {
  it('ends when its person signs out, and its cookie is good no more', async () => {
    const cookie = await signedIn('ada');
    await send('/network/sign-out', { form: {}, cookie });
    expect((await send('/api/v1/facts', { cookie })).status).toBe(401);
  });
  it('ends when it was not used for thirty days', async () => {
    const cookie = await signedIn('ada');
    nowMs += 29 * 86_400_000;
    expect((await send('/api/v1/facts', { cookie })).status).toBe(200);
    nowMs += 31 * 86_400_000;
    expect((await send('/api/v1/facts', { cookie })).status).toBe(401);
  });
  it('ends at once when its person is dismissed from the household, or gets another password', async () => {
    await person('finn', { frogs: 'keeper' });
    const account = (await logbooks.accounts.named('finn'))?.account as string;
    const cookie = await signedIn('finn');
    await logbooks.accounts.dismiss('frogs', account);
    expect((await send('/api/v1/facts', { cookie })).status).toBe(401);
    await logbooks.accounts.admit('frogs', account, 'reader');
    expect((await send('/api/v1/facts', { cookie })).status).toBe(200);
    await logbooks.accounts.setPassword(account, await hashPassword('another horse 8'));
    expect((await send('/api/v1/facts', { cookie })).status).toBe(401);
  });
});

describe('two households', () => {
  it('read and write nothing of each other', async () => {
    const [ada, dan] = [await signedIn('ada'), await signedIn('dan')];
    const secret = noteEntry('where the frogs sleep');
    await push(ada, [secret]);
    expect(await entriesOf(ada)).toContain('where the frogs sleep');
    for (const path of ['entries', 'facts', 'today', 'calendar.ics', 'animals/week', 'openapi.json']) {
      expect(await (await send(`/api/v1/${path}`, { cookie: dan })).text(), path).not.toContain('frogs sleep');
    }
    const pulled = await send('/api/v1/sync/pull', { cookie: dan, json: { epoch: null, after: 0, limit: 500 } });
    expect(await pulled.text()).not.toContain('frogs sleep');
    const offered = await send('/api/v1/sync/offer', { cookie: dan, json: { ids: [secret.id] } });
    expect(await offered.json()).toMatchObject({ wanted: [secret.id] });
    await push(dan, [{ ...secret, text: 'not of the frogs' }]);
    expect(await entriesOf(ada)).not.toContain('not of the frogs');
    expect(await entriesOf(ada)).toContain('where the frogs sleep');
  });

  it('tell nothing of each other by any route of the description', async () => {
    await logbooks.household('owls');
    await person('olga', { owls: 'keeper' });
    const [olga, dan] = [await signedIn('olga'), await signedIn('dan')];
    const mark = 'zephyrine';
    const told: object[] = [
      { kind: 'household', name: mark, timeZone: 'Europe/Berlin' },
      { kind: 'place', place: mark, name: mark, temperatureC: 23 },
      { kind: 'strain', strain: mark, name: mark, base: 'hydei' },
      { kind: 'recipe', recipe: mark, name: mark, ingredients: [{ ingredient: 'yeast', massG: 9 }], waterMl: 90 },
      { kind: 'started', culture: mark, label: mark, strain: mark, place: mark, founders: 40 },
      { kind: 'group', group: mark, name: mark, count: 2, fliesPerFeeding: 20, strain: mark },
      { kind: 'note', text: mark },
    ];
    for (const entry of told) expect((await record(olga, entry)).status).toBe(201);
    const { paths } = (await (await send('/api/v1/openapi.json', { cookie: dan })).json()) as { paths: object };
    const gets = Object.entries(paths).flatMap(([path, each]) => ('get' in (each as object) ? [path] : []));
    expect(gets.length).toBeGreaterThan(20);
    const named = [`culture=${mark}`, `group=${mark}`, `place=${mark}`, `strain=${mark}`, `recipe=${mark}`];
    for (const path of ['entries', 'facts', 'strains', 'receipts']) {
      expect(await (await send(`/api/v1/${path}`, { cookie: olga })).text(), path).toContain(mark);
    }
    for (const path of gets) {
      expect(await (await send(`/api/v1${path}`, { cookie: dan })).text(), path).not.toContain(mark);
      for (const query of named) {
        const answer = await send(`/api/v1${path}?${query}`, { cookie: dan });
        expect(answer.status, `${path}?${query}`).toBeLessThan(500);
        // A refusal may repeat the word that it was asked with, and nothing else.
        const text = (await answer.text()).replaceAll(mark, 'it');
        expect(text, `${path}?${query}`).not.toMatch(/zephyr/);
      }
    }
    for (const page of ['account', 'audit']) {
      expect(await (await send(`/network/${page}`, { cookie: dan })).text()).not.toContain(mark);
    }
  });

  it('cannot end sessions of other people, nor take their keys', async () => {
    const [ada, dan] = [await signedIn('ada'), await signedIn('dan')];
    const account = (await logbooks.accounts.named('ada'))?.account as string;
    const key = {
      passkey: 'adas-key',
      account,
      name: 'tablet of frogs',
      publicKey: Buffer.from([1]),
      counter: 0,
      transports: [],
    };
    await logbooks.passkeys.add({ ...key, addedAt: new Date(nowMs), usedAt: null });
    const session = (/=([0-9a-f]+)\./.exec(ada) as RegExpExecArray)[1] as string;
    await send('/network/account/end-session', { cookie: dan, form: { session } });
    await send('/network/account/remove-passkey', { cookie: dan, form: { passkey: key.passkey } });
    expect((await send('/api/v1/facts', { cookie: ada })).status).toBe(200);
    expect(await (await send('/network/account', { cookie: dan })).text()).not.toMatch(/tablet|ada/);
    const page = await (await send('/network/account', { cookie: ada })).text();
    expect(page).toMatch(/tablet of frogs.*added/s);
    await send('/network/account/remove-passkey', { cookie: ada, form: { passkey: key.passkey } });
    expect(await logbooks.passkeys.list(account)).toEqual([]);
  });

  it('cannot be changed by a query, a header or a second cookie', async () => {
    const dan = await signedIn('dan');
    const tries: [string, Sent][] = [
      ['/api/v1/entries?household=frogs', { cookie: dan }],
      ['/api/v1/entries', { cookie: dan, headers: { 'x-household': 'frogs' } }],
      ['/api/v1/entries', { cookie: `${dan}; household=frogs; flylarder_household=frogs` }],
      ['/api/v1/entries', { cookie: dan, headers: { 'x-forwarded-for': '127.0.0.1' } }],
    ];
    for (const [path, sent] of tries) expect(await (await send(path, sent)).text()).not.toContain('frogs sleep');
  });

  it("are each other's strangers in the audit view and in calendar links", async () => {
    const [ada, dan] = [await signedIn('ada'), await signedIn('dan')];
    await push(ada, [noteEntry('a frog escaped')]);
    expect(await (await send('/network/audit', { cookie: dan })).text()).not.toContain('a frog escaped');
    const page = await (await send('/network/calendar', { cookie: dan, form: {} })).text();
    const key = (/calendar\.ics\?key=([^<]+)</.exec(page) as RegExpExecArray)[1] as string;
    expect((await send(`/api/v1/calendar.ics?key=${key}&weeks=2`)).status).toBe(200);
    const other = (await signedIn('dan')).split('.')[1] as string;
    expect((await send(`/api/v1/calendar.ics?key=${key.split('.')[0]}.${other}`)).status).toBe(401);
    expect((await send(`/api/v1/entries?key=${key}`)).status).toBe(401);
    expect((await send('/api/v1/entries', { cookie: `flylarder_session=${key}` })).status).toBe(401);
    await send('/network/calendar', { cookie: dan, form: {} });
    expect((await send(`/api/v1/calendar.ics?key=${key}`)).status).toBe(401);
  });

  it('keep their members and receipts apart in the database itself', async () => {
    await push(await signedIn('ada'), [noteEntry('seen by frogs only')]);
    const client = new pg.Client({ connectionString: url });
    await client.connect();
    await client.query("SELECT set_config('flylarder.household', 'lizards', false)");
    const members = await client.query('SELECT DISTINCT household FROM memberships');
    expect(members.rows).toEqual([{ household: 'lizards' }]);
    expect((await client.query("SELECT * FROM receipts WHERE household = 'frogs'")).rows).toEqual([]);
    const intrusion = "INSERT INTO memberships VALUES ('frogs', '0000000000000004', 'keeper')";
    await expect(client.query(intrusion)).rejects.toThrow(/row-level security/);
    await client.query("SELECT set_config('flylarder.account', '0000000000000001', false)");
    const promoted = await client.query("UPDATE memberships SET role = 'keeper' WHERE household = 'frogs' RETURNING 1");
    expect(promoted.rows).toEqual([]);
    await client.end();
  });
});

describe('roles', () => {
  const settings = { kind: 'household', name: 'Renamed' };
  it('a reader reads and writes nothing', async () => {
    const cookie = await signedIn('cora');
    const before = await entriesOf(cookie);
    expect((await record(cookie, { kind: 'note', text: 'x' })).status).toBe(403);
    const note = noteEntry('pushed by a reader');
    expect(await push(cookie, [note])).toMatchObject({ added: 0, refused: [{ id: note.id }] });
    expect(await entriesOf(cookie)).toBe(before);
    expect((await send('/network/audit', { cookie })).status).toBe(403);
  });

  it('a reader changes nothing by any other way in', async () => {
    const cookie = await signedIn('cora');
    const before = await entriesOf(cookie);
    const csv = 'Cup;Species;Made\n77;hydei;2026-09-10\n';
    const logger = 'time,temperature\n2026-11-01T00:00,21\n2026-11-01T12:00,22\n2026-11-02T00:00,21\n';
    const tries: [path: string, status: number, json: object][] = [
      ['imports', 403, { file: 'a.csv', text: csv }],
      ['imports/undo', 400, { name: 'import of a.csv 2026' }],
      ['temperature/import', 403, { text: logger, place: 'home', timeZone: 'UTC', unit: 'C', write: true }],
    ];
    for (const [path, status, json] of tries) {
      const answer = await send(`/api/v1/${path}`, { cookie, json });
      expect(answer.status, `${path}: ${await answer.text()}`).toBe(status);
    }
    const ways = (await (await send('/api/v1/openapi.json', { cookie })).json()) as { paths: Record<string, object> };
    const posts = Object.entries(ways.paths).flatMap(([path, each]) => ('post' in each ? [path] : []));
    // Whoever adds a way to write adds it here too, or says why it writes nothing.
    const others = ['/entries', '/sync/offer', '/sync/push', '/sync/pull', '/sensors/readings', '/imports/preview'];
    expect(posts.sort()).toEqual([...tries.map(([path]) => `/${path}`), ...others].sort());
    expect(await entriesOf(cookie)).toBe(before);
  });

  it('a helper records the work of the day, and leaves the settings alone', async () => {
    const [ada, ben] = [await signedIn('ada'), await signedIn('ben')];
    expect((await record(ben, { kind: 'note', text: 'fed' })).status).toBe(201);
    expect((await record(ben, settings)).status).toBe(403);
    const kept = (await (await record(ada, settings)).json()) as { ids: [string] };
    const own = (await (await record(ben, { kind: 'note', text: 'slip' })).json()) as { ids: [string] };
    const amends = (id: string, what: object) => record(ben, { kind: 'amended', amends: id, ...what });
    expect((await amends(own.ids[0], { void: true })).status).toBe(201);
    expect((await amends(kept.ids[0], { void: true })).status).toBe(403);
    expect((await amends(own.ids[0], { replacement: settings })).status).toBe(403);
    const { id, recordedAt, on, by } = envelope();
    const both = [noteEntry('beside'), { id, recordedAt, on, by, ...settings }];
    expect(await push(ben, both)).toMatchObject({ added: 1, refused: [{ id }] });
  });

  it('are said to whoever asks for their own', async () => {
    const of = async (name: string, household?: string) =>
      (await send('/api/v1/caller', { cookie: await signedIn(name, household) })).json();
    expect(await of('cora')).toEqual({ name: 'cora', role: 'reader', accountPage: '/network/account' });
    expect(await of('eve', 'lizards')).toMatchObject({ role: 'helper' });
  });

  it('are those of the household entered, not of another', async () => {
    expect((await record(await signedIn('eve', 'frogs'), { kind: 'note', text: 'x' })).status).toBe(403);
    expect((await record(await signedIn('eve', 'lizards'), { kind: 'note', text: 'x' })).status).toBe(201);
  });
});

describe('the audit view', () => {
  it('says who recorded what, when and from where, whatever the entry claims', async () => {
    const ben = await signedIn('ben');
    const note = { ...noteEntry('signed by another'), by: 'ada' };
    await send('/api/v1/sync/push', { cookie: ben, json: { entries: [note] }, from: '192.0.2.7' });
    const page = await (await send('/network/audit', { cookie: await signedIn('ada') })).text();
    expect(page).toMatch(/ben from 192\.0\.2\.7, signed &quot;ada&quot;|ben from 192\.0\.2\.7, signed "ada"/);
    expect(page).toContain('signed by another');
    const receipts = async (name: string) => send('/api/v1/receipts?limit=1', { cookie: await signedIn(name) });
    expect(await (await receipts('ada')).json()).toMatchObject([
      { id: note.id, by: 'ada', person: 'ben', address: '192.0.2.7', sentence: expect.stringMatching(/signed by/) },
    ]);
    expect((await receipts('ben')).status).toBe(403);
    expect(await (await receipts('dan')).text()).not.toContain('signed by another');
  });
});
