/** A line's cups in columns of generations: places of the cups and the curves from parent to offspring. */
import type { LinesAnswer } from '../../app/index.ts';

type Line = LinesAnswer['strains'][number];

export interface DrawnCup {
  culture: string;
  label: string;
  ended: boolean;
  lossShare: number;
  generation: number;
  x: number;
  y: number;
}

export interface PedigreeDrawing {
  cups: DrawnCup[];
  curves: string[];
  /** Numbers of the generations with the x of their column. */
  generations: { n: number; x: number }[];
  width: number;
  height: number;
}

const columnPx = 134;
const rowPx = 58;
const [leftPx, topPx] = [26, 44];
/** Half of a drawn cup, where curves leave and arrive, and the label's room at its right. */
const halfCupPx = 13;
const labelPx = 50;

export function pedigreeDrawing({ cups, edges }: Pick<Line, 'cups' | 'edges'>): PedigreeDrawing {
  const first = Math.min(...cups.map((cup) => cup.generation));
  const last = Math.max(...cups.map((cup) => cup.generation));
  const rows = Math.max(...cups.map((cup) => cup.row)) + 1;
  const drawn = cups.map((cup) => ({
    culture: cup.culture,
    label: cup.label,
    ended: cup.ended,
    lossShare: cup.lossShare,
    generation: cup.generation,
    x: leftPx + (cup.generation - first) * columnPx,
    y: topPx + cup.row * rowPx,
  }));
  const at = new Map(drawn.map((cup) => [cup.culture, cup]));
  return {
    cups: drawn,
    curves: edges.flatMap(({ from, to }) => {
      const [parent, child] = [at.get(from), at.get(to)];
      return parent && child ? [curve(parent, child)] : [];
    }),
    generations: Array.from({ length: last - first + 1 }, (_, i) => ({ n: first + i, x: leftPx + i * columnPx })),
    width: leftPx + (last - first) * columnPx + halfCupPx + labelPx,
    height: topPx + (rows - 1) * rowPx + 38,
  };
}

function curve(parent: DrawnCup, child: DrawnCup): string {
  const from = parent.x + halfCupPx + labelPx;
  const to = child.x - halfCupPx;
  const middle = (from + to) / 2;
  return `M${from} ${parent.y}C${middle} ${parent.y} ${middle} ${child.y} ${to} ${child.y}`;
}
