/** What the journeys through the page share: opening it, its screens, and looking at them. */
import { mkdirSync } from 'node:fs';
import { AxeBuilder } from '@axe-core/playwright';
import { expect, type Page, type TestInfo } from '@playwright/test';

export const screens = [
  'today',
  'shelf',
  'forecast',
  'plan',
  'temperature',
  'animals',
  'logbook',
  'lifecycle',
  'learned',
  'settings',
  'start',
  'scan',
  'more',
] as const;

/** Faults of the page itself, gathered from the moment of the call. */
export function faultsOf(page: Page): string[] {
  const faults: string[] = [];
  page.on('pageerror', (error) => faults.push(error.message));
  page.on('console', (message) => {
    if (message.type() === 'error') faults.push(message.text());
  });
  return faults;
}

export async function enterDemo(page: Page): Promise<void> {
  await page.goto('./#/welcome');
  await page.getByRole('button', { name: 'Look around in the demo' }).click();
  await expect(page.getByText('You are looking around in the demo.')).toBeVisible();
  await expect(page.getByRole('heading', { name: 'To do today' })).toBeVisible();
}

/** Opens a screen and waits until nothing is being worked out any more. */
export async function openScreen(page: Page, screen: string): Promise<void> {
  await page.goto(`./#/${screen}`);
  await settled(page);
}

export async function settled(page: Page): Promise<void> {
  // A sheet shown for printing brings a heading of its own, lower by aria-level, which this query does not heed.
  await expect(page.getByRole('heading', { level: 1 }).first()).toBeVisible();
  await expect(page.getByText(/^Working (it )?out/)).toHaveCount(0, { timeout: 40_000 });
}

/** Opens a screen whose question may stand behind others, and waits for its answer. */
export async function answered(page: Page, screen: string): Promise<void> {
  await openScreen(page, screen);
  await expect(page.getByText(/^(Working it out|Setting the page)/)).toHaveCount(0, { timeout: 60_000 });
}

export async function shoot(page: Page, info: TestInfo, name: string): Promise<void> {
  mkdirSync('screenshots', { recursive: true });
  await page.screenshot({ path: `screenshots/${info.project.name}-${name}.png`, fullPage: true });
}

/** Violations of WCAG 2.2 A and AA that axe finds, as short lines. */
export async function accessFaults(page: Page): Promise<string[]> {
  const tags = ['wcag2a', 'wcag2aa', 'wcag21a', 'wcag21aa', 'wcag22aa', 'best-practice'];
  const { violations } = await new AxeBuilder({ page }).withTags(tags).analyze();
  return violations.map(
    ({ id, nodes }) =>
      `${id}: ${nodes
        .slice(0, 3)
        .map((node) => node.html.slice(0, 160))
        .join(' | ')}`,
  );
}
