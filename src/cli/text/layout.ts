/** Text for a terminal of 80 columns: wrapped sentences and plain tables. */
import { chanceFromWorlds } from '../../foundation/index.ts';

export const columns = 80;

/** `text` broken at spaces into lines of at most `width` characters, the first after `first`, the rest after spaces. */
export function wrapped(text: string, first = '', width = columns): string[] {
  const rest = ' '.repeat(first.length);
  const lines: string[] = [];
  let line = first;
  let empty = true;
  for (const word of text.split(/\s+/)) {
    if (!empty && line.length + 1 + word.length > width) {
      lines.push(line);
      line = rest;
      empty = true;
    }
    line += empty ? word : ` ${word}`;
    empty = false;
  }
  return [...lines, line];
}

/** Text of several lines with its sentences wrapped anew; empty and indented lines stay as they are. */
export function reflowed(text: string): string[] {
  const lines: string[] = [];
  let sentence: string[] = [];
  const end = () => {
    if (sentence.length > 0) lines.push(...wrapped(sentence.join(' ')));
    sentence = [];
  };
  for (const line of text.split('\n')) {
    if (line !== '' && !line.startsWith(' ')) sentence.push(line);
    else {
      end();
      lines.push(line);
    }
  }
  end();
  return lines;
}

/** Rows under a head, columns as wide as their widest cell; columns named in `right` are aligned right. */
export function table(head: string[], rows: string[][], right: readonly number[] = []): string[] {
  const widths = head.map((title, i) => Math.max(title.length, ...rows.map((row) => (row[i] ?? '').length)));
  const line = (cells: string[]) =>
    cells
      .map((cell, i) => (right.includes(i) ? cell.padStart(widths[i] as number) : cell.padEnd(widths[i] as number)))
      .join('  ')
      .trimEnd();
  return [line(head), widths.map((width) => '-'.repeat(width)).join('  '), ...rows.map(line)];
}

/** A share as a percentage that never rounds up to certainty. @example percent(0.9996) // => '99.9 %' */
export function percent(share: number): string {
  const shown = Math.floor(share * 1000) / 10;
  return `${share > 0 && share < 0.001 ? '<0.1' : shown} %`;
}

/** A chance from simulated worlds, never certain. @example chance(1, 2000) // => '>99.8 %' */
export function chance(share: number, worlds: number): string {
  const { share: shown, is } = chanceFromWorlds(share, worlds);
  if (is === 'about') return percent(shown);
  return is === 'above' ? `>${percent(shown)}` : `<${percent(Math.ceil(shown * 1000) / 1000)}`;
}

/** @example counted(1, 'cup') // => '1 cup' */
export function counted(n: number, singular: string, plural = `${singular}s`): string {
  return `${n} ${n === 1 ? singular : plural}`;
}

/** A middle with its 5 to 95 % band, whole flies. @example bandText({ p05: 60, p50: 85, p95: 120 }) // => '85 (60-120)' */
export function bandText({ p05, p50, p95 }: { p05: number; p50: number; p95: number }): string {
  return `${Math.round(p50)} (${Math.round(p05)}-${Math.round(p95)})`;
}
