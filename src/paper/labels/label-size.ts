/** Sheets of labels by their dimensions in millimetres; any size can be given, some common ones are listed. */
import { failed, ok, type Problem, type Result } from '../../foundation/index.ts';

export interface LabelSheet {
  pageWidthMm: number;
  pageHeightMm: number;
  labelWidthMm: number;
  labelHeightMm: number;
  columns: number;
  rows: number;
  marginLeftMm: number;
  marginTopMm: number;
  gapXMm: number;
  gapYMm: number;
}

const a4 = { pageWidthMm: 210, pageHeightMm: 297 };
const letter = { pageWidthMm: 215.9, pageHeightMm: 279.4 };

/** Common sheets, named by page, label and number; the dimensions as such sheets are sold (common practice). */
export const labelSheets: Record<string, LabelSheet> = {
  'a4-70x37-24': sheet(a4, 70, 37, 3, 8, 0, 0.5),
  'a4-63.5x38.1-21': sheet(a4, 63.5, 38.1, 3, 7, 7.2, 15.15, 2.55),
  'a4-48.5x25.4-40': sheet(a4, 48.5, 25.4, 4, 10, 8, 21.5),
  'a4-38.1x21.2-65': sheet(a4, 38.1, 21.2, 5, 13, 4.75, 10.7, 2.5),
  'a4-25x25-77': sheet(a4, 25, 25, 7, 11, 8.5, 11, 3),
  'letter-66.7x25.4-30': sheet(letter, 66.675, 25.4, 3, 10, 4.7625, 12.7, 3.175),
  'letter-101.6x50.8-10': sheet(letter, 101.6, 50.8, 2, 5, 3.96, 12.7, 4.78),
};

/** A page with one label of the given size, as roll printers take. */
export function singleLabel(labelWidthMm: number, labelHeightMm: number): LabelSheet {
  return sheet({ pageWidthMm: labelWidthMm, pageHeightMm: labelHeightMm }, labelWidthMm, labelHeightMm, 1, 1, 0, 0);
}

/** The sheet, if all its labels lie on the page and do not overlap. */
export function checkLabelSheet(s: LabelSheet): Result<LabelSheet> {
  const problems: Problem[] = [];
  const widthMm = s.marginLeftMm + s.columns * s.labelWidthMm + (s.columns - 1) * s.gapXMm;
  const heightMm = s.marginTopMm + s.rows * s.labelHeightMm + (s.rows - 1) * s.gapYMm;
  for (const [name, value] of Object.entries(s)) {
    const isCount = name === 'columns' || name === 'rows';
    const least = /^(margin|gap)/.test(name) ? 0 : isCount ? 1 : 5;
    if (!(value >= least) || (isCount && !Number.isInteger(value))) {
      const expected = isCount ? 'a whole number, 1 or more' : `at least ${least} mm`;
      problems.push({ where: `label sheet, ${name}`, found: String(value), expected });
    }
  }
  if (widthMm > s.pageWidthMm + 0.05) problems.push(tooFar('across', widthMm, s.pageWidthMm));
  if (heightMm > s.pageHeightMm + 0.05) problems.push(tooFar('down', heightMm, s.pageHeightMm));
  return problems.length > 0 ? failed(...problems) : ok(s);
}

function tooFar(direction: string, neededMm: number, pageMm: number): Problem {
  const found = `labels that reach ${neededMm.toFixed(1)} mm ${direction}`;
  return { where: 'label sheet', found, expected: `at most the page's ${pageMm} mm` };
}

function sheet(
  page: { pageWidthMm: number; pageHeightMm: number },
  labelWidthMm: number,
  labelHeightMm: number,
  columns: number,
  rows: number,
  marginLeftMm: number,
  marginTopMm: number,
  gapXMm = 0,
): LabelSheet {
  return { ...page, labelWidthMm, labelHeightMm, columns, rows, marginLeftMm, marginTopMm, gapXMm, gapYMm: 0 };
}
