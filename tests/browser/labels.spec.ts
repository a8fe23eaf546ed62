/**
 * Labels as Chromium draws them: read back by jsqr and zbar from a picture of the page, at the sharpness of
 * a label printer, under glare, in grey; text inside the label; PDFs of the pages.
 */
import { expect, type Page, test } from '@playwright/test';
import { day } from '../../src/foundation/index.ts';
import {
  type LabelContent,
  type LabelSheet,
  labelPages,
  labelPagesHtml,
  labelSheets,
  singleLabel,
} from '../../src/paper/index.ts';
import { needsDebian } from '../reference/debian-program.ts';
import { readByJsqr, readByZbar } from './label-readers.ts';

const content = (n: number): LabelContent => ({
  label: `H${n}`,
  strain: 'D. hydei',
  startedOn: day('2026-11-25'),
  firstFliesOn: day('2026-12-18'),
  throwOutOn: day('2027-01-12'),
  link: `http://192.168.178.20:8080/c/H${n}`,
});

/** Dots an inch of the printers and cameras that matter: a common label printer, and an office one. */
const dotsPerInch = { labelPrinter: 203, office: 300 };
const cssDotsPerInch = 96;

async function show(page: Page, contents: LabelContent[], sheet: LabelSheet, language: 'en' | 'de' = 'en') {
  const pages = labelPages({ contents, sheet, language });
  if (!pages.ok) throw new Error(JSON.stringify(pages.problems));
  await page.setContent(labelPagesHtml(pages.value, 'Labels', language));
}

async function pictureOf(page: Page, fullPage = true): Promise<Buffer> {
  return page.screenshot({ fullPage });
}

test.beforeAll(() => {
  test.setTimeout(600_000);
  needsDebian('zbar-tools', ['zbarimg', '--version']);
});

for (const [name, dpi] of Object.entries(dotsPerInch)) {
  test.describe(`${name}, ${dpi} dots an inch`, () => {
    test.use({ deviceScaleFactor: dpi / cssDotsPerInch, viewport: { width: 110, height: 110 } });
    for (const [w, h] of [
      [25, 25],
      [50, 25],
      [38, 38],
      [62, 29],
      [25, 40],
    ] as const) {
      test(`a single label of ${w} x ${h} mm is read by both decoders`, async ({ page }) => {
        await show(page, [content(7)], singleLabel(w, h));
        const png = await pictureOf(page);
        expect(readByZbar(png)).toEqual([content(7).link]);
        expect(await readByJsqr(page, png)).toBe(content(7).link);
      });
    }
  });
}

test.describe('sheets', () => {
  test.use({ deviceScaleFactor: dotsPerInch.labelPrinter / cssDotsPerInch, viewport: { width: 830, height: 1130 } });
  for (const name of Object.keys(labelSheets).filter((n) => !n.includes('38.1x21.2'))) {
    test(`${name}: labels from the first to the last place hold their own code`, async ({ page }) => {
      const sheet = labelSheets[name] as LabelSheet;
      const contents = Array.from({ length: sheet.columns * sheet.rows }, (_, i) => content(i + 1));
      await show(page, contents, sheet);
      const labels = page.locator('svg > g');
      expect(await labels.count()).toBe(contents.length);
      for (const i of [0, sheet.columns - 1, Math.floor(contents.length / 2), contents.length - 1]) {
        const found = readByZbar(await labels.nth(i).screenshot());
        expect(found, `label ${i + 1}`).toEqual([contents[i]?.link]);
      }
    });
  }
  test('a second page begins when the first is full, after the places already used', async ({ page }) => {
    const pages = labelPages({
      contents: [1, 2, 3].map(content),
      sheet: { ...singleLabel(30, 30), rows: 2, pageHeightMm: 60 },
      language: 'en',
      skip: 1,
    });
    if (!pages.ok) throw new Error(JSON.stringify(pages.problems));
    expect(pages.value.map((p) => p.labels.map((l) => [l.label.lines[0]?.text, l.yMm]))).toEqual([
      [['H1', 30]],
      [
        ['H2', 0],
        ['H3', 30],
      ],
    ]);
    await page.setContent(labelPagesHtml(pages.value, 'Labels', 'en'));
    const pdf = await page.pdf({ preferCSSPageSize: true });
    expect([...pdf.toString('latin1').matchAll(/\/Type\s*\/Page[^s]/g)]).toHaveLength(2);
  });
});

