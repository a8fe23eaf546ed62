/**
 * One label as data: where its QR code and its lines of text stand, in millimetres from its top left
 * corner. Wide labels have the code at the left, others at the top.
 */
import { type Day, failed, ok, type Problem, type Result } from '../../foundation/index.ts';
import { type QrMatrix, qrMatrix, quietModules } from '../qr.ts';
import type { Language } from '../text/catalogue.ts';
import { texts } from '../text/texts.ts';
import { textWidth } from './text-width.ts';

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

/** Type of 1.9 mm is 5.4 points, the least that is read with ease; 2.3 mm is comfortable. */
const leastTypeMm = 1.9;
const comfortableTypeMm = 2.3;
/** From here on a larger type is no easier to read at arm's length: a name then stays on one line. */
const easyTypeMm = 3;
/** Finer squares are lost in a phone's picture at arm's length and on a 203 dpi printer (3 dots). */
const leastModuleMm = 0.37;
const mostModuleMm = 0.8;
const moduleStepMm = 0.02;
const paddingMm = 1;
const shortNameLength = 14;

interface Box {
  xMm: number;
  yMm: number;
  widthMm: number;
  heightMm: number;
}

/**
 * The label laid out for a size: the largest code that leaves comfortable type, else the code that leaves
 * the largest. A long name of a strain is broken into two lines, at last cut short. Refused when code or type
 * would be too small to read.
 */
export function layOutLabel(
  content: LabelContent,
  widthMm: number,
  heightMm: number,
  language: Language,
): Result<Label> {
  const code = qrMatrix(content.link);
  if (!code.ok) return code;
  const isWide = widthMm >= 1.35 * heightMm;
  // The label's own margin is white too and counts as quiet zone, so the code may use its edge.
  const roomMm = isWide ? Math.min(heightMm, widthMm * 0.5) : Math.min(widthMm, heightMm * 0.62);
  const largestMm = Math.min(roomMm / (code.value.size + 2 * quietModules), mostModuleMm);
  if (largestMm < leastModuleMm) return failed(tooFine(content, largestMm));
  const room = { widthMm, heightMm, isWide, language };
  const tried = nameLines(content.strain).map((strainLines) =>
    withLargestType((moduleMm) => labelWith({ ...content, strainLines }, code.value, moduleMm, room), largestMm),
  );
  const unabridged = tried.slice(0, -1);
  const whole =
    unabridged.find((t) => smallestTypeMm(t) >= easyTypeMm) ??
    unabridged.reduce((a, b) => (smallestTypeMm(b) > smallestTypeMm(a) ? b : a));
  const best = smallestTypeMm(whole) < leastTypeMm ? (tried.at(-1) as Label) : whole;
  return smallestTypeMm(best) < leastTypeMm ? failed(tooSmall(content, best)) : ok(best);
}

/** A name on one line; on two, broken at the space nearest its middle; cut short. */
function nameLines(name: string): string[][] {
  const spaces = [...name.matchAll(/ /g)].map((m) => m.index);
  const middle = spaces.sort((a, b) => Math.abs(a - name.length / 2) - Math.abs(b - name.length / 2))[0];
  const broken = middle === undefined ? [] : [[name.slice(0, middle), name.slice(middle + 1)]];
  const short = name.length > shortNameLength ? `${name.slice(0, shortNameLength - 1).trimEnd()}…` : name;
  return [[name], ...broken, [short]];
}

/** Makes the code smaller until the type is comfortable; else the label with the largest type. */
function withLargestType(labelAt: (moduleMm: number) => Label, largestMm: number): Label {
  let best = labelAt(largestMm);
  for (let m = largestMm - moduleStepMm; m >= leastModuleMm; m -= moduleStepMm) {
    if (smallestTypeMm(best) >= comfortableTypeMm) break;
    const smaller = labelAt(m);
    if (smallestTypeMm(smaller) > smallestTypeMm(best)) best = smaller;
  }
  return best;
}

type LineContent = LabelContent & { strainLines: readonly string[] };

interface Room {
  widthMm: number;
  heightMm: number;
  isWide: boolean;
  language: Language;
}

