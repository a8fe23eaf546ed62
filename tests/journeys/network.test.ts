import { readFileSync } from 'node:fs';
import { request } from 'node:https';
import { networkInterfaces } from 'node:os';
import { join } from 'node:path';
import { describe, expect, it } from 'vitest';
import { emptyFolder, flylarder } from './command-line.ts';
import { end, serve } from './serving.ts';

const card = Object.values(networkInterfaces())
  .flatMap((each) => each ?? [])
  .find(({ internal, family }) => !internal && family === 'IPv4');

/** The status of a GET over HTTPS that trusts only the household's authority, and the reply's text. */
function securely(url: string, ca: string, cookie = ''): Promise<{ status: number | undefined; text: string }> {
  return new Promise((resolve, reject) => {
    const asked = request(url, { ca, agent: false, headers: { cookie } }, (reply) => {
      let text = '';
      reply.setEncoding('utf8').on('data', (part) => (text += part));
      reply.on('end', () => resolve({ status: reply.statusCode, text }));
    });
    asked.once('error', reject).end();
  });
}

async function ended(reader: ReadableStreamDefaultReader<Uint8Array>): Promise<'ended'> {
  while (!(await reader.read()).done);
  return 'ended';
}

const waited = (ms: number) => new Promise((done) => setTimeout(() => done('still open'), ms));

describe('serve --lan', () => {
  it('lets a device in by its code, over HTTP and HTTPS, until it is shut out', async () => {
    const folder = emptyFolder();
    const serving = await serve(folder, ['--lan', '--port', '0', '--https-port', '0']);
    const printed = serving.printed();
    const port = new URL(serving.address).port;
    // Without a network card there is only the loopback: then a foreign name stands in for the device.
    const address = card ? `http://${card.address}:${port}/` : serving.address;
    const from: Record<string, string> = card ? {} : { 'x-forwarded-for': '192.168.1.9' };
    expect((await fetch(`${serving.address}api/v1/health`)).status).toBe(200);
    expect((await fetch(`${address}api/v1/health`, { headers: from })).status).toBe(401);

    const shown = flylarder(folder, ['devices', 'add', '--port', port]).out;
    const code = /Code: (\S{4}-\S{4})/.exec(shown)?.[1] as string;
    const form = new URLSearchParams({ code, name: 'Phone' });
    const answer = await fetch(`${address}network/pair`, {
      method: 'POST',
      body: form,
      headers: from,
      redirect: 'manual',
    });
    expect(answer.status).toBe(303);
    const cookie = answer.headers.get('set-cookie')?.split(';')[0] as string;
    const entry = { kind: 'note', on: '2026-11-25', text: 'from the phone' };
    const kept = await fetch(`${address}api/v1/entries`, {
      method: 'POST',
      headers: { ...from, cookie, 'content-type': 'application/json' },
      body: JSON.stringify({ entries: [entry] }),
    });
    expect(kept.status).toBe(201);

    const audited = JSON.parse(flylarder(folder, ['audit', '--json']).out);
    expect(audited).toMatchObject([{ person: 'Phone', by: 'Phone', address: card ? card.address : '127.0.0.1' }]);
    expect(Math.abs(Date.parse(audited[0].receivedAt) - Date.now())).toBeLessThan(60_000);
    flylarder(folder, ['record', 'note', 'text=here', '--by', 'Phone']);
    expect(flylarder(folder, ['audit', '--limit', '1']).out).toMatch(/on this computer, signed "Phone"/);
    const page = await (await fetch(`${serving.address}network/audit`)).text();
    expect(page).toMatch(/Phone from .*signed &quot;Phone&quot;.*from the phone/s);
    expect((await fetch(`${address}network/audit`, { headers: { ...from, cookie } })).status).toBe(403);

    const ca = readFileSync(join(folder, 'household', 'certificate', 'authority.pem'), 'utf8');
    const secure = /https:\/\/\S+/.exec(printed)?.[0] as string;
    const local = `https://localhost:${new URL(secure).port}/`;
    expect((await securely(`${local}api/v1/entries`, ca)).text).toContain('from the phone');

    const stream = await fetch(`${address}api/v1/events`, { headers: { ...from, cookie } });
    const reader = (stream.body as ReadableStream<Uint8Array>).getReader();
    await reader.read();
    expect(flylarder(folder, ['devices']).out).toMatch(/Phone {2}paired/);
    expect(flylarder(folder, ['devices', 'revoke', 'Tablet'])).toMatchObject({ status: 2 });
    expect(flylarder(folder, ['devices', 'revoke', 'Phone']).out).toBe('Phone is shut out.\n');
    // The command itself takes longer than the stream has left.
    expect(await Promise.race([ended(reader), waited(1000)])).toBe('ended');
    expect((await fetch(`${address}api/v1/health`, { headers: { ...from, cookie } })).status).toBe(401);
    expect(await end(serving, 'SIGTERM')).toBe(0);
    expect(serving.printed()).not.toContain(cookie.split('.')[1]);
  });

  it('is closed to the network unless it is asked to open', async () => {
    const serving = await serve(emptyFolder());
    const port = new URL(serving.address).port;
    if (card) await expect(fetch(`http://${card.address}:${port}/`)).rejects.toThrow();
    expect((await fetch(`${serving.address}network/devices`)).headers.get('content-type')).toMatch(/html/);
    expect(await (await fetch(`${serving.address}network/devices`)).text()).not.toContain('Let a device in');
    expect(await end(serving, 'SIGTERM')).toBe(0);
  });
});
