import { afterAll, beforeEach, describe, expect, it } from 'vitest';
import { type ApplicationUnderTest, applicationUnderTest, removePage, shell } from './application-under-test.ts';
import type { LiveHousehold } from './live-household.ts';

let household: LiveHousehold;
let request: ApplicationUnderTest['request'];
beforeEach(async () => {
  ({ household, request } = await applicationUnderTest());
});
afterAll(removePage);

const get = (path: string, headers: Record<string, string> = {}) => request(path, { headers });
const post = (body: BodyInit, headers: Record<string, string> = {}) =>
  request('/api/v1/entries', { method: 'POST', body, headers: { 'content-type': 'application/json', ...headers } });
const note = (text: string, on = '2026-11-25') => ({ kind: 'note', on, text });
const entries = (...list: unknown[]) => JSON.stringify({ entries: list });

describe('entries over HTTP', () => {
  it('are completed, kept, and given back as JSON Lines after a cursor', async () => {
    const first = await post(entries(note('one'), note('two')));
    expect(first.status).toBe(201);
    const { cursor, ids } = (await first.json()) as { cursor: number; ids: string[] };
    expect(ids).toHaveLength(2);
    await post(entries(note('three')));
    const all = (await (await get('/api/v1/entries')).text()).trim().split('\n');
    expect(all.map((line) => JSON.parse(line).text)).toEqual(['one', 'two', 'three']);
    const rest = await get(`/api/v1/entries?after=${cursor}`);
    expect(rest.headers.get('flylarder-cursor')).toBe(String(cursor + 1));
    expect(JSON.parse(await rest.text())).toMatchObject({ text: 'three', by: 'http', recordedAt: shell.now() });
  });

  it('come as JSON Lines too, and again without harm', async () => {
    const lines = await (async () => {
      await post(entries(note('one'), note('two')));
      return (await get('/api/v1/entries')).text();
    })();
    const again = await post(lines, { 'content-type': 'application/x-ndjson' });
    expect(await again.json()).toMatchObject({ added: 0, alreadyThere: 2 });
    expect(household.count).toBe(2);
  });

  it('of one batch are kept all or none', async () => {
    const bad = await post(entries(note('fine'), { kind: 'harvested', on: '2026-11-25', culture: 'M1', flies: 3 }));
    expect(bad.status).toBe(400);
    expect(await bad.json()).toMatchObject({ problems: [{ where: expect.stringMatching(/^entries\.1/) }] });
    expect(household.count).toBe(0);
  });

  it('are checked one write after another, however they arrive', async () => {
    const start = { kind: 'started', on: '2026-11-20', culture: 'M1', strain: 'melanogaster', founders: 50 };
    const answers = await Promise.all([1, 2, 3, 4].map(() => post(entries(start))));
    expect(answers.map((a) => a.status).sort((a, b) => a - b)).toEqual([201, 400, 400, 400]);
    expect(household.facts().cultures).toHaveLength(1);
    expect(household.facts().problems).toEqual([]);
  });

  it('change the answers', async () => {
    await get('/api/v1/facts');
    await post(entries({ kind: 'household', on: '2026-11-25', name: 'New name' }));
    expect(await (await get('/api/v1/facts')).json()).toMatchObject({ household: { name: 'New name' } });
  });
});

describe('bad requests', () => {
  const bodies: [what: string, body: BodyInit, headers: Record<string, string>, status: number][] = [
    ['no JSON', 'hello', {}, 400],
    ['no entries', '{}', {}, 400],
    ['an empty list', '{"entries":[]}', {}, 400],
    ['JSON Lines without a line', '\n', { 'content-type': 'application/x-ndjson' }, 400],
    ['entries that are none', '{"entries":[1,null,"x",[]]}', {}, 400],
    ['an unknown kind', entries({ kind: 'x' }), {}, 400],
    ['a prototype name as kind', entries({ kind: '__proto__' }), {}, 400],
    ['a form', 'entries=1', { 'content-type': 'application/x-www-form-urlencoded' }, 415],
    ['plain text, which a foreign page may send unasked', entries(note('x')), { 'content-type': 'text/plain' }, 415],
    ['bytes that are not UTF-8', new Uint8Array([0xff, 0xfe, 0]), { 'content-type': 'application/x-ndjson' }, 400],
    ['a body over the limit', entries(note('x'.repeat(17 * 1024 * 1024))), {}, 413],
    ['a foreign page', entries(note('x')), { origin: 'http://evil.example' }, 403],
    ['a page on another port', entries(note('x')), { origin: 'http://localhost:9999' }, 403],
    ['a site that points its name here', entries(note('x')), { host: 'evil.example:4180' }, 403],
    ['a cross-site request', entries(note('x')), { 'sec-fetch-site': 'cross-site' }, 403],
    ['no host', entries(note('x')), { host: '' }, 403],
  ];
  for (const [what, body, headers, status] of bodies) {
    it(`${what}: ${status}, with problems, and nothing written`, async () => {
      const answer = await post(body, headers);
      expect(answer.status).toBe(status);
      const { problems } = (await answer.json()) as { problems: object[] };
      expect(problems.length).toBeGreaterThan(0);
      for (const p of problems) expect(Object.keys(p)).toEqual(['where', 'found', 'expected']);
      expect(household.count).toBe(0);
    });
  }

  const queries = [
    'on=2026-02-30',
    'on=',
    'seed=-1',
    'seed=1.5',
    'seed=x',
    'scenarios=1',
    'sceanrios=100',
    'seed=99999999999',
  ];
  for (const query of queries) {
    it(`today?${query}: 400`, async () => {
      const answer = await get(`/api/v1/today?${query}`);
      expect(answer.status).toBe(400);
      expect(await answer.json()).toMatchObject({ problems: [{ where: expect.stringMatching(/^query/) }] });
    });
  }

  it('an unknown route: 404 with a problem', async () => {
    for (const path of ['/api/v1/zzz', '/api/', '/api/v2/today']) {
      const answer = await get(path);
      expect(answer.status).toBe(404);
      expect(await answer.json()).toHaveProperty('problems');
    }
  });
});

