import { expect } from '@playwright/test';
import { settled } from './page.ts';
import { logbookFile, smallHousehold, test, today } from './static-host.ts';

test('a spreadsheet is matched, shown, written as one act and taken back as one', async ({ page }) => {
  await page.goto('./#/settings');
  await settled(page);
  await page.getByLabel('Bring a logbook in').setInputFiles(logbookFile(smallHousehold(today())));
  await expect(page.getByText('6 entries read.')).toBeVisible();

  const csv = 'Box,Made,Species,Adults in,Remark\nK1,3/4/2026,melanogaster,40,first\nK2,5/4/2026,melanogaster,60,\n';
  const file = { name: 'cups.csv', mimeType: 'text/csv', buffer: Buffer.from(csv) };
  await page.getByLabel('Bring a logbook in').setInputFiles(file);
  await expect(page.getByRole('heading', { name: 'What cups.csv holds' })).toBeVisible();
  await page.getByLabel('Box').selectOption('culture');
  await page.getByRole('button', { name: 'month, day, year' }).click();
  await page.getByText('The first of them').click();
  await expect(page.getByText('Wed 4 Mar 2026 · K1 started')).toBeVisible();
  await page.getByRole('button', { name: 'day, month, year' }).click();
  await expect(page.getByText('Fri 3 Apr 2026 · K1 started')).toBeVisible();
  await page.getByRole('button', { name: 'Write these 2 entries' }).click();

  await expect(page.locator('.sentence', { hasText: 'K1 started' })).toBeVisible();
  await page.getByRole('button', { name: 'Undo' }).click();
  await expect(page.locator('li.struck .sentence', { hasText: /K[12] started/ })).toHaveCount(2);
});
