/** What the page loads before it can be used, and what the models weigh that come after. */
import { readFileSync } from 'node:fs';
import { join } from 'node:path';
import { gzipSync } from 'node:zlib';
import type { Browser } from '@playwright/test';
import type { FileServer } from '../../tests/browser/file-server.ts';
import type { BenchRow } from '../bench-result.ts';
import { enterDemo, verdict, watchedPage } from './with-browser.ts';

const targetKb = 150;

export async function loadRows(browser: Browser, server: FileServer, folder: string): Promise<BenchRow[]> {
  const page = await watchedPage(browser, server.address);
  server.asked.length = 0;
  await page.goto('./');
  await page.getByRole('heading', { level: 1 }).waitFor();
  await page.waitForLoadState('networkidle');
  const first = kilobytes(folder, server.asked);
  await enterDemo(page);
  const all = kilobytes(folder, server.asked);
  await page.context().close();
  return [
    {
      what: 'JavaScript of the first load, its logbook worker included, gzip',
      figure: `${first.toFixed(0)} kB`,
      baseline: `${targetKb} kB`,
      ratio: first / targetKb,
      target: verdict(`at most ${targetKb} kB`, first <= targetKb),
    },
    {
      what: 'models, planner and data, loaded when first asked for, gzip',
      figure: `${(all - first).toFixed(0)} kB more`,
      baseline: `the first load: ${first.toFixed(0)} kB`,
      ratio: (all - first) / first,
    },
  ];
}

function kilobytes(folder: string, asked: readonly string[]): number {
  const files = [...new Set(asked)].filter((file) => file.endsWith('.js') && !file.includes('service-worker'));
  return files.reduce((sum, file) => sum + gzipSync(readFileSync(join(folder, file))).length, 0) / 1000;
}
