import { mkdtempSync, readdirSync, readFileSync, rmSync } from 'node:fs';
import { tmpdir } from 'node:os';
import { join } from 'node:path';
import { afterAll, beforeEach, describe, expect, it } from 'vitest';
import { openMemoryStore } from '../../store/memory/index.ts';
import { removePage, shell as fixedShell, webFolder } from '../application-under-test.ts';
import { application } from '../application.ts';
import { LiveHousehold } from '../live-household.ts';
import { localName } from './local-names.ts';
import { type NetworkOptions, network } from './network.ts';

const folders: string[] = [];
afterAll(() => {
  for (const folder of folders) rmSync(folder, { recursive: true, force: true });
  removePage();
});

let nowMs = 0;
const shell = { ...fixedShell, now: () => new Date(nowMs).toISOString() };
const lan = `${localName()}:4180`;

interface Sent {
  from?: string;
  host?: string;
  cookie?: string;
  headers?: Record<string, string>;
  form?: Record<string, string>;
  json?: unknown;
}

let folder = '';
let send: (path: string, sent?: Sent) => Promise<Response>;
let devices: ReturnType<typeof network>['devices'];

async function household(options: Partial<NetworkOptions> = {}) {
  folder = mkdtempSync(join(tmpdir(), 'flylarder-pairing-'));
  folders.push(folder);
  nowMs = Date.parse('2026-11-25T12:00:00Z');
  const open = network({ folder, ...options }, shell);
  devices = open.devices;
  const app = application(await LiveHousehold.open(openMemoryStore()), { shell, version: '0.0.0', webFolder }, open);
  send = async (path, { from = '192.168.1.30', host = lan, cookie, headers = {}, form, json } = {}) => {
    const type = { 'content-type': 'application/json' };
    const body = form ? new URLSearchParams(form) : json ? JSON.stringify(json) : undefined;
    const init = body === undefined ? {} : { method: 'POST', body };
    const all: Record<string, string> = { host, ...(cookie && { cookie }), ...(json ? type : {}), ...headers };
    return app.request(path, { ...init, headers: all }, { incoming: { socket: { remoteAddress: from } } });
  };
}
beforeEach(() => household());

const here = { from: '127.0.0.1', host: 'localhost:4180' };

async function codeShown(): Promise<string> {
  const page = await (await send('/network/devices/invite', { ...here, form: {} })).text();
  return (/class="code">([^<]+)</.exec(page) as RegExpExecArray)[1] as string;
}

async function paired(name = 'Phone'): Promise<string> {
  const answer = await send('/network/pair', { form: { code: await codeShown(), name } });
  expect(answer.status).toBe(303);
  return (answer.headers.get('set-cookie') as string).split(';')[0] as string;
}

const note = { entries: [{ kind: 'note', on: '2026-11-25', text: 'hello' }] };

describe('on the home network', () => {
  it('the computer itself needs no pairing, everyone else does', async () => {
    expect((await send('/api/v1/entries', here)).status).toBe(200);
    for (const path of ['entries', 'facts', 'today', 'health', 'events', 'openapi.json', 'calendar.ics', 'nothing']) {
      expect((await send(`/api/v1/${path}`)).status, path).toBe(401);
    }
    expect((await send('/api/v1/entries', { json: note })).status).toBe(401);
    expect((await send('/api/v1/sync/push', { json: { entries: [] } })).status).toBe(401);
    expect((await send('/')).headers.get('location')).toBe('/network/pair');
  });

  it('a device is let in by the code that the computer shows, and signs what it records', async () => {
    const cookie = await paired('Phone in the kitchen');
    expect((await send('/api/v1/entries', { cookie, json: note })).status).toBe(201);
    const kept = await (await send('/api/v1/entries', { cookie })).text();
    expect(JSON.parse(kept)).toMatchObject({ by: 'Phone in the kitchen', text: 'hello' });
    expect((await send('/', { cookie })).status).toBe(200);
  });

  it('its cookie is out of reach of programs and of other sites', async () => {
    const answer = await send('/network/pair', { form: { code: await codeShown(), name: 'Phone' } });
    expect(answer.headers.get('set-cookie')).toMatch(/HttpOnly.*SameSite=Strict/);
  });

  it('only a digest of its secret is kept, and the code nowhere', async () => {
    const code = await codeShown();
    const texts = () =>
      readdirSync(join(folder, 'devices')).map((file) => readFileSync(join(folder, 'devices', file), 'utf8'));
    expect(texts().join()).not.toContain(code.replace('-', ''));
    const cookie = await paired();
    expect(texts().join()).not.toContain(cookie.split('.')[1]);
  });

  it('a device that is shut out is out at once', async () => {
    const [one, two] = [await paired('one'), await paired('two')];
    const id = devices.list().find(({ name }) => name === 'one')?.id;
    await send(`/network/devices/${id}/revoke`, { ...here, form: {} });
    expect((await send('/api/v1/facts', { cookie: one })).status).toBe(401);
    expect((await send('/api/v1/facts', { cookie: two })).status).toBe(200);
  });
});

