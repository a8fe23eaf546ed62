/** The screens of the kitchen, the paper and the strains: axe, width, and nothing that fails on the way. */
import { expect } from '@playwright/test';
import { test } from './household-server.ts';
import { accessFaults, answered, enterDemo, faultsOf, shoot } from './page.ts';

const houseScreens = ['kitchen', 'mix', 'recipes', 'paper/sitter', 'ending', 'strains', 'lines', 'cross'] as const;

test('the screens of the house are free of faults, narrow enough, and fetched without an error', async ({
  page,
}, info) => {
  test.setTimeout(180_000);
  const colorScheme = info.project.name === 'phone' ? 'light' : 'dark';
  await page.emulateMedia({ colorScheme, reducedMotion: 'reduce' });
  const errors = faultsOf(page);
  await enterDemo(page);
  const found: Record<string, unknown> = {};
  for (const screen of houseScreens) {
    await answered(page, screen);
    const wide = await page.evaluate(() => document.documentElement.scrollWidth - document.documentElement.clientWidth);
    const faults = [...(await accessFaults(page)), ...(wide > 0 ? [`${wide} px too wide`] : [])];
    if (faults.length > 0) found[screen] = faults;
    await shoot(page, info, `${colorScheme}-${screen.replace('/', '-')}`);
  }
  expect(found).toEqual({});
  expect(errors).toEqual([]);
});
