/**
 * The page in a real Chromium: what it loads, how soon it shows the day's jobs, how quickly a what-if
 * answers, what holds its main thread up, and Lighthouse's marks. Needs the built page and a Chromium.
 * FLYLARDER_PART runs pieces.
 */
import { fileURLToPath } from 'node:url';
import { join } from 'node:path';
import type { Browser } from '@playwright/test';
import { type FileServer, serveFiles } from '../tests/browser/file-server.ts';
import type { BenchResult, BenchRow } from './bench-result.ts';
import { dragRows } from './web/drag-rows.ts';
import { lighthouseRows } from './web/lighthouse-rows.ts';
import { loadRows } from './web/load-rows.ts';
import { openingRows } from './web/opening-rows.ts';
import { shelfRows } from './web/shelf-rows.ts';
import { withBrowser } from './web/with-browser.ts';

const page = join(fileURLToPath(import.meta.url), '../../web');

const pieces = {
  load: (browser: Browser, server: FileServer) => loadRows(browser, server, page),
  opening: openingRows,
  drag: dragRows,
  shelf: shelfRows,
};

export async function run(): Promise<BenchResult> {
  const asked = process.env.FLYLARDER_PART?.split(',') ?? [...Object.keys(pieces), 'lighthouse'];
  const server = await serveFiles(page);
  try {
    const rows = await withBrowser(async (browser) => {
      const all: BenchRow[] = [];
      for (const [name, piece] of Object.entries(pieces)) {
        if (asked.includes(name)) all.push(...(await piece(browser, server)));
      }
      return all;
    });
    if (asked.includes('lighthouse')) rows.push(...(await lighthouseRows(server)));
    return { title: 'The page, in Chromium', rows };
  } finally {
    await server.close();
  }
}