test.describe('under bad light', () => {
  test.use({ deviceScaleFactor: dotsPerInch.office / cssDotsPerInch, viewport: { width: 110, height: 110 } });
  /** A bright spot over the code's data, as a lamp leaves on shiny paper. */
  const glare = 'radial-gradient(circle at 62% 30%, #fff 0 4%, rgba(255,255,255,.85) 7%, rgba(255,255,255,0) 16%)';
  const washedOut = 'linear-gradient(120deg, rgba(255,255,255,.55), rgba(255,255,255,.2))';
  for (const [name, light] of Object.entries({ glare, washedOut })) {
    test(`${name}: a 25 mm label is still read`, async ({ page }) => {
      await show(page, [content(7)], singleLabel(25, 25));
      const before = await pictureOf(page);
      await page.evaluate((background) => {
        const spot = document.createElement('div');
        spot.style.cssText = `position:absolute;left:0;top:0;width:25mm;height:25mm;background:${background}`;
        document.body.append(spot);
      }, light);
      const png = await pictureOf(page);
      expect(png.equals(before)).toBe(false);
      expect(readByZbar(png)).toEqual([content(7).link]);
    });
  }
  test('a code half covered is not read: the readers do not make things up', async ({ page }) => {
    await show(page, [content(7)], singleLabel(25, 25));
    await page.evaluate(() => {
      const paper = document.createElement('div');
      paper.style.cssText = 'position:absolute;left:0;top:0;width:16mm;height:10mm;background:#fff';
      document.body.append(paper);
    });
    const png = await pictureOf(page);
    expect(readByZbar(png)).toEqual([]);
    expect(await readByJsqr(page, png)).toBeNull();
  });
});

test.describe('text', () => {
  test.use({ viewport: { width: 900, height: 1200 } });
  for (const language of ['en', 'de'] as const) {
    for (const [w, h] of [
      [25, 25],
      [70, 37],
      [48.5, 25.4],
    ] as const) {
      test(`${language}, ${w} x ${h} mm: every line inside its label, none over the code or another line`, async ({
        page,
      }) => {
        await show(
          page,
          [{ ...content(7), label: 'H117', strain: 'Stub-winged melanogaster' }],
          singleLabel(w, h),
          language,
        );
        const { lines, code, label } = await page.evaluate(() => {
          const box = (e: Element | null) => {
            const { left, right, top, bottom } = (e as Element).getBoundingClientRect();
            return { left, right, top, bottom };
          };
          const svg = document.querySelector('svg');
          return {
            lines: [...document.querySelectorAll('text')].map((t) => ({ text: t.textContent, ...box(t) })),
            code: box(document.querySelector('path')),
            label: box(svg),
          };
        });
        expect(lines.length).toBeGreaterThanOrEqual(5);
        const overlap = (a: typeof code, b: typeof code) =>
          Math.min(a.right, b.right) - Math.max(a.left, b.left) > 0.5 &&
          Math.min(a.bottom, b.bottom) - Math.max(a.top, b.top) > 2;
        for (const [i, line] of lines.entries()) {
          expect(line.left, line.text ?? '').toBeGreaterThanOrEqual(label.left);
          expect(line.right, line.text ?? '').toBeLessThanOrEqual(label.right + 0.2);
          expect(line.bottom, line.text ?? '').toBeLessThanOrEqual(label.bottom + 1);
          expect(overlap(line, code), `${line.text} over the code`).toBe(false);
          for (const other of lines.slice(i + 1))
            expect(overlap(line, other), `${line.text} over ${other.text}`).toBe(false);
        }
      });
    }
  }
});
