import { expect, type Page } from '@playwright/test';
import { test } from './household-server.ts';
import { settled } from './page.ts';

async function writeNote(page: Page, text: string): Promise<void> {
  await page.getByRole('navigation').getByRole('button', { name: 'Record' }).filter({ visible: true }).click();
  await page.getByRole('button', { name: 'Note', exact: true }).click();
  await page.getByRole('textbox', { name: 'Note' }).fill(text);
  await page.getByRole('button', { name: 'Write it down' }).click();
  await expect(page.getByText('Written: a note')).toBeVisible();
}

test('what is written without network is kept on the device and reaches the server later', async ({
  page,
  context,
  request,
}, info) => {
  test.slow();
  const text = `in the cellar, ${info.project.name}`;
  const onServer = async () => (await (await request.get('api/v1/entries')).text()).includes(text);
  const animals = {
    kind: 'group',
    group: 'newts',
    name: 'Newts',
    count: 2,
    fliesPerFeeding: 10,
    strain: 'melanogaster',
    on: '2026-01-01',
  };
  await request.post('api/v1/entries', { data: { entries: [animals] } });

  await page.goto('./#/logbook');
  await settled(page);
  await page.evaluate(() => navigator.serviceWorker.ready);
  await page.reload();
  await settled(page);

  await context.setOffline(true);
  await writeNote(page, text);
  await page.reload();
  await settled(page);
  await expect(page.getByText(text)).toBeVisible();
  expect(await onServer()).toBe(false);

  await context.setOffline(false);
  await expect.poll(onServer, { timeout: 30_000 }).toBe(true);
});

test('what one device writes appears on the other without a reload', async ({ page, browser, baseURL }, info) => {
  test.slow();
  const text = `from the other device, ${info.project.name}`;
  await page.goto('./#/logbook');
  await settled(page);
  const other = await (await browser.newContext({ baseURL: baseURL ?? '' })).newPage();
  await other.goto('./#/logbook');
  await settled(other);
  await writeNote(other, text);
  await expect(page.getByText(text)).toBeVisible({ timeout: 20_000 });
  await other.context().close();
});
