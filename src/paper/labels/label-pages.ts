/** Labels set out on sheets, and the sheets as SVG text. */
import { failed, ok, type Result } from '../../foundation/index.ts';
import { qrPath } from '../qr.ts';
import { escaped, mm } from '../render/markup.ts';
import type { Language } from '../text/catalogue.ts';
import { type Label, type LabelContent, layOutLabel } from './label.ts';
import { checkLabelSheet, type LabelSheet } from './label-size.ts';

export interface LabelPage {
  sheet: LabelSheet;
  labels: { label: Label; xMm: number; yMm: number }[];
}

export interface LabelRequest {
  contents: readonly LabelContent[];
  sheet: LabelSheet;
  language: Language;
  /** Labels of the first sheet that are already used. */
  skip?: number;
}

/** The pages; refused with every label that cannot be read at this size. */
export function labelPages(request: LabelRequest): Result<LabelPage[]> {
  const { contents, language, skip = 0 } = request;
  const sheet = checkLabelSheet(request.sheet);
  if (!sheet.ok) return sheet;
  const perPage = sheet.value.columns * sheet.value.rows;
  if (!Number.isInteger(skip) || skip < 0 || skip >= perPage) {
    return failed({ where: 'skip', found: String(skip), expected: `a whole number from 0 to ${perPage - 1}` });
  }
  const laid = contents.map((c) => layOutLabel(c, sheet.value.labelWidthMm, sheet.value.labelHeightMm, language));
  const problems = laid.flatMap((l) => (l.ok ? [] : l.problems));
  if (problems.length > 0) return failed(...problems);
  const pages: LabelPage[] = [];
  laid.forEach((result, i) => {
    const at = i + skip;
    const page = Math.floor(at / perPage);
    pages[page] ??= { sheet: sheet.value, labels: [] };
    if (result.ok) pages[page].labels.push({ label: result.value, ...placeOf(at % perPage, sheet.value) });
  });
  return ok(pages);
}

/** A page as one SVG document in millimetres. */
export function labelPageSvg(page: LabelPage): string {
  const { pageWidthMm, pageHeightMm } = page.sheet;
  const labels = page.labels.map(
    ({ label, xMm, yMm }) => `<g transform="translate(${mm(xMm)} ${mm(yMm)})">${labelMarkup(label)}</g>`,
  );
  return `<svg xmlns="http://www.w3.org/2000/svg" width="${mm(pageWidthMm)}mm" height="${mm(pageHeightMm)}mm" viewBox="0 0 ${mm(pageWidthMm)} ${mm(pageHeightMm)}" font-family="DejaVu Sans, Verdana, Arial, sans-serif">${labels.join('')}</svg>`;
}

/** The pages as one HTML document that prints each on a page of its size, without margins. */
export function labelPagesHtml(pages: readonly LabelPage[], title: string, language: Language): string {
  const sheet = pages[0]?.sheet;
  const size = sheet ? `${mm(sheet.pageWidthMm)}mm ${mm(sheet.pageHeightMm)}mm` : 'A4';
  const style = `@page{size:${size};margin:0}body{margin:0}svg{display:block;break-after:page}`;
  const head = `<meta charset="utf-8"><title>${escaped(title)}</title><style>${style}</style>`;
  return `<!doctype html><html lang="${language}"><head>${head}</head><body>${pages.map(labelPageSvg).join('')}</body></html>`;
}

function labelMarkup(label: Label): string {
  const { qr } = label;
  const background = `<rect width="${mm(label.widthMm)}" height="${mm(label.heightMm)}" fill="#fff"/>`;
  const lines = label.lines.map(
    ({ text, xMm, yMm, sizeMm, isBold }) =>
      `<text x="${mm(xMm)}" y="${mm(yMm)}" font-size="${mm(sizeMm)}"${isBold ? ' font-weight="bold"' : ''}>${escaped(text)}</text>`,
  );
  return background + qrPath(qr.matrix, qr.xMm, qr.yMm, qr.sideMm) + lines.join('');
}

function placeOf(index: number, sheet: LabelSheet): { xMm: number; yMm: number } {
  const column = index % sheet.columns;
  const row = Math.floor(index / sheet.columns);
  return {
    xMm: sheet.marginLeftMm + column * (sheet.labelWidthMm + sheet.gapXMm),
    yMm: sheet.marginTopMm + row * (sheet.labelHeightMm + sheet.gapYMm),
  };
}
