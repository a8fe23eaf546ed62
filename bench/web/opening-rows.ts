/** How soon the page shows itself and the day's jobs, on a slow phone whose cache is warm. */
import type { Browser, Page } from '@playwright/test';
import type { FileServer } from '../../tests/browser/file-server.ts';
import type { BenchRow } from '../bench-result.ts';
import { bringIn, demoLines } from './kept-household.ts';
import { firstJobMs, median, settled, verdict, watchedPage, wholeListMs } from './with-browser.ts';

const targetMs = 1000;
const runs = 5;

export async function openingRows(browser: Browser, server: FileServer): Promise<BenchRow[]> {
  const page = await watchedPage(browser, server.address);
  await bringIn(page, demoLines());
  await page.goto('./#/today');
  await jobsShown(page);
  await settled(page);
  const devtools = await page.context().newCDPSession(page);
  await devtools.send('Emulation.setCPUThrottlingRate', { rate: 4 });
  const again = await openings(page);
  // As on the first opening of a day: nothing was worked out before.
  await page.addInitScript(() => localStorage.removeItem('flylarder answers'));
  const fresh = await openings(page);
  await page.context().close();
  const row = (what: string, ms: number, bare: number): BenchRow => ({
    what,
    figure: `${ms.toFixed(0)} ms`,
    baseline: `first paint: ${bare.toFixed(0)} ms`,
    ratio: ms / bare,
    target: verdict(`under ${targetMs} ms`, ms < targetMs),
  });
  return [
    row('first paint, 4 times slower processor, warm cache', again.paintMs, again.paintMs),
    row("the day's jobs, opened again on the same day", again.jobsMs, again.paintMs),
    row('feeding and what else needs no plan, nothing kept (workers are not slowed down)', fresh.jobsMs, fresh.paintMs),
    row("all of the day's jobs, worked out anew", fresh.wholeMs, fresh.paintMs),
  ];
}

async function openings(page: Page): Promise<{ paintMs: number; jobsMs: number; wholeMs: number }> {
  const paints: number[] = [];
  const whole: number[] = [];
  const jobs: number[] = [];
  for (let i = 0; i < runs; i++) {
    await page.reload();
    await page.locator('.coming > li').first().waitFor({ timeout: 120_000 });
    paints.push(
      await page.evaluate(() => performance.getEntriesByName('first-contentful-paint')[0]?.startTime ?? Number.NaN),
    );
    jobs.push(await firstJobMs(page));
    whole.push(await wholeListMs(page));
  }
  return { paintMs: median(paints), jobsMs: median(jobs), wholeMs: median(whole) };
}

async function jobsShown(page: Page): Promise<void> {
  await page.locator('.spine > li').first().waitFor({ timeout: 120_000 });
}
