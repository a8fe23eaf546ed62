/** Cups that would all give at once are carried to the cellar, each with one tap. */
import { expect } from '@playwright/test';
import { awayDays, manyAtOnce, on, twoRooms } from '../simulation/two-rooms.ts';
import { accessFaults, faultsOf, openScreen, settled, shoot } from './page.ts';
import { logbookFile, test } from './static-host.ts';

test('today says which cup to carry where, and one tap writes it down', async ({ page }, info) => {
  const faults = faultsOf(page);
  await page.clock.setFixedTime(new Date(`${on}T12:00:00Z`));
  await page.goto('./#/settings');
  await settled(page);
  const drafts = [...twoRooms(manyAtOnce), awayDays];
  await page.getByLabel('Bring a logbook in').setInputFiles(logbookFile(drafts));
  await expect(page.getByText(`${drafts.length} entries read.`)).toBeVisible();
  await openScreen(page, 'today');
  const move = page
    .getByRole('listitem')
    .filter({ hasText: /Move C\d to Cellar/ })
    .first();
  await expect(move).toBeVisible({ timeout: 60_000 });
  await expect(move).toContainText('days later');
  await expect(page.getByText(/^Order /)).toHaveCount(0);
  await shoot(page, info, 'move');
  expect(await accessFaults(page)).toEqual([]);
  await openScreen(page, 'plan');
  await expect(page.getByText(/^Move C\d to Cellar/).first()).toBeVisible({ timeout: 60_000 });
  await openScreen(page, 'today');
  await move.getByRole('button', { name: /^Done: Move/ }).click();
  await openScreen(page, 'shelf');
  await expect(page.getByText('Cellar').first()).toBeVisible({ timeout: 60_000 });
  expect(faults.filter((fault) => !fault.includes('404'))).toEqual([]);
});
