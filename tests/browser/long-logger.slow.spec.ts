import { expect } from '@playwright/test';
import { test } from './static-host.ts';
import { bringLogbook, chooseFile } from './warmth-screen.ts';

const lines = 1_000_000;

test('a file of a million lines takes seconds, and the page goes on', async ({ page }) => {
  await bringLogbook(page);
  const start = Date.UTC(2024, 0, 1);
  const rows = Array.from({ length: lines }, (_, i) => {
    const at = new Date(start + 60_000 * i).toISOString();
    return `${at.slice(0, 10)} ${at.slice(11, 16)};${(21 + 3 * Math.sin(i / 229)).toFixed(2)}`;
  });
  const startedAt = Date.now();
  await chooseFile(page, 'long.csv', `time;room C\n${rows.join('\n')}`);
  // Frames that the page drew while the worker read: it was never still for long.
  const longestStill = page.evaluate(async () => {
    let [last, longest] = [performance.now(), 0];
    while (!document.body.innerText.includes('readings of')) {
      await new Promise((resolve) => setTimeout(resolve, 10));
      longest = Math.max(longest, performance.now() - last);
      last = performance.now();
    }
    return longest;
  });
  await expect(page.getByText(/1,000,000 readings of 1,000,000 lines/)).toBeVisible({ timeout: 60_000 });
  expect(Date.now() - startedAt).toBeLessThan(40_000);
  expect(await longestStill).toBeLessThan(1000);
});
