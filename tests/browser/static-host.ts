/** The built page on a plain file server, and a logbook to bring along. */
import { test as base } from '@playwright/test';
import { serveFiles } from './file-server.ts';

export const test = base.extend({
  // Playwright reads from this pattern which other fixtures are needed.
  baseURL: async ({ browserName: _ }, use) => {
    const server = await serveFiles('dist/web');
    await use(server.address);
    await server.close();
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
