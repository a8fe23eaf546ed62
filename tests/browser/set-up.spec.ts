import { expect } from '@playwright/test';
import { test } from './household-server.ts';
import { faultsOf, settled, shoot } from './page.ts';

test('a keeper sets up a household, gets jobs, records a harvest, and the forecast changes', async ({
  page,
  request,
}, info) => {
  test.slow();
  const faults = faultsOf(page);
  await page.goto('./#/welcome');
  await settled(page);
  await shoot(page, info, 'welcome');
  await page.getByRole('link', { name: 'Set up my household' }).click();

  await expect(page.getByRole('heading', { name: 'Who do you feed?' })).toBeVisible();
  await page.getByRole('button', { name: 'Next' }).click();
  await expect(page.getByRole('alert')).toContainText('at least one kind of animal');
  await page.getByRole('button', { name: 'froglets' }).click();
  await page.getByRole('spinbutton', { name: 'How many animals' }).fill('3');
  await shoot(page, info, 'setup-animals');

  await page.reload();
  await expect(page.getByRole('spinbutton', { name: 'How many animals' })).toHaveValue('3');
  await page.getByRole('button', { name: 'Next' }).click();

  await expect(page.getByRole('heading', { name: 'How warm is the place?' })).toBeVisible();
  await page.getByRole('spinbutton', { name: 'Usual temperature' }).fill('4');
  await page.getByRole('button', { name: 'Next' }).click();
  await expect(page.getByRole('alert')).toContainText('Flies can be kept from 10 °C to 35 °C');
  await page.getByRole('spinbutton', { name: 'Usual temperature' }).fill('24');
  await expect(page.getByText(/first flies after about \d+ days/)).toBeVisible();
  await shoot(page, info, 'setup-warmth');
  await page.getByRole('button', { name: 'Next' }).click();

  await page.getByRole('button', { name: 'Saturday' }).click();
  await page.getByRole('button', { name: 'Next' }).click();

  await page.getByRole('button', { name: 'I have running cups' }).click();
  await page.getByRole('spinbutton', { name: 'How many like this' }).fill('2');
  await page.getByRole('spinbutton', { name: 'Started about … ago' }).fill('15');
  await shoot(page, info, 'setup-cups');
  await page.getByRole('button', { name: 'Next' }).click();

  await page.getByLabel('Hardly ever short').check();
  await shoot(page, info, 'setup-safety');
  await page.getByRole('button', { name: 'Make my plan' }).click();

  await expect(page.getByRole('heading', { name: 'To do today' })).toBeVisible();
  await expect(page.locator('.spine > li').first()).toBeVisible({ timeout: 40_000 });
  await settled(page);
  await shoot(page, info, 'first-jobs');

  await page.goto('./#/forecast');
  await settled(page);
  const before = await page.locator('.readout').innerText();
  expect(before).toContain('Wanted 45');

  await page.getByRole('navigation').getByRole('button', { name: 'Record' }).filter({ visible: true }).click();
  await page.getByRole('button', { name: 'Harvested', exact: true }).click();
  await page.getByRole('button', { name: 'M1', exact: true }).click();
  await page.getByRole('spinbutton', { name: 'Flies, about' }).fill('120');
  await page.getByRole('button', { name: 'Write it down' }).click();
  await expect(page.getByText('Written: harvested 120 from M1')).toBeVisible();
  await expect.poll(() => page.locator('.readout').innerText(), { timeout: 40_000 }).not.toBe(before);
  await shoot(page, info, 'forecast-after-harvest');

  // What was written reached the household's own file by way of the server.
  await expect
    .poll(async () => (await (await request.get('api/v1/entries')).text()).includes('"flies":120'), { timeout: 20_000 })
    .toBe(true);
  expect(faults).toEqual([]);

  // Undo keeps the entry readable, struck out.
  await page.getByRole('button', { name: 'Undo' }).click();
  await page.goto('./#/logbook');
  await expect(page.locator('li.struck').first()).toContainText('M1 harvested: 120 flies');
});
