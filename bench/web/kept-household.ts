/** A household of its own on the device: the demo's ten weeks as a keeper's logbook, brought in as a file. */
import type { Page } from '@playwright/test';
import { demoLogbook } from '../../src/app/index.ts';
import { day } from '../../src/foundation/index.ts';

export const today = day(new Date().toLocaleDateString('sv'));

export function demoLines(): string {
  return linesOf(demoLogbook(today));
}

/** A shelf of very many living cups in four places. */
export function crowdedLines(cups: number): string {
  const before = (days: number) => new Date(Date.parse(today) - days * 86_400_000).toISOString().slice(0, 10);
  const places = ['north', 'east', 'south', 'west'];
  const household = { kind: 'household', on: before(60), name: 'Many cups', shelfCups: cups };
  return linesOf([
    household,
    ...places.map((place) => ({ kind: 'place', on: before(60), place, name: place, temperatureC: 24 })),
    ...Array.from({ length: cups }, (_, i) => ({
      kind: 'started',
      on: before(i % 28),
      culture: `M${i + 1}`,
      strain: 'melanogaster',
      founders: 50,
      place: places[i % places.length],
    })),
  ]);
}

export async function bringIn(page: Page, lines: string): Promise<void> {
  await page.goto('./#/settings');
  const file = { name: 'logbook.jsonl', mimeType: 'application/x-ndjson', buffer: Buffer.from(lines) };
  await page.locator('input[type=file]').first().setInputFiles(file);
  await page.getByText(/entries read/).waitFor({ timeout: 240_000 });
}

function linesOf(drafts: readonly object[]): string {
  return drafts.map((draft) => `${JSON.stringify(draft)}\n`).join('');
}
