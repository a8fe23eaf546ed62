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
    const at = ['--on', '2026-11-20', '--seed', '3', '--scenarios', '100'];
    const questions: [path: string, args: string[]][] = [
      ['today?on=2026-11-20&seed=3&scenarios=100', ['today', ...at]],
      ['forecast?on=2026-11-20&seed=3&scenarios=100&weeks=6', ['forecast', ...at, '--weeks', '6']],
      ['plan?on=2026-11-20&seed=3&scenarios=100&weeks=6', ['plan', ...at, '--weeks', '6']],
      ['learned?on=2026-11-20', ['learned', '--on', '2026-11-20']],
      ['lifecycle?strain=hydei&temperatureC=21', ['lifecycle', '--strain', 'hydei', '--temperature', '21']],
      ['cross?female=vg/vg&male=%2B/%2B', ['cross', 'vg/vg', '+/+']],
      ['mix?on=2026-11-20&cups=4', ['mix', '--on', '2026-11-20', '--cups', '4']],
      ['labels?on=2026-11-20&sheet=50x25', ['labels', '--on', '2026-11-20', '--sheet', '50x25']],
    ];
    const answers: unknown[] = [];
    for (const [path] of questions) {
      const asked = await fetch(`${server.address}api/v1/${path}`);
      expect(asked.status, path).toBe(200);
      answers.push(await asked.json());
    }
    const calendar = await fetch(`${server.address}api/v1/calendar.ics?on=2026-11-20&weeks=4`);
    expect(calendar.headers.get('content-type')).toMatch(/^text\/calendar/);
    expect(await calendar.text()).toMatch(/^BEGIN:VCALENDAR\r\n[\s\S]*SUMMARY:[\s\S]*END:VCALENDAR\r\n$/);
    for (const [i, [path, args]] of questions.entries()) {
      expect(answers[i], path).toEqual(JSON.parse(flylarder(folder, [...args, '--json']).out));
    }
    // A waiting connection was closed meanwhile: this test was busy with the command line.
    await new Promise((resolve) => setTimeout(resolve, 100));
    expect(flylarder(folder, ['record', 'note', 'text=from the command line']).status).toBe(0);
    // The command held this process up: a connection that the server has closed meanwhile is noticed first.
    await new Promise((resolve) => setTimeout(resolve, 100));
    const last = await (await fetch(`${server.address}api/v1/entries`)).text();
    expect(last).toContain('from the command line');
    expect(await end(server, 'SIGTERM')).toBe(0);
  }, 300_000);

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
  }, 300_000);
});
