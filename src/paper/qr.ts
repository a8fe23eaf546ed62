/** QR codes as module matrices and as SVG paths. */
import { encode } from 'uqr';
import { failed, ok, type Result } from '../foundation/index.ts';
import { mm } from './render/markup.ts';

export interface QrMatrix {
  /** Modules a side, without the quiet zone. */
  size: number;
  /** True is dark; row by row. */
  dark: boolean[][];
  text: string;
}

/** The quiet zone that the standard (ISO/IEC 18004) asks for, in modules. */
export const quietModules = 4;
/** On a label; a code that may be larger can hold more. */
const mostBytesOfLabel = 300;

/**
 * The code of `text`, with medium error correction (15 % of it may be lost to dirt or glare), more where
 * the same size allows. Refused when empty or over `mostBytes`: such a code is too fine for its size on paper.
 */
export function qrMatrix(text: string, mostBytes = mostBytesOfLabel): Result<QrMatrix> {
  const bytes = [...text].reduce((sum, c) => sum + ((c.codePointAt(0) as number) < 128 ? 1 : 4), 0);
  if (text === '' || bytes > mostBytes) {
    return failed({ where: 'QR code', found: `${bytes} bytes`, expected: `1 to ${mostBytes} bytes` });
  }
  const code = encode(text, { ecc: 'M', boostEcc: true, border: 0 });
  return ok({ size: code.size, dark: code.data, text });
}

/** One SVG path of all dark modules, runs joined, in a square of `sideMm` (no quiet zone) at x, y. */
export function qrPath(matrix: QrMatrix, xMm: number, yMm: number, sideMm: number): string {
  const module = sideMm / matrix.size;
  const runs = matrix.dark.flatMap((row, y) => runsOf(row).map((run) => ({ ...run, y })));
  const d = runs.map(({ from, length, y }) => `M${from} ${y}h${length}v1h-${length}z`);
  return `<path transform="translate(${mm(xMm)} ${mm(yMm)}) scale(${module.toFixed(5)})" shape-rendering="crispEdges" fill="#000" d="${d.join('')}"/>`;
}

function runsOf(row: readonly boolean[]): { from: number; length: number }[] {
  const runs: { from: number; length: number }[] = [];
  row.forEach((isDark, x) => {
    const last = runs.at(-1);
    if (!isDark) return;
    if (last && last.from + last.length === x) last.length += 1;
    else runs.push({ from: x, length: 1 });
  });
  return runs;
}
