/** The printed sheets as Chromium prints them: pages counted in the PDF, nothing cut off, boxes to tick there. */
import { expect, type Page, test } from '@playwright/test';
import { addDays, type Day, day } from '../../src/foundation/index.ts';
import {
  givenSheet,
  type Language,
  monthSheet,
  type Sheet,
  sheetHtml,
  shelfCard,
  sitterSheet,
} from '../../src/paper/index.ts';
import { needsDebian } from '../reference/debian-program.ts';
import { readByJsqr, readByZbar } from './label-readers.ts';

const monday = day('2026-11-23');
const span = (from: number, until: number): { from: Day; until: Day } => ({
  from: addDays(monday, from),
  until: addDays(monday, until),
});

function sitter(language: Language, days: number) {
  return sitterSheet({
    language,
    household: 'Terrarium room',
    contact: '+49 170 0000000',
    days: Array.from({ length: days }, (_, i) => ({
      on: addDays(monday, i),
      feedings: [
        { group: 'Dart frogs, left tank', flies: 45, fromCups: ['H12', 'H13'] },
        ...(i % 2 === 0 ? [{ group: 'Mantis nymphs', flies: 20, fromCups: ['M31'] }] : []),
      ],
      look: i % 3 === 0 ? ['H12', 'M31'] : [],
    })),
  });
}

const given = (language: Language, calendarLink: string | null = 'http://192.168.178.20:8080/g/H12.ics') =>
  givenSheet({
    language,
    strain: 'D. hydei',
    label: 'H12',
    temperatureC: 22.5,
    startedOn: monday,
    firstFlies: span(20, 24),
    mostFlies: span(24, 33),
    founders: span(24, 30),
    throwOutOn: addDays(monday, 45),
    calendarLink,
  });

const month = (language: Language) =>
  monthSheet({
    language,
    household: 'Terrarium room',
    year: 2026,
    month: 11,
    // November 2026 has six weeks on paper; on two days of each there is much to do.
    jobs: Array.from({ length: 30 }, (_, i) => addDays(day('2026-11-01'), i)).flatMap((on, i) => [
      { on, title: 'Nachsehen: H12' },
      ...(i % 7 < 2
        ? [
            { on, title: 'Medium mischen' },
            { on, title: '2 Becher Stub-winged melanogaster ansetzen' },
            { on, title: 'Wegwerfen: H08' },
          ]
        : []),
    ]),
  });

const shelf = (language: Language) =>
  shelfCard({
    language,
    place: 'Shelf by the window',
    on: monday,
    cups: Array.from({ length: 20 }, (_, i) => ({
      label: `H${i + 1}`,
      strain: 'D. hydei',
      startedOn: addDays(monday, -3 * i),
      firstFliesOn: addDays(monday, 20 - 3 * i),
      founders: i < 10 ? { from: addDays(monday, 24 - 3 * i), until: addDays(monday, 30 - 3 * i) } : null,
      throwOutOn: addDays(monday, 45 - 3 * i),
    })),
  });

async function show(page: Page, sheet: ReturnType<typeof sitterSheet>): Promise<Sheet> {
  if (!sheet.ok) throw new Error(JSON.stringify(sheet.problems));
  const html = sheetHtml(sheet.value);
  if (!html.ok) throw new Error(JSON.stringify(html.problems));
  await page.setContent(html.value);
  return sheet.value;
}

async function pagesOf(page: Page, name: string, format: 'A4' | 'Letter'): Promise<number> {
  const pdf = await page.pdf({ format, preferCSSPageSize: false, path: test.info().outputPath(`${name}.pdf`) });
  return [...pdf.toString('latin1').matchAll(/\/Type\s*\/Page[^s]/g)].length;
}

for (const language of ['en', 'de'] as const) {
  for (const format of ['A4', 'Letter'] as const) {
    test.describe(`${language}, ${format}`, () => {
      test('a sitter sheet for two weeks has at most two pages', async ({ page }) => {
        await show(page, sitter(language, 14));
        expect(await pagesOf(page, 'sitter', format)).toBeLessThanOrEqual(2);
        // 14 feedings of frogs, 7 of mantises, and 5 days with two cups to look at.
        expect(await page.locator('.box').count()).toBe(14 + 7 + 10);
      });
      test('a sheet for a culture that is given away has one page', async ({ page }) => {
        await show(page, given(language));
        expect(await pagesOf(page, 'given', format)).toBe(1);
      });
      test('a month and a shelf of 20 cups have one page each', async ({ page }) => {
        await show(page, month(language));
        expect(
          await page
            .pdf({ format, landscape: true })
            .then((pdf) => [...pdf.toString('latin1').matchAll(/\/Type\s*\/Page[^s]/g)].length),
        ).toBe(1);
        await show(page, shelf(language));
        expect(await pagesOf(page, 'shelf', format)).toBe(1);
      });
    });
  }
}

test.describe('on paper', () => {
  test.use({ viewport: { width: 720, height: 1000 }, deviceScaleFactor: 2 });
  test('nothing stands outside the width of the paper', async ({ page }) => {
    await page.emulateMedia({ media: 'print' });
    for (const sheet of [sitter('de', 14), given('de'), month('de'), shelf('de')]) {
      await show(page, sheet);
      const outside = await page.evaluate(
        () => document.documentElement.scrollWidth - document.documentElement.clientWidth,
      );
      expect(outside).toBe(0);
    }
  });
  test('the code of a given culture opens its calendar', async ({ page }) => {
    needsDebian('zbar-tools', ['zbarimg', '--version']);
    await show(page, given('en'));
    const png = await page.locator('.qr svg').screenshot();
    expect(readByZbar(png)).toEqual(['http://192.168.178.20:8080/g/H12.ics']);
    expect(await readByJsqr(page, png)).toBe('http://192.168.178.20:8080/g/H12.ics');
  });
  test('without an address, a given culture brings its dates along: three codes on the same one page', async ({
    page,
  }) => {
    needsDebian('zbar-tools', ['zbarimg', '--version']);
    await show(page, given('de', null));
    expect(await pagesOf(page, 'given-codes', 'Letter')).toBe(1);
    for (const [i, dates] of ['20261213', '20261217', '20270107'].entries()) {
      const png = await page.locator('.codes svg').nth(i).screenshot();
      expect(readByZbar(png).join('')).toContain(`DTSTART;VALUE=DATE:${dates}`);
      expect(await readByJsqr(page, png)).toMatch(/^BEGIN:VCALENDAR/);
    }
  });
  test('names that look like markup stay text', async ({ page }) => {
    const hostile = '<img src=x onerror="document.title=1">&"';
    await show(
      page,
      shelfCard({
        language: 'en',
        place: hostile,
        on: monday,
        cups: [
          { label: hostile, strain: hostile, startedOn: monday, firstFliesOn: null, founders: null, throwOutOn: null },
        ],
      }),
    );
    expect(await page.locator('img').count()).toBe(0);
    expect(await page.locator('h1').textContent()).toBe(hostile);
  });
});
