/** Long journeys of a keeper: days go by on the page's clock. Run by `npm run test:slow`. */
import { readFile } from 'node:fs/promises';
import { expect, type Page } from '@playwright/test';
import { settled } from './page.ts';
import { logbookFile, smallHousehold, test, today } from './static-host.ts';

const noonOf = (days: number) => new Date(Date.parse(`${today()}T11:00:00Z`) + days * 86_400_000);
const day = (days: number) => noonOf(days).toISOString().slice(0, 10);

test.beforeEach(() => test.setTimeout(900_000));

async function bringIn(page: Page, drafts: object[]): Promise<void> {
  await page.goto('./#/settings');
  await settled(page);
  await page.getByLabel('Bring a logbook in').setInputFiles(logbookFile(drafts));
  await expect(page.getByText(/entries read/)).toBeVisible({ timeout: 120_000 });
}

/** The page as it is opened on the morning so many days from now. */
async function openOn(page: Page, days: number): Promise<void> {
  await page.clock.setFixedTime(noonOf(days));
  await page.goto('./#/today');
  await page.reload();
  await dayShown(page);
}

/** The day's work stands there, or that there is none; nothing is being worked out any more. */
async function dayShown(page: Page): Promise<void> {
  await expect(page.locator('.spine > li').first().or(page.getByText('Nothing to do today.'))).toBeVisible({
    timeout: 120_000,
  });
  await jobsShown(page);
}

async function jobsShown(page: Page): Promise<void> {
  await expect(page.getByRole('heading', { level: 1 })).toBeVisible();
  await expect(page.getByText(/^Working (it )?out/)).toHaveCount(0, { timeout: 120_000 });
}

async function tickAll(page: Page): Promise<void> {
  const ticks = page
    .locator('.spine > li:not(.done)')
    .filter({ hasNot: page.getByRole('button', { name: /checklist|Write it down/ }) });
  for (let left = await ticks.count(); left > 0; left = await ticks.count()) {
    await ticks
      .first()
      .getByRole('button', { name: /^Done:/ })
      .click();
    await expect(ticks).toHaveCount(left - 1, { timeout: 120_000 });
    await jobsShown(page);
  }
}

async function exported(page: Page): Promise<{ kind: string; on: string }[]> {
  await page.goto('./#/settings');
  const download = page.waitForEvent('download');
  await page.getByRole('button', { name: 'Take the logbook away' }).click();
  const text = await readFile(await (await download).path(), 'utf8');
  return text
    .split('\n')
    .filter(Boolean)
    .map((line) => JSON.parse(line) as { kind: string; on: string });
}

test('a week of keeping: every morning the jobs are there, are ticked off and stay written', async ({ page }) => {
  await page.clock.setFixedTime(noonOf(0));
  await bringIn(page, smallHousehold(today()));
  for (let days = 0; days < 7; days++) {
    await openOn(page, days);
    await tickAll(page);
    const start = page.getByRole('button', { name: 'Open the checklist' });
    if ((await start.count()) > 0) {
      await start.first().click();
      await page.getByRole('button', { name: /^Started: write down/ }).click();
      await jobsShown(page);
    }
  }
  const entries = await exported(page);
  const fedOn = new Set(entries.filter(({ kind }) => ['fed', 'harvested'].includes(kind)).map(({ on }) => on));
  expect([...fedOn].sort()).toEqual(Array.from({ length: 7 }, (_, i) => day(i)));
  expect(entries.filter(({ kind, on }) => kind === 'started' && on >= today()).length).toBeGreaterThan(0);
});

test('a supply crashes, and the purchase that the page asks for closes the gap', async ({ page }) => {
  await page.clock.setFixedTime(noonOf(0));
  await bringIn(
    page,
    smallHousehold(today()).filter((each) => !['M2', 'M3'].includes((each as { culture?: string }).culture ?? '')),
  );
  await openOn(page, 0);
  await page.goto('./#/culture/M1');
  await page.getByRole('button', { name: 'Thrown out', exact: true }).click();
  await page.getByRole('button', { name: 'died out' }).click();
  await page.getByRole('button', { name: 'Write it down' }).click();
  await page.goto('./#/today');
  await dayShown(page);
  const order = page.getByRole('button', { name: /^Done: Order/ });
  await expect(order.first()).toBeVisible({ timeout: 120_000 });
  await order.first().click();
  await expect(page.getByText(/^Written: Order/)).toBeVisible();
  await jobsShown(page);

  const unpack = page.locator('.spine > li').filter({ hasText: 'Unpack' });
  for (let days = 1; days <= 14 && (await unpack.count()) === 0; days++) await openOn(page, days);
  await unpack.first().getByRole('button', { name: 'Write it down' }).click();
  await page.getByRole('dialog').getByRole('button', { name: 'Write it down' }).click();
  await expect(page.getByRole('dialog')).toHaveCount(0);
  await expect(page.locator('.figure strong').first()).not.toHaveText('about 0 flies', { timeout: 120_000 });
  expect((await exported(page)).filter(({ kind }) => kind === 'bought').length).toBeGreaterThan(0);
});

test('five thousand cups are scrolled, searched, and a hundred of them written down at once', async ({ page }) => {
  const [household, ...rest] = smallHousehold(today()).slice(0, 3);
  const cups = Array.from({ length: 5000 }, (_, i) => ({
    kind: 'started',
    on: day(-(i % 24) - 1),
    culture: `C${i + 1}`,
    strain: 'melanogaster',
    founders: 50,
    place: 'shelf',
  }));
  await bringIn(page, [household as object, ...rest, ...cups]);
  await page.goto('./#/shelf');
  await expect(page.locator('.rows li a').first()).toBeVisible({ timeout: 300_000 });
  await page.evaluate(() => scrollTo(0, document.body.scrollHeight));
  await expect(page.locator('.rows li a').last()).toBeVisible();
  expect(await page.locator('.rows li').count()).toBeLessThan(60);

  await page.getByLabel('Find a cup').fill('C49');
  await page.getByRole('button', { name: 'Choose several' }).click();
  await page.getByRole('button', { name: 'All 111 shown' }).click();
  await page.getByRole('button', { name: 'Thrown out', exact: true }).click();
  await page.getByRole('dialog').getByRole('button', { name: 'Write it down' }).click();
  await expect(page.getByText(/Written: threw out C49.* and 105 others/)).toBeVisible({ timeout: 120_000 });
});
