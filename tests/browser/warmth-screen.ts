/** The screen about warmth of a small household that was brought in, and logger files given to it. */
import { expect, type Page } from '@playwright/test';
import { openScreen, settled } from './page.ts';
import { logbookFile, smallHousehold, today } from './static-host.ts';

export async function bringLogbook(page: Page): Promise<void> {
  await page.goto('./#/settings');
  await settled(page);
  await page.getByLabel('Bring a logbook in').setInputFiles(logbookFile(smallHousehold(today())));
  await expect(page.getByText('6 entries read.')).toBeVisible();
  await openScreen(page, 'temperature');
  await expect(page.getByRole('heading', { name: 'The clock of each cup' })).toBeVisible({ timeout: 40_000 });
}

export const chooseFile = (page: Page, name: string, text: string) =>
  page.getByLabel('Choose a file').setInputFiles({ name, mimeType: 'text/csv', buffer: Buffer.from(text) });
