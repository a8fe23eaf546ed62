import { readFile } from 'node:fs/promises';
import { expect, type Page } from '@playwright/test';
import { faultsOf, settled } from './page.ts';
import { logbookFile, smallHousehold, test, today } from './static-host.ts';

const daysBefore = (days: number) => new Date(Date.parse(today()) - days * 86_400_000).toISOString().slice(0, 10);

async function bringLogbook(page: Page): Promise<void> {
  await page.goto('./#/settings');
  await settled(page);
  await page.getByLabel('Bring a logbook in').setInputFiles(logbookFile(smallHousehold(today())));
  await expect(page.getByText('6 entries read.')).toBeVisible();
}

async function record(page: Page): Promise<void> {
  await page.getByRole('navigation').getByRole('button', { name: 'Record' }).filter({ visible: true }).click();
}

test('a logbook lives on the device alone: brought in, written, corrected, undone and taken away as a file', async ({
  page,
}) => {
  const faults = faultsOf(page);
  await bringLogbook(page);
  await page.goto('./#/logbook');
  await settled(page);

  await record(page);
  await page.getByRole('button', { name: 'Harvested', exact: true }).click();
  await page.getByRole('button', { name: 'M1', exact: true }).click();
  await page.getByRole('spinbutton', { name: 'Flies, about' }).fill('70');
  // The page goes away in the middle of the form.
  await page.reload();
  await expect(page.getByText('This is what you typed before')).toBeVisible();
  await expect(page.getByRole('spinbutton', { name: 'Flies, about' })).toHaveValue('70');
  await page.getByRole('button', { name: 'Write it down' }).click();
  await expect(page.getByText('M1 harvested: 70 flies.')).toBeVisible();

  await page.getByRole('button', { name: 'Change: M1 harvested: 70 flies.' }).click();
  await expect(page.getByRole('spinbutton', { name: 'Flies, about' })).toHaveValue('70');
  await page.getByRole('spinbutton', { name: 'Flies, about' }).fill('90');
  await page.getByRole('button', { name: 'Correct it' }).click();
  await expect(page.getByText('Corrected to: M1 harvested: 90 flies.')).toBeVisible();
  await expect(page.locator('li.struck')).toContainText('M1 harvested: 70 flies.');
  await page.getByRole('button', { name: 'Undo' }).click();
  await expect(page.locator('li.struck')).toContainText('Corrected to: M1 harvested: 90 flies.');

  await page.getByRole('button', { name: 'Strike out: M1 harvested: 70 flies.' }).click();
  await page.getByRole('button', { name: 'Put back: M1 harvested: 70 flies.' }).click();
  await expect(page.getByRole('button', { name: 'Change: M1 harvested: 70 flies.' })).toBeVisible();

  // A start out of a paper notebook: with its own day and label, from a cup of that day.
  await page.goto('./#/start');
  await page.getByLabel('Started on').fill(daysBefore(3));
  await page.getByLabel('Label', { exact: true }).fill('Shelf 3b');
  await page.getByRole('button', { name: 'Started: write down Shelf 3b' }).click();
  await expect(page.getByRole('heading', { name: 'To do today' })).toBeVisible();

  await page.goto('./#/settings');
  const download = page.waitForEvent('download');
  await page.getByRole('button', { name: 'Take the logbook away' }).click();
  const text = await readFile(await (await download).path(), 'utf8');
  const lines = text
    .split('\n')
    .filter(Boolean)
    .map((line) => JSON.parse(line) as { kind: string });
  expect(
    lines
      .slice(6)
      .map(({ kind }) => kind)
      .sort(),
  ).toEqual(['amended', 'amended', 'amended', 'amended', 'harvested', 'started']);
  expect(lines).toContainEqual(expect.objectContaining({ culture: 'shelf-3b', label: 'Shelf 3b', on: daysBefore(3) }));
  expect(faults.filter((fault) => !fault.includes('404'))).toEqual([]);
});

test('cups are moved to a new place, and likely work is two taps away', async ({ page }) => {
  await bringLogbook(page);
  await page.goto('./#/logbook');
  await record(page);
  await page.getByRole('button', { name: 'Moved', exact: true }).click();
  await page.getByRole('button', { name: 'M2', exact: true }).click();
  await page.getByRole('button', { name: 'M3', exact: true }).click();
  await page.getByRole('button', { name: 'another place…' }).click();
  await page.getByLabel('Name of that place').fill('Cellar');
  await page.getByRole('button', { name: 'Write it down' }).click();
  await expect(page.getByText('M2 moved to Cellar.')).toBeVisible();
  await expect(page.getByText('M3 moved to Cellar.')).toBeVisible();

  for (const [offer, written] of [
    [/^Feed Newts/, /Newts fed|M1 harvested/],
    [/^Started /, /M4 started/],
    [/look as expected|looks as expected/, /looked at/],
  ] as const) {
    await record(page);
    await page.locator('.likely').getByRole('button', { name: offer }).first().click();
    await expect(page.locator('.sentence').filter({ hasText: written }).first()).toBeVisible();
  }
});
