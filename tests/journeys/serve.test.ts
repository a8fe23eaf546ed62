import { describe, expect, it } from 'vitest';
import { emptyFolder, flylarder } from './command-line.ts';
import { end, serve, type Serving } from './serving.ts';

const post = ({ address }: Serving, entry: object) =>
  fetch(`${address}api/v1/entries`, {
    method: 'POST',
    headers: { 'content-type': 'application/json' },
    body: JSON.stringify({ entries: [entry] }),
  });

describe('serve', () => {
  it('answers as the command line does, and sees what the command line records', async () => {
    const folder = emptyFolder();
    flylarder(folder, ['demo', '--on', '2026-11-20']);
    const server = await serve(folder);
    for (const [name, weeks] of [
      ['today', ''],
      ['forecast', '6'],
      ['plan', '6'],
    ] as const) {
      const query = `on=2026-11-20&seed=3&scenarios=100${weeks && `&weeks=${weeks}`}`;
      const asked = await fetch(`${server.address}api/v1/${name}?${query}`);
      expect(asked.status).toBe(200);
      const options = ['--on', '2026-11-20', '--seed', '3', '--scenarios', '100', ...(weeks ? ['--weeks', weeks] : [])];
      const printed = flylarder(folder, [name, ...options, '--json']);
      expect(await asked.json()).toEqual(JSON.parse(printed.out));
    }
    expect(flylarder(folder, ['record', 'note', 'text=from the command line']).status).toBe(0);
    const last = await (await fetch(`${server.address}api/v1/entries`)).text();
    expect(last).toContain('from the command line');
    expect(await end(server, 'SIGTERM')).toBe(0);
  }, 120_000);

  it('takes another port when the usual one is taken, and says when the one asked for is', async () => {
    const folder = emptyFolder();
    const first = await serve(folder, []);
    const second = await serve(folder, []);
    expect(second.address).not.toBe(first.address);
    const port = new URL(first.address).port;
    const refused = flylarder(folder, ['serve', '--port', port]);
    expect(refused).toMatchObject({ status: 2 });
    expect(refused.err).toMatch(/--port: found .* expected a free port/);
    expect(await end(first, 'SIGINT')).toBe(0);
    expect(await end(second, 'SIGINT')).toBe(0);
  });
});

describe('kill -9 while a thousand entries are recorded', () => {
  it('every acknowledged one is there afterwards', async () => {
    const folder = emptyFolder();
    const acknowledged = new Set<string>();
    let sent = 0;
    while (sent < 1000) {
      const server = await serve(folder);
      const killAfter = sent + 120 + ((sent * 7) % 90);
      const writer = async () => {
        while (sent < killAfter) {
          sent++;
          const answer = await post(server, { kind: 'note', on: '2026-10-01', text: `note ${sent}` }).catch(() => null);
          const ids = answer?.ok
            ? await answer.json().then(
                (body) => (body as { ids: string[] }).ids,
                () => [],
              )
            : [];
          for (const id of ids) acknowledged.add(id);
        }
      };
      const writers = [writer(), writer(), writer(), writer()];
      // The kill falls among writes under way: one writer's end does not wait for the others.
      await Promise.race(writers);
      await end(server, 'SIGKILL');
      await Promise.all(writers);
    }
    expect(acknowledged.size).toBeGreaterThan(900);
    const exported = flylarder(folder, ['export']);
    expect(exported.status).toBe(0);
    const kept = new Set(
      exported.out
        .trim()
        .split('\n')
        .map((line) => JSON.parse(line).id as string),
    );
    expect([...acknowledged].filter((id) => !kept.has(id))).toEqual([]);
    expect(kept.size).toBeLessThanOrEqual(sent);
  }, 120_000);
});
