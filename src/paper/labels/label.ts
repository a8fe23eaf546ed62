/**
 * One label as data: where its QR code and its lines of text stand, in millimetres from its top left
 * corner. Wide labels have the code at the left, others at the top.
 */
import { type Day, failed, ok, type Problem, type Result } from '../../foundation/index.ts';
import { type QrMatrix, qrMatrix, quietModules } from '../qr.ts';
import type { Language } from '../text/catalogue.ts';
import { texts } from '../text/texts.ts';

export interface LabelContent {
  /** What is written big: the cup's number or name. */
  label: string;
  strain: string;
  startedOn: Day;
  firstFliesOn: Day | null;
  throwOutOn: Day | null;
  /** What the QR code opens. */
  link: string;
}

export interface LabelLine {
  text: string;
  xMm: number;
  /** Of the baseline. */
  yMm: number;
  sizeMm: number;
  isBold: boolean;
}

export interface Label {
  widthMm: number;
  heightMm: number;
  qr: { matrix: QrMatrix; xMm: number; yMm: number; sideMm: number };
  lines: LabelLine[];
}

/** Capital height is about .72 of the size: 1.9 mm is type of 5.4 points, the least that is read with ease. */
const leastTypeMm = 1.9;
/** Finer modules are lost in a phone's picture at arm's length and on a 203 dpi printer (3 dots). */
const leastModuleMm = 0.37;
const paddingMm = 1;
/** Width of a character of a bold sans-serif face over its size, on the safe side. */
const widthPerSize = 0.62;

interface Box {
  xMm: number;
  yMm: number;
  widthMm: number;
  heightMm: number;
}

/** The label laid out for a size; refused when the code or the type would be too small to read. */
export function layOutLabel(
  content: LabelContent,
  widthMm: number,
  heightMm: number,
  language: Language,
): Result<Label> {
  const matrix = qrMatrix(content.link);
  if (!matrix.ok) return matrix;
  const isWide = widthMm >= 1.35 * heightMm;
  const modules = matrix.value.size + 2 * quietModules;
  const inside = { widthMm: widthMm - 2 * paddingMm, heightMm: heightMm - 2 * paddingMm };
  // The padding is white too and counts as quiet zone, so the code may use the label's edge.
  const roomMm = isWide ? Math.min(heightMm, widthMm * 0.5) : Math.min(widthMm, heightMm * 0.62);
  const moduleMm = Math.min(roomMm / modules, 0.8);
  const codeMm = modules * moduleMm;
  const sideMm = matrix.value.size * moduleMm;
  const quietMm = quietModules * moduleMm;
  const qr = { matrix: matrix.value, sideMm, ...qrPlace(isWide, quietMm, codeMm, heightMm) };
  const box: Box = isWide
    ? { xMm: codeMm, yMm: paddingMm, widthMm: widthMm - codeMm - paddingMm, heightMm: inside.heightMm }
    : {
        xMm: paddingMm,
        yMm: codeMm - quietMm / 2,
        widthMm: inside.widthMm,
        heightMm: heightMm - codeMm + quietMm / 2 - paddingMm,
      };
  const lines = isWide ? stackedLines(content, box, language) : besideAndBelow(content, box, codeMm, widthMm, language);
  const problems = problemsOf(moduleMm, lines, content);
  return problems.length > 0 ? failed(...problems) : ok({ widthMm, heightMm, qr, lines });
}

function qrPlace(isWide: boolean, quietMm: number, codeMm: number, heightMm: number): { xMm: number; yMm: number } {
  return { xMm: quietMm, yMm: isWide ? (heightMm - codeMm) / 2 + quietMm : quietMm };
}

function problemsOf(moduleMm: number, lines: readonly LabelLine[], content: LabelContent): Problem[] {
  const problems: Problem[] = [];
  const where = `label ${content.label}`;
  if (moduleMm < leastModuleMm) {
    const found = `a QR code with squares of ${moduleMm.toFixed(2)} mm`;
    problems.push({ where, found, expected: `at least ${leastModuleMm} mm: a larger label or a shorter link` });
  }
  const smallest = lines.reduce((a, b) => (b.sizeMm < a.sizeMm ? b : a));
  if (smallest.sizeMm < leastTypeMm) {
    const found = `"${smallest.text}" in type of ${smallest.sizeMm.toFixed(1)} mm`;
    problems.push({ where, found, expected: `at least ${leastTypeMm} mm: a larger label or a shorter text` });
  }
  return problems;
}

function stackedLines(content: LabelContent, box: Box, language: Language): LabelLine[] {
  return stack([{ text: content.label, share: 1.5, isBold: true }, ...smallLines(content, language)], box);
}

/** On a square label the big number stands upright beside the code when there is room, the rest below it. */
function besideAndBelow(
  content: LabelContent,
  box: Box,
  codeMm: number,
  widthMm: number,
  language: Language,
): LabelLine[] {
  const beside: Box = {
    xMm: codeMm,
    yMm: paddingMm,
    widthMm: widthMm - codeMm - paddingMm,
    heightMm: codeMm - 2 * paddingMm,
  };
  const number = stack([{ text: content.label, share: 1, isBold: true }], beside, 6);
  const isReadable = (number[0] as LabelLine).sizeMm >= 2.4;
  const small = smallLines(content, language);
  if (isReadable) return [...number, ...stack(small, box)];
  return stack([{ text: content.label, share: 1.2, isBold: true }, ...small], box);
}

interface Wanted {
  text: string;
  /** Size relative to the other lines. */
  share: number;
  isBold: boolean;
}

function smallLines(content: LabelContent, language: Language): Wanted[] {
  const { label, dayShort } = texts(language);
  const dated = (word: string, on: Day | null) => (on === null ? [] : [`${word} ${dayShort(on)}`]);
  const dates = [
    ...dated(label.started, content.startedOn),
    ...dated(label.firstFlies, content.firstFliesOn),
    ...dated(label.throwOut, content.throwOutOn),
  ];
  return [
    { text: content.strain, share: 1, isBold: true },
    ...dates.map((text, i) => ({ text, share: 1, isBold: i === 2 })),
  ];
}

/** Lines under each other that fill the box's height, each shrunk to its width where it must be. */
function stack(wanted: readonly Wanted[], box: Box, mostMm = 4.5): LabelLine[] {
  const leading = 1.18;
  const shares = wanted.reduce((sum, w) => sum + w.share, 0);
  const unitMm = Math.min(mostMm, box.heightMm / (shares * leading));
  let baselineMm = box.yMm + (box.heightMm - unitMm * shares * leading) / 2;
  return wanted.map(({ text, share, isBold }) => {
    const heightMm = unitMm * share * leading;
    const sizeMm = Math.min(unitMm * share, box.widthMm / (Math.max(1, text.length) * widthPerSize));
    const line = { text, xMm: box.xMm, yMm: baselineMm + heightMm * 0.78, sizeMm, isBold };
    baselineMm += heightMm;
    return line;
  });
}
