/** What only a desk does: printing, and a page at twice its size. Run by `npm run test:slow`. */
import { expect, type Page } from '@playwright/test';
import { settled } from './page.ts';
import { logbookFile, smallHousehold, test, today } from './static-host.ts';

test.beforeEach(() => test.setTimeout(600_000));

async function bringIn(page: Page, drafts: object[]): Promise<void> {
  await page.goto('./#/settings');
  await settled(page);
  await page.getByLabel('Bring a logbook in').setInputFiles(logbookFile(drafts));
  await expect(page.getByText(/entries read/)).toBeVisible({ timeout: 120_000 });
}

async function jobsShown(page: Page): Promise<void> {
  await expect(page.getByRole('heading', { level: 1 })).toBeVisible();
  await expect(page.getByText(/^Working (it )?out/)).toHaveCount(0, { timeout: 120_000 });
}

test('what hangs on the fridge: the day and the shelf print on paper, in black on white, without the buttons', async ({
  page,
}) => {
  await bringIn(page, smallHousehold(today()));
  for (const screen of ['today', 'shelf', 'forecast', 'plan']) {
    await page.goto(`./#/${screen}`);
    await jobsShown(page);
    await page.emulateMedia({ media: 'print', colorScheme: 'dark' });
    await expect(page.getByRole('navigation').filter({ visible: true })).toHaveCount(0);
    expect(await page.evaluate(() => getComputedStyle(document.documentElement).backgroundColor)).toBe(
      'rgb(255, 255, 255)',
    );
    const paper = (await page.pdf({ format: 'A4', preferCSSPageSize: true })).toString('latin1');
    expect([...paper.matchAll(/\/Type\s*\/Page\b/g)].length, screen).toBeLessThanOrEqual(4);
    await page.emulateMedia({ media: 'screen' });
  }
});

test('at twice the size nothing scrolls sideways', async ({ page }) => {
  await page.setViewportSize({ width: 640, height: 400 });
  await bringIn(page, smallHousehold(today()));
  for (const screen of [
    'today',
    'shelf',
    'forecast',
    'plan',
    'animals',
    'logbook',
    'learned',
    'settings',
    'start',
    'scan',
    'more',
  ]) {
    await page.goto(`./#/${screen}`);
    await jobsShown(page);
    expect(await page.evaluate(() => document.documentElement.scrollWidth), screen).toBeLessThanOrEqual(640);
  }
});
