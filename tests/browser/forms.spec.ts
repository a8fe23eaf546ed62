/** What is typed into a form that writes an entry outlives a reload, until it is written. */
import { expect, type Page } from '@playwright/test';
import { settled } from './page.ts';
import { logbookFile, smallHousehold, test, today } from './static-host.ts';

interface Form {
  screen: string;
  /** What brings the form up. */
  opener?: string;
  field: string;
  typed: string;
}

const forms: Form[] = [
  { screen: 'animals', opener: 'Add animals', field: 'Name of the group', typed: 'Tree frogs' },
  { screen: 'animals/newts', opener: 'Change', field: 'How many animals', typed: '7' },
  { screen: 'animals', opener: 'Dusting schedule', field: 'Supplement', typed: 'Vitamin D' },
  { screen: 'strains', opener: 'Add a strain of your own', field: 'Name', typed: 'Ruby' },
  { screen: 'recipes', opener: 'Add a recipe', field: 'Name', typed: 'Plum jam' },
  { screen: 'kitchen', opener: 'Count something else', field: 'There is', typed: '321' },
  { screen: 'settings', field: 'Most cups in one go', typed: '9' },
  { screen: 'start', field: 'Founders in each', typed: '35' },
  { screen: 'paper/sitter', field: 'Whom to call', typed: 'Ada, upstairs' },
];

/** The form's field, as it is now. */
async function fieldOf(page: Page, { screen, opener, field }: Form) {
  await page.goto(`./#/${screen}`);
  await settled(page);
  if (opener) await page.getByRole('button', { name: opener, exact: true }).click();
  return page.getByLabel(field, { exact: true }).filter({ visible: true }).first();
}

test('what is typed into a form is there again after a reload', async ({ page }) => {
  await page.goto('./#/settings');
  await settled(page);
  await page.getByLabel('Bring a logbook in').setInputFiles(logbookFile(smallHousehold(today())));
  await expect(page.getByText('6 entries read.')).toBeVisible();
  for (const form of forms) {
    const field = await fieldOf(page, form);
    await field.fill(form.typed, { timeout: 15_000 });
    await field.blur();
    await page.reload();
    await expect(await fieldOf(page, form), `${form.screen}: ${form.field}`).toHaveValue(form.typed);
    await page.keyboard.press('Escape');
  }
  // What is written needs no keeping: the form begins as usual.
  const added = forms[3] as Form;
  await fieldOf(page, added);
  await page.getByRole('button', { name: 'Write it down' }).click();
  await expect(page.getByText('Written: strain Ruby')).toBeVisible();
  await expect(await fieldOf(page, added)).toHaveValue('');
});
