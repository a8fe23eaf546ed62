/** The life of one cup: it answers to its sliders, says why, shows its numbers, and begins as a cup was made. */
import { expect } from '@playwright/test';
import { settled } from './page.ts';
import { logbookFile, smallHousehold, test, today } from './static-host.ts';

const firstFlies = /First flies on day (\d+)/;

test('the life of a cup answers to warmth and kind of fly, with its reckoning and its numbers', async ({ page }) => {
  await page.goto('./#/settings');
  await settled(page);
  await page.getByLabel('Bring a logbook in').setInputFiles(logbookFile(smallHousehold(today())));
  await expect(page.getByText('6 entries read.')).toBeVisible();
  await page.goto('./#/lifecycle/M2');
  const summary = page.locator('.meaning');
  const day = async () => Number(firstFlies.exec(await summary.innerText())?.[1]);
  await expect(summary).toHaveText(firstFlies, { timeout: 40_000 });
  // The place of M2 is kept at 24 degrees.
  const warmth = page.getByLabel('In the cup');
  await expect(warmth).toHaveValue('24');
  const at24 = await day();
  await warmth.fill('18');
  await expect.poll(day).toBeGreaterThan(at24 + 5);
  const at18 = await day();
  await page.getByRole('button', { name: 'hydei', exact: true }).click();
  await expect.poll(day).toBeGreaterThan(at18);
  await warmth.fill('24');
  await expect(page.getByRole('img', { name: firstFlies })).toBeVisible();
  await page.getByText('Why: Life of a cup').click();
  await expect(page.getByText('Nothing of your log is in it.')).toBeVisible();
  await page.getByText('The numbers as a table').click();
  await expect(page.locator('figure tbody tr').nth(20)).toBeVisible();
  await page.getByRole('link', { name: 'Back to M2' }).click();
  await expect(page.getByRole('heading', { level: 1, name: 'M2' })).toBeVisible();
});