describe('a code', () => {
  const status = async (code: string, from?: string) =>
    (await send('/network/pair', { ...(from && { from }), form: { code, name: 'x' } })).status;

  it('is good once', async () => {
    const code = await codeShown();
    expect([await status(code), await status(code)]).toEqual([303, 403]);
  });
  it('may be typed in small letters and without its dash', async () => {
    expect(await status((await codeShown()).replace('-', ' ').toLowerCase())).toBe(303);
  });
  it('is good for ten minutes', async () => {
    const code = await codeShown();
    nowMs += 600_000;
    expect(await status(code)).toBe(403);
  });
  it('is no longer good when another was made', async () => {
    const [first, second] = [await codeShown(), await codeShown()];
    expect([await status(first), await status(second)]).toEqual([403, 303]);
  });
  it('cannot be guessed: tries are counted by address, and in all', async () => {
    const code = await codeShown();
    const tries = await Promise.all(Array.from({ length: 8 }, () => status('AAAA-AAAA')));
    expect(tries.filter((s) => s === 429)).toHaveLength(2);
    expect(await status(code)).toBe(429);
    for (let i = 0; i < 40; i++) await status('AAAA-AAAA', `192.168.1.${100 + i}`);
    nowMs += 60_000;
    expect(await status(code)).toBe(403);
  });
  it('is not used up by a device without a name', async () => {
    const code = await codeShown();
    expect((await send('/network/pair', { form: { code, name: ' ' } })).status).toBe(400);
    expect(await status(code)).toBe(303);
  });
});

describe('strangers', () => {
  it('do not see codes or devices', async () => {
    for (const path of ['/network/devices', '/network/devices/invite']) {
      expect((await send(path, path.endsWith('invite') ? { form: {} } : {})).status).toBe(403);
    }
    expect((await send('/network/devices', { cookie: await paired() })).status).toBe(403);
  });
  it('cannot pass for the computer itself', async () => {
    expect((await send('/api/v1/facts', { host: 'localhost:4180' })).status).toBe(401);
    expect((await send('/api/v1/facts', { ...here, headers: { 'x-forwarded-for': '10.0.0.9' } })).status).toBe(401);
    expect((await send('/api/v1/facts', { from: '127.0.0.1' })).status).toBe(401);
  });
  it('get nowhere with tokens that are wrong, cut or none', async () => {
    const good = await paired();
    const [id, secret] = (good.split('=')[1] as string).split('.') as [string, string];
    const other = (await paired('other')).split('.')[1] as string;
    const flipped = `${secret.slice(0, -2)}${secret.endsWith('AA') ? 'BB' : 'AA'}`;
    const wrong = [
      `${id}.${other}`,
      `${id}.${flipped}`,
      `${id}.`,
      id,
      '',
      '../invitation.x',
      `0000000000000000.${secret}`,
    ];
    for (const token of wrong) {
      expect((await send('/api/v1/facts', { cookie: `flylarder_device=${token}` })).status, token).toBe(401);
    }
  });
  it('cannot send a form from another site, nor under a name that is not ours', async () => {
    const form = { code: await codeShown(), name: 'x' };
    expect((await send('/network/pair', { form, headers: { origin: 'http://evil.example' } })).status).toBe(403);
    expect((await send('/network/pair', { form, host: 'evil.example' })).status).toBe(403);
    expect(
      (await send('/network/devices/invite', { ...here, form: {}, headers: { origin: `http://${lan}` } })).status,
    ).toBe(403);
  });
  it('put no markup into pages', async () => {
    await paired('<script>alert(1)</script>');
    const page = await (await send('/network/devices', here)).text();
    expect(page).not.toContain('<script>');
    expect(await (await send('/network/pair?code="><script>')).text()).not.toContain('<script>');
  });
});