function labelWith(content: LineContent, matrix: QrMatrix, moduleMm: number, room: Room): Label {
  const { widthMm, heightMm, isWide, language } = room;
  const codeMm = (matrix.size + 2 * quietModules) * moduleMm;
  const quietMm = quietModules * moduleMm;
  const yMm = isWide ? (heightMm - codeMm) / 2 + quietMm : quietMm;
  const lines = isWide
    ? besideCode(
        content,
        { xMm: codeMm, yMm: paddingMm, widthMm: widthMm - codeMm - paddingMm, heightMm: heightMm - 2 * paddingMm },
        language,
      )
    : belowCode(content, codeMm, quietMm, room);
  return { widthMm, heightMm, qr: { matrix, sideMm: matrix.size * moduleMm, xMm: quietMm, yMm }, lines };
}

function smallestTypeMm(label: Label): number {
  return Math.min(...label.lines.map((l) => l.sizeMm));
}

function tooFine(content: LabelContent, moduleMm: number): Problem {
  const found = `a QR code with squares of ${moduleMm.toFixed(2)} mm`;
  const expected = `at least ${leastModuleMm} mm: a larger label or a shorter link`;
  return { where: `label ${content.label}`, found, expected };
}

function tooSmall(content: LabelContent, label: Label): Problem {
  const smallest = label.lines.reduce((a, b) => (b.sizeMm < a.sizeMm ? b : a));
  const found = `"${smallest.text}" in type of ${smallest.sizeMm.toFixed(1)} mm`;
  const expected = `at least ${leastTypeMm} mm: a larger label or a shorter text`;
  return { where: `label ${content.label}`, found, expected };
}

function besideCode(content: LineContent, box: Box, language: Language): LabelLine[] {
  return stack([{ text: content.label, share: 1.5, isBold: true }, ...smallLines(content, language)], box);
}

/** On a square label the number stands big beside the code when there is room for it, the rest below. */
function belowCode(content: LineContent, codeMm: number, quietMm: number, room: Room): LabelLine[] {
  const { widthMm, heightMm, language } = room;
  const topMm = codeMm - quietMm / 2;
  const below: Box = {
    xMm: paddingMm,
    yMm: topMm,
    widthMm: widthMm - 2 * paddingMm,
    heightMm: heightMm - topMm - paddingMm,
  };
  const beside: Box = {
    xMm: codeMm,
    yMm: paddingMm,
    widthMm: widthMm - codeMm - paddingMm,
    heightMm: codeMm - 2 * paddingMm,
  };
  const number = stack([{ text: content.label, share: 1, isBold: true }], beside, 6);
  const small = smallLines(content, language);
  if ((number[0] as LabelLine).sizeMm >= 2.6) return [...number, ...stack(small, below)];
  return stack([{ text: content.label, share: 1.1, isBold: true }, ...small], below);
}

interface Wanted {
  text: string;
  /** Size relative to the other lines. */
  share: number;
  isBold: boolean;
}

function smallLines(content: LineContent, language: Language): Wanted[] {
  const { label, dayShort } = texts(language);
  const dated = (word: string, on: Day | null) => (on === null ? [] : [`${word} ${dayShort(on)}`]);
  const dates = [
    ...dated(label.started, content.startedOn),
    ...dated(label.firstFlies, content.firstFliesOn),
    ...dated(label.throwOut, content.throwOutOn),
  ];
  return [
    ...content.strainLines.map((text) => ({ text, share: 1, isBold: true })),
    ...dates.map((text, i) => ({ text, share: 1, isBold: i === 2 })),
  ];
}

/** Lines under each other that fill the box's height; lines of one share are alike, shrunk to the longest of them. */
function stack(wanted: readonly Wanted[], box: Box, mostMm = 4.5): LabelLine[] {
  const leading = 1.1;
  const shares = wanted.reduce((sum, w) => sum + w.share, 0);
  const unitMm = Math.min(mostMm, box.heightMm / (shares * leading));
  let baselineMm = box.yMm + (box.heightMm - unitMm * shares * leading) / 2;
  return wanted.map(({ text, share, isBold }) => {
    const heightMm = unitMm * share * leading;
    const alike = wanted.filter((w) => w.share === share).map((w) => box.widthMm / textWidth(w.text));
    const sizeMm = Math.min(unitMm * share, ...alike);
    const line = { text, xMm: box.xMm, yMm: baselineMm + heightMm * 0.78, sizeMm, isBold };
    baselineMm += heightMm;
    return line;
  });
}
