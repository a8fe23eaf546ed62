import { expect } from '@playwright/test';
import { test } from './household-server.ts';
import { accessFaults, enterDemo, faultsOf, openScreen, screens, settled, shoot } from './page.ts';

test('the demo is one tap away and as easily left', async ({ page, request }) => {
  const faults = faultsOf(page);
  const kept = (await (await request.get('api/v1/entries')).text()).length;
  await enterDemo(page);
  await settled(page);
  const job = page.locator('.spine > li').first();
  const name = await job.locator('.title').innerText();
  await job.getByRole('button', { name: /^Done:/ }).click();
  await expect(page.getByText(`Written: ${name.trim()}`)).toBeVisible();
  await expect(page.getByRole('button', { name: `Hide: ${name.trim()}` })).toBeVisible({ timeout: 40_000 });
  await page.getByRole('button', { name: 'Leave the demo' }).click();
  await expect(page.getByRole('link', { name: 'Set up my household' })).toBeVisible();
  expect((await (await request.get('api/v1/entries')).text()).length).toBe(kept);
  expect(faults).toEqual([]);
});

for (const colorScheme of ['light', 'dark'] as const) {
  test(`every screen in ${colorScheme} is free of faults that axe can find`, async ({ page }, info) => {
    test.setTimeout(180_000);
    await page.emulateMedia({ colorScheme, reducedMotion: 'reduce' });
    const faults: Record<string, string[]> = {};
    await page.goto('./#/welcome');
    await settled(page);
    faults['welcome'] = await accessFaults(page);
    await enterDemo(page);
    for (const screen of screens) {
      await openScreen(page, screen);
      faults[screen] = await accessFaults(page);
      await shoot(page, info, `${colorScheme}-${screen}`);
    }
    await openScreen(page, 'shelf');
    await page.locator('main a[href*="culture/"]').first().click();
    await settled(page);
    faults['culture'] = await accessFaults(page);
    await shoot(page, info, `${colorScheme}-culture`);
    await page.getByRole('navigation').getByRole('button', { name: 'Record' }).filter({ visible: true }).click();
    faults['record'] = await accessFaults(page);
    await page.getByRole('button', { name: 'Looked at', exact: true }).last().click();
    faults['seen'] = await accessFaults(page);
    await shoot(page, info, `${colorScheme}-record-seen`);
    await page.keyboard.press('Escape');
    await openScreen(page, 'setup');
    faults['setup'] = await accessFaults(page);
    expect(Object.fromEntries(Object.entries(faults).filter(([, found]) => found.length > 0))).toEqual({});
  });
}

test('a what-if answers while the slider moves, and leaves nothing behind', async ({ page }) => {
  await enterDemo(page);
  await openScreen(page, 'forecast');
  const table = async () => page.locator('.readout').innerText();
  const before = await table();
  await page.getByLabel('the animals ate').fill('200');
  await expect(page.getByText('The picture shows the what-if')).toBeVisible({ timeout: 40_000 });
  await expect.poll(table).not.toBe(before);
  await page.getByRole('button', { name: 'Back to how it is' }).click();
  await expect.poll(table).toBe(before);
});

test('everything can be done with the keyboard', async ({ page }) => {
  await page.goto('./#/welcome');
  await settled(page);
  await page.keyboard.press('Tab');
  await expect(page.getByRole('link', { name: 'Skip to the page' })).toBeFocused();
  await page.keyboard.press('Enter');
  await expect(page.locator('main')).toBeFocused();
  await page.keyboard.press('Tab');
  await page.keyboard.press('Tab');
  await page.keyboard.press('Enter');
  await expect(page.getByRole('heading', { name: 'To do today' })).toBeVisible();
  await settled(page);
  const tick = page.getByRole('button', { name: /^Done:/ }).first();
  for (let i = 0; i < 12 && !(await tick.evaluate((node) => node === document.activeElement)); i++)
    await page.keyboard.press('Tab');
  await expect(tick).toBeFocused();
  await page.keyboard.press('Enter');
  await expect(page.getByText(/^Written:/)).toBeVisible();
});

test('nothing is wider than a small screen, and targets are large enough for a thumb', async ({ page }) => {
  test.setTimeout(120_000);
  await page.setViewportSize({ width: 320, height: 640 });
  await enterDemo(page);
  for (const screen of screens) {
    await openScreen(page, screen);
    const { wide, small } = await page.evaluate(() => {
      const visible = [
        ...document.querySelectorAll('button, .button, nav a, summary, select, input:not(.visually-hidden)'),
      ].filter((node) => (node as HTMLElement).offsetParent !== null);
      return {
        wide: document.documentElement.scrollWidth,
        small: visible
          .map((node) => ({
            what: node.outerHTML.slice(0, 90),
            box: node.getBoundingClientRect(),
            type: (node as HTMLInputElement).type,
          }))
          .filter(({ box, type }) => box.height > 0 && box.height < 44 && !['checkbox', 'radio'].includes(type))
          .map(({ what, box }) => `${Math.round(box.height)} px: ${what}`),
      };
    });
    expect(wide, `${screen} is ${wide} px wide`).toBeLessThanOrEqual(320);
    expect(small, screen).toEqual([]);
  }
});

test('the second language is complete on the page', async ({ page }) => {
  await enterDemo(page);
  await page.goto('./#/settings');
  await page.getByRole('button', { name: 'Deutsch' }).click();
  await expect(page.getByRole('heading', { name: 'Einstellungen' })).toBeVisible();
  await page.goto('./#/today');
  await expect(page.getByRole('heading', { name: 'Heute zu tun' })).toBeVisible();
  await expect(page.locator('html')).toHaveAttribute('lang', 'de');
});
