/** A Chromium for a bench, and a page of it that watches its own main thread. */
import { existsSync } from 'node:fs';
import { type Browser, chromium, type Page } from '@playwright/test';

const named = process.env.CHROMIUM_PATH ?? '/usr/bin/chromium';
const asRoot = process.getuid?.() === 0 ? ['--no-sandbox'] : [];

export function launched(args: string[] = []): Promise<Browser> {
  const program = existsSync(named) ? { executablePath: named } : {};
  return chromium.launch({ ...program, args: [...asRoot, '--disable-gpu', '--no-first-run', ...args] });
}

export async function withBrowser<T>(work: (browser: Browser) => Promise<T>): Promise<T> {
  const browser = await launched();
  try {
    return await work(browser);
  } finally {
    await browser.close();
  }
}

/** A phone that notes every task over 50 ms on its main thread, and when it first showed a job. */
export async function watchedPage(browser: Browser, baseURL: string): Promise<Page> {
  const context = await browser.newContext({
    baseURL,
    viewport: { width: 390, height: 844 },
    locale: 'en-GB',
    serviceWorkers: 'block',
  });
  const page = await context.newPage();
  await page.addInitScript(() => {
    const seen = { longTasks: [] as number[], firstJobMs: 0, wholeListMs: 0 };
    Object.assign(window, { seen });
    new PerformanceObserver((list) => {
      for (const entry of list.getEntries()) seen.longTasks.push(entry.duration);
    }).observe({ type: 'longtask', buffered: true });
    new MutationObserver(() => {
      if (seen.firstJobMs === 0 && document.querySelector('.spine > li')) seen.firstJobMs = performance.now();
      // What is coming is known only once the plan is.
      if (seen.wholeListMs === 0 && document.querySelector('.coming > li')) seen.wholeListMs = performance.now();
    }).observe(document, { childList: true, subtree: true });
  });
  return page;
}

interface Watched extends Window {
  seen: { longTasks: number[]; firstJobMs: number; wholeListMs: number };
}

/** The longest task since the last call, ms; 0 when none took 50 ms. */
export function longestTaskMs(page: Page): Promise<number> {
  return page.evaluate(() => Math.max(0, ...(window as unknown as Watched).seen.longTasks.splice(0)));
}

export function firstJobMs(page: Page): Promise<number> {
  return page.evaluate(() => (window as unknown as Watched).seen.firstJobMs);
}

export function wholeListMs(page: Page): Promise<number> {
  return page.evaluate(() => (window as unknown as Watched).seen.wholeListMs);
}

export async function enterDemo(page: Page): Promise<void> {
  await page.goto('./#/welcome');
  await page.getByRole('button', { name: 'Look around in the demo' }).click();
  await page.locator('.spine > li').first().waitFor({ timeout: 120_000 });
}

/** Nothing is being worked out any more. */
export async function settled(page: Page): Promise<void> {
  await page.waitForFunction(() => !/Working (it )?out/.test(document.body.innerText), null, { timeout: 240_000 });
}

export function median(values: readonly number[]): number {
  return [...values].sort((a, b) => a - b)[Math.floor(values.length / 2)] ?? Number.NaN;
}

export function verdict(target: string, holds: boolean): string {
  return holds ? target : `${target} (MISSED)`;
}