describe('a calendar link', () => {
  const link = async () => {
    const id = devices.list()[0]?.id;
    const page = await (await send(`/network/devices/${id}/calendar`, { ...here, form: {} })).text();
    return (/calendar\.ics\?key=([^<]+)</.exec(page) as RegExpExecArray)[1] as string;
  };
  it('is made and ended by the device itself', async () => {
    const cookie = await paired();
    expect(await (await send('/network/calendar', { cookie })).text()).toContain('New calendar link');
    const page = await (await send('/network/calendar', { cookie, form: {} })).text();
    const key = (/calendar\.ics\?key=([^<]+)</.exec(page) as RegExpExecArray)[1] as string;
    expect((await send(`/api/v1/calendar.ics?key=${key}&weeks=2`)).status).toBe(200);
    expect(await (await send('/network/calendar/end', { cookie, form: {} })).text()).toContain('has ended');
    expect((await send(`/api/v1/calendar.ics?key=${key}&weeks=2`)).status).toBe(401);
    expect((await send('/api/v1/health', { cookie })).status).toBe(200);
    expect((await send('/network/calendar', { form: {} })).headers.get('location')).toBe('/network/pair');
    expect((await send('/network/calendar', here)).headers.get('location')).toBe('/network/devices');
  });

  it('opens the calendar and nothing else, until there is a new one or the device is shut out', async () => {
    await paired();
    const key = await link();
    const calendar = await send(`/api/v1/calendar.ics?key=${key}&weeks=2`);
    expect(calendar.status).toBe(200);
    expect(await calendar.text()).toMatch(/^BEGIN:VCALENDAR/);
    expect((await send(`/api/v1/facts?key=${key}`)).status).toBe(401);
    expect((await send('/api/v1/facts', { cookie: `flylarder_device=${key}` })).status).toBe(401);
    const next = await link();
    expect((await send(`/api/v1/calendar.ics?key=${key}`)).status).toBe(401);
    expect((await send(`/api/v1/calendar.ics?key=${next}`)).status).toBe(200);
    devices.revoke(devices.list()[0]?.id as string);
    expect((await send(`/api/v1/calendar.ics?key=${next}`)).status).toBe(401);
  });
});

describe('behind a proxy', () => {
  it('nobody counts as the computer itself, and cookies travel over HTTPS only', async () => {
    await household({ publicUrl: 'https://flies.example.org/' });
    expect((await send('/api/v1/facts', here)).status).toBe(401);
    expect((await send('/network/devices', here)).status).toBe(403);
    const { invite } = await import('./invitation.ts');
    const { code } = invite(folder, nowMs);
    const browser = { host: 'flies.example.org', headers: { origin: 'https://flies.example.org' } };
    const answer = await send('/network/pair', { ...browser, from: '127.0.0.1', form: { code, name: 'Phone' } });
    expect(answer.status).toBe(303);
    expect(answer.headers.get('set-cookie')).toMatch(/; Secure/);
    const cookie = answer.headers.get('set-cookie')?.split(';')[0] as string;
    expect((await send('/api/v1/entries', { ...browser, cookie, json: note })).status).toBe(201);
  });
});

describe('the language of these pages', () => {
  it.each([
    ['de-AT,de;q=0.9,en;q=0.5', 'de', 'Dieses Gerät verbinden'],
    ['fr, en-US;q=0.5, de;q=0.7', 'de', 'Dieses Gerät verbinden'],
    ['en-GB', 'en', 'Pair this device'],
    ['fr', 'en', 'Pair this device'],
    ['', 'en', 'Pair this device'],
  ])('to a browser that asks for "%s" is %s', async (asked, language, title) => {
    const page = await (await send('/network/pair', { headers: { 'accept-language': asked } })).text();
    expect(page).toContain(`<html lang="${language}">`);
    expect(page).toContain(`<h1>${title}</h1>`);
  });
});
