/** A shelf of ten thousand cups: opened, and scrolled from top to bottom. */
import type { Browser, Page } from '@playwright/test';
import type { FileServer } from '../../tests/browser/file-server.ts';
import type { BenchRow } from '../bench-result.ts';
import { taskRow } from './drag-rows.ts';
import { bringIn, crowdedLines } from './kept-household.ts';
import { longestTaskMs, watchedPage } from './with-browser.ts';

const cups = 10_000;
const scrollMs = 6000;

export async function shelfRows(browser: Browser, server: FileServer): Promise<BenchRow[]> {
  const page = await watchedPage(browser, server.address);
  await bringIn(page, crowdedLines(cups));
  await page.goto('./#/shelf');
  await page.locator('.rows li a').first().waitFor({ timeout: 240_000 });
  await page.waitForTimeout(2000);
  await longestTaskMs(page);
  const { frames, moved } = await scrolled(page);
  const longest = await longestTaskMs(page);
  await page.context().close();
  const perSecond = (1000 * frames) / scrollMs;
  return [
    taskRow(`longest task of the main thread while ${cups} cups scroll by ${Math.round(moved)} px`, longest),
    {
      what: 'pictures a second meanwhile',
      figure: perSecond.toFixed(0),
      baseline: '60 of the screen',
      ratio: perSecond / 60,
    },
  ];
}

function scrolled(page: Page): Promise<{ frames: number; moved: number }> {
  return page.evaluate(async (ms) => {
    const began = performance.now();
    let frames = 0;
    for (let now = began; now - began < ms; now = performance.now()) {
      scrollBy(0, 140);
      frames += 1;
      await new Promise((resolve) => requestAnimationFrame(resolve));
    }
    return { frames, moved: scrollY };
  }, scrollMs);
}
