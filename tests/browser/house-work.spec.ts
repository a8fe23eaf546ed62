/** One piece of work in the kitchen, with the strains and with paper, each on the page. */
import { readFileSync } from 'node:fs';
import { expect } from '@playwright/test';
import ICAL from 'ical.js';
import { test } from './household-server.ts';
import { answered, enterDemo, openScreen } from './page.ts';

test('medium is mixed, written down in two taps, and the next cup is filled from it', async ({ page }) => {
  await enterDemo(page);
  await answered(page, 'kitchen');
  await page.getByRole('link', { name: 'Mix medium' }).click();
  await page.getByRole('button', { name: /^Mixed: / }).click();
  await expect(page.getByText(/^Written: mixed .* of medium$/)).toBeVisible();
  await page.getByRole('link', { name: 'Start the cups' }).click();
  await expect(page.getByText(/^Medium from batch \d{4}-/)).toBeVisible();
  await answered(page, 'mix');
  await page.getByLabel('Preservative to add').selectOption({ label: 'methylparaben' });
  await page.getByLabel('Dose in the finished medium', { exact: true }).fill('0.9');
  await expect(page.getByText('0.9 % is a dose at which harm was measured.')).toBeVisible();
  await answered(page, 'recipes');
  await page.getByRole('button', { name: 'Make it mine' }).first().click();
  await page.getByLabel('Amount 2').fill('-5');
  await page.getByRole('button', { name: 'Save the recipe' }).click();
  await expect(page.getByText('Nothing was written.')).toBeVisible();
});

test('two strains are answered before they are mixed, and a winged fly before it is written', async ({ page }) => {
  await enterDemo(page);
  await answered(page, 'strains');
  await page.getByRole('button', { name: 'Add a strain of your own' }).click();
  await page.getByLabel('Name', { exact: true }).fill('Bare');
  await page.getByLabel('Most like').selectOption('melanogaster-apterous');
  await page.getByRole('button', { name: 'Write it down' }).click();
  await page.getByLabel('Strain 1').selectOption({ label: 'Stub-winged melanogaster' });
  await page.getByLabel('Strain 2').selectOption({ label: 'Bare' });
  await expect(page.getByText('Better not: nobody knows.')).toBeVisible({ timeout: 60_000 });
  await openScreen(page, 'start');
  await page.getByRole('button', { name: 'Flightless hydei' }).click();
  await page
    .getByRole('button', { name: /^S\d\d/ })
    .last()
    .click();
  await expect(page.getByText('No: they are two species.')).toBeVisible({ timeout: 60_000 });
  await openScreen(page, 'shelf');
  await page.locator('main a[href*="culture/S"]').last().click();
  await page.getByRole('button', { name: 'Looked at', exact: true }).click();
  await page.getByRole('button', { name: 'a winged fly' }).click();
  await expect(page.getByText(/most likely a stranger/)).toBeVisible({ timeout: 60_000 });
  await page.getByRole('button', { name: 'Write it down' }).click();
  await answered(page, 'strains');
  await expect(page.getByRole('heading', { name: 'What threatens them' })).toBeVisible({ timeout: 60_000 });
});

test('paper is shown as it will be printed, and the plan is taken away as a calendar', async ({ page }) => {
  await enterDemo(page);
  await answered(page, 'paper/labels');
  await expect(page.locator('section.paper svg').first()).toBeVisible({ timeout: 60_000 });
  const pdf = await page.pdf({ preferCSSPageSize: true });
  // One page of A4, 595 by 842 points, although the page around it is long.
  expect([...pdf.toString('latin1').matchAll(/\/Type\s*\/Page[^s]/g)]).toHaveLength(1);
  expect(pdf.toString('latin1')).toMatch(/\/MediaBox\s*\[\s*0 0 59[45]\.?\d* 84[12]/);
  await answered(page, 'paper/calendar');
  const download = page.waitForEvent('download');
  await page.getByRole('button', { name: 'Take the calendar file' }).click();
  const file = await (await download).path();
  const events = new ICAL.Component(ICAL.parse(readFileSync(file, 'utf8'))).getAllSubcomponents('vevent');
  const uids = events.map((event) => String(event.getFirstPropertyValue('uid')));
  expect(uids.length).toBeGreaterThan(3);
  expect(new Set(uids).size).toBe(uids.length);
});
