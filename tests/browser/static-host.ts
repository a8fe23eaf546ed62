/** The built page on a plain file server that knows nothing of Flylarder, and a logbook to bring along. */
import { createServer } from 'node:http';
import { readFile } from 'node:fs/promises';
import type { AddressInfo } from 'node:net';
import { extname, join, normalize } from 'node:path';
import { test as base } from '@playwright/test';

const folder = 'dist/web';
const typeOf: Record<string, string> = {
  '.html': 'text/html',
  '.js': 'text/javascript',
  '.css': 'text/css',
  '.svg': 'image/svg+xml',
  '.woff2': 'font/woff2',
  '.wasm': 'application/wasm',
  '.webmanifest': 'application/manifest+json',
};

export const test = base.extend({
  // Playwright reads from this pattern which other fixtures are needed.
  baseURL: async ({ browserName: _ }, use) => {
    const server = createServer((request, response) => {
      const path = new URL(request.url ?? '/', 'http://localhost').pathname;
      const file = normalize(path.replace(/^\/keeping\//, '/').replace(/\/$/, '/index.html'));
      readFile(join(folder, file)).then(
        (body) => response.writeHead(200, { 'content-type': typeOf[extname(file)] ?? 'text/plain' }).end(body),
        () => response.writeHead(404).end(),
      );
    });
    await new Promise<void>((resolve) => server.listen(0, '127.0.0.1', resolve));
    // A folder of a larger site: nothing may depend on lying at its root.
    await use(`http://localhost:${(server.address() as AddressInfo).port}/keeping/`);
    server.closeAllConnections();
    await new Promise((resolve) => server.close(resolve));
  },
});

/** Entries in the order given, as a file of JSON Lines. */
export function logbookFile(drafts: object[], name = 'logbook.jsonl') {
  const lines = drafts.map((draft) => `${JSON.stringify(draft)}\n`).join('');
  return { name, mimeType: 'application/x-ndjson', buffer: Buffer.from(lines) };
}

/** Two weeks of a small household, by days before today. */
export function smallHousehold(today: string): object[] {
  const before = (days: number) => new Date(Date.parse(today) - days * 86_400_000).toISOString().slice(0, 10);
  const cup = (culture: string, days: number) => ({
    kind: 'started',
    on: before(days),
    culture,
    strain: 'melanogaster',
    founders: 50,
    place: 'shelf',
  });
  return [
    { kind: 'household', on: before(30), name: 'Test household' },
    { kind: 'place', on: before(30), place: 'shelf', name: 'Shelf', temperatureC: 24 },
    {
      kind: 'group',
      on: before(30),
      group: 'newts',
      name: 'Newts',
      count: 2,
      fliesPerFeeding: 10,
      strain: 'melanogaster',
    },
    cup('M1', 20),
    cup('M2', 14),
    cup('M3', 6),
  ];
}

export function today(): string {
  return new Date().toLocaleDateString('sv', { timeZone: 'Europe/Berlin' });
}
