/** Three days in a cellar without network, on the page's own clock; then the way back. */
import { expect, type Page } from '@playwright/test';
import { test } from './household-server.ts';
import { settled } from './page.ts';

const noonIn = (days: number) => new Date(Date.now() + days * 86_400_000);

async function writeNote(page: Page, text: string): Promise<void> {
  await page.getByRole('navigation').getByRole('button', { name: 'Record' }).filter({ visible: true }).click();
  await page.getByRole('button', { name: 'Note', exact: true }).click();
  await page.getByRole('textbox', { name: 'Note' }).fill(text);
  await page.getByRole('button', { name: 'Write it down' }).click();
  await expect(page.getByText('Written: a note')).toBeVisible();
}

test('three days without network are kept, shown as waiting, and sent when the network is back', async ({
  page,
  context,
  request,
}) => {
  test.setTimeout(600_000);
  const group = { kind: 'group', group: 'newts', name: 'Newts', count: 2, fliesPerFeeding: 10, strain: 'melanogaster' };
  await request.post('api/v1/entries', { data: { entries: [{ ...group, on: '2026-01-01' }] } });
  await page.goto('./#/logbook');
  await settled(page);
  await page.evaluate(() => navigator.serviceWorker.ready);
  await page.reload();
  await settled(page);
  await context.setOffline(true);
  for (const days of [1, 2, 3]) {
    await page.clock.setFixedTime(noonIn(days));
    await page.reload();
    await settled(page);
    await writeNote(page, `day ${days} in the cellar`);
    await writeNote(page, `day ${days} again`);
  }
  await expect(page.getByText(/entries wait on this device/)).toBeVisible();
  for (const days of [1, 2, 3]) await expect(page.getByText(`day ${days} in the cellar`)).toBeVisible();
  await context.setOffline(false);
  const onServer = async () =>
    [...(await (await request.get('api/v1/entries')).text()).matchAll(/day \d (in the cellar|again)/g)].length;
  await expect.poll(onServer, { timeout: 60_000 }).toBe(6);
});
