/**
 * The page in a real Chromium: what it loads, how soon it shows the day's jobs, how quickly a what-if
 * answers, what holds its main thread up, and Lighthouse's marks. Needs the built page and a Chromium.
 */
import { fileURLToPath } from 'node:url';
import { join } from 'node:path';
import { serveFiles } from '../tests/browser/file-server.ts';
import type { BenchResult } from './bench-result.ts';
import { dragRows } from './web/drag-rows.ts';
import { lighthouseRows } from './web/lighthouse-rows.ts';
import { loadRows } from './web/load-rows.ts';
import { openingRows } from './web/opening-rows.ts';
import { shelfRows } from './web/shelf-rows.ts';
import { withBrowser } from './web/with-browser.ts';

const page = join(fileURLToPath(import.meta.url), '../../web');

export async function run(): Promise<BenchResult> {
  const server = await serveFiles(page);
  try {
    const rows = await withBrowser(async (browser) => [
      ...(await loadRows(browser, server, page)),
      ...(await openingRows(browser, server)),
      ...(await dragRows(browser, server)),
      ...(await shelfRows(browser, server)),
    ]);
    return { title: 'The page, in Chromium', rows: [...rows, ...(await lighthouseRows(server))] };
  } finally {
    await server.close();
  }
}