describe('the page', () => {
  it('is served with headers that keep foreign code out', async () => {
    const page = await get('/');
    expect(page.status).toBe(200);
    expect(page.headers.get('content-type')).toBe('text/html; charset=utf-8');
    expect(page.headers.get('content-security-policy')).toMatch(/default-src 'none'.*script-src 'self'/);
    expect(page.headers.get('content-security-policy')).not.toMatch(/script-src[^;]*'unsafe-(inline|eval)'/);
    expect(page.headers.get('x-content-type-options')).toBe('nosniff');
    expect(page.headers.get('cache-control')).toBe('no-cache');
  });

  it('is not sent again while it is the same', async () => {
    const etag = (await get('/')).headers.get('etag') as string;
    expect((await get('/', { 'if-none-match': etag })).status).toBe(304);
    expect((await get('/', { 'if-none-match': '"other"' })).status).toBe(200);
  });

  it('keeps hashed files for ever', async () => {
    expect((await get('/assets/a-1234.js')).headers.get('cache-control')).toMatch(/immutable/);
  });

  it('gives nothing outside its folder', async () => {
    for (const path of ['/../package.json', '/..%2f..%2fpackage.json', '/assets/../../package.json', '/missing.js']) {
      expect((await get(path)).status, path).toBe(404);
    }
  });

  it('is itself at every address of its own', async () => {
    expect(await (await get('/cups/M1')).text()).toMatch(/Flylarder/);
  });
});

describe('the description', () => {
  it('is OpenAPI 3.1 and names every route', async () => {
    const description = (await (await get('/api/v1/openapi.json')).json()) as { openapi: string; paths: object };
    expect(description.openapi).toBe('3.1.0');
    expect(Object.keys(description.paths)).toEqual(
      expect.arrayContaining(['/today', '/forecast', '/plan', '/lifecycle', '/entries', '/facts', '/health']),
    );
  });
});

describe('the life of a cup', () => {
  it('knows spells of wet and dry medium and when it gets light, and names a wrong one', async () => {
    const life = async (more: string) => {
      const answer = await get(`/api/v1/lifecycle?temperatureC=24${more}`);
      expect(answer.status).toBe(200);
      return (await answer.json()) as { adultsEmerged: { p50: number }; emergedShareByHour: number[] | null };
    };
    const good = await life('&lightsOnHour=7');
    expect((await life('&dry=3-12')).adultsEmerged.p50).toBeLessThan(good.adultsEmerged.p50);
    expect((await life('&wet=3-12')).adultsEmerged.p50).toBeLessThan(good.adultsEmerged.p50);
    expect(good.emergedShareByHour).toHaveLength(24);
    expect((await get('/api/v1/lifecycle?temperatureC=24&dry=12-3')).status).toBe(400);
    expect((await get('/api/v1/lifecycle?temperatureC=24&wet=often')).status).toBe(400);
  });
});

describe('events', () => {
  it('tell an open page of new entries', async () => {
    const answer = await get('/api/v1/events');
    const reader = (answer.body as ReadableStream<Uint8Array>).getReader();
    const next = async () => new TextDecoder().decode((await reader.read()).value);
    expect(await next()).toMatch(/event: entries\ndata: \{"cursor":0\}/);
    await post(entries(note('one')));
    expect(await next()).toMatch(/data: \{"cursor":1\}/);
    await reader.cancel();
  });
});
