import { expect } from '@playwright/test';
import { accessFaults, faultsOf } from './page.ts';
import { test, today } from './static-host.ts';
import { bringLogbook, chooseFile } from './warmth-screen.ts';

/** Six readings an hour of the first days of this month, with two columns that could be the room. */
function loggerText(days: number): string {
  const month = today().slice(0, 7);
  const two = (n: number) => String(n).padStart(2, '0');
  const rows = Array.from({ length: 144 * days }, (_, i) => {
    const at = `${month}-${two(1 + Math.floor(i / 144))} ${two(Math.floor((i % 144) / 6))}:${two(10 * (i % 6))}`;
    return `${at};${(22 + 2 * Math.sin(i / 23)).toFixed(2).replace('.', ',')};8,1`;
  });
  return ['Zeit;Innen (°C);Außen (°C)', ...rows, `${month}-01 23:55;1000000000;8`, 'kein Tag;;'].join('\n');
}

test('a logger’s file is shown, asked about once, written, known again, and taken back as one act', async ({
  page,
}) => {
  const faults = faultsOf(page);
  await bringLogbook(page);
  await chooseFile(page, 'words.csv', 'Dear diary,\nit was warm\n');
  await expect(page.getByRole('alert')).toContainText('found no time');

  await chooseFile(page, 'room.csv', loggerText(1));
  await expect(page.getByText('More than one column could be it.')).toBeVisible();
  await expect(page.getByText('One line with degrees that no room has was left out.')).toBeVisible();
  await expect(page.getByText('One line without a time that can be read was left out.')).toBeVisible();
  expect(await accessFaults(page)).toEqual([]);
  await page.getByLabel('Column of the degrees').selectOption({ label: 'Innen (°C) · 22,00' });
  await expect(page.getByText('More than one column could be it.')).toHaveCount(0);
  await page.getByRole('button', { name: 'Write one day' }).click();
  await expect(page.getByText(/^Written: one day at/)).toBeVisible();

  await chooseFile(page, 'room.csv', loggerText(2));
  await expect(page.getByText('As the last file with these headings was.')).toBeVisible();
  await expect(page.getByText('One day is in the logbook already and is passed over.')).toBeVisible();
  await page.getByRole('button', { name: 'Leave it' }).click();

  await page.getByRole('button', { name: 'Take it back: room.csv' }).click();
  await expect(page.getByText('Brought in before')).toHaveCount(0);
  await chooseFile(page, 'room.csv', loggerText(2));
  await expect(page.getByRole('button', { name: 'Write 2 days' })).toBeVisible();
  expect(faults.filter((fault) => !fault.includes('404'))).toEqual([]);
});

test('limits are kept and warned of on the day’s own screen; warming shows what it does, with its caution', async ({
  page,
}) => {
  await bringLogbook(page);
  await page.getByRole('slider').first().fill('2');
  await expect(page.getByText(/hurried by|no change/).first()).toBeVisible({ timeout: 40_000 });
  await expect(page.getByText(/thermostat/)).toBeVisible();

  await page.getByText('Limits, and the warmth inside the cups').first().click();
  await page.getByRole('spinbutton', { name: 'Warn above' }).first().fill('21');
  await page
    .getByRole('button', { name: /^Save the limits of/ })
    .first()
    .click();
  await expect(page.getByText(/^Written: limits of/)).toBeVisible();
  await page.getByRole('button', { name: 'Write down a reading' }).click();
  await page.getByRole('spinbutton', { name: 'Temperature', exact: true }).fill('26');
  await page.getByRole('button', { name: 'Write it down' }).click();
  await expect(page.getByRole('heading', { name: 'Too warm or too cold' })).toBeVisible({ timeout: 40_000 });
  await page.goto('./#/today');
  await expect(page.getByText(/26 °C in the cups, above 21/)).toBeVisible({ timeout: 40_000 });
});
