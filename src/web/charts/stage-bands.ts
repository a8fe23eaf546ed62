/**
 * Geometry of one cup's life as bands over its days: a row each for eggs, larvae and pupae, a taller one
 * for flies, each with a scale of its own that begins at nothing.
 */
import { area, curveMonotoneX, line } from 'd3-shape';
import type { LifecycleAnswer } from '../../app/index.ts';

export type BandName = 'eggs' | 'larvae' | 'pupae' | 'flies';

export interface StageBand {
  name: BandName;
  /** Bottom of the row, px from the top, and its height. */
  base: number;
  height: number;
  most: number;
  /** Highest value of the row's scale: of the flies, that of the cup left alone. */
  highest: number;
  path: string;
}

export interface StageBands {
  bands: StageBand[];
  /** Flies if nothing were harvested, on the flies' own scale. */
  unharvested: string | null;
  /** Days of age on which flies are taken. */
  harvests: number[];
  x: (age: number) => number;
  height: number;
}

const rowHeight = 40;
const fliesHeight = 104;
const gap = 28;
const top = 26;

/** Bands of `days` days over `width` px; `alone` is the same cup with nothing taken out. */
export function stageBands(
  life: LifecycleAnswer,
  alone: LifecycleAnswer | null,
  days: number,
  width: number,
): StageBands {
  const x = (age: number) => (age / Math.max(1, days)) * width;
  const rows: [BandName, number[], number][] = [
    ['eggs', life.eggsByDay, rowHeight],
    ['larvae', life.larvaeByDay, rowHeight],
    ['pupae', life.pupaeByDay, rowHeight],
    ['flies', life.onHandByDay, fliesHeight],
  ];
  let base = top;
  const bands = rows.map(([name, series, height]): StageBand => {
    base += height;
    const shown = upTo(series, days);
    const mostOf = name === 'flies' ? [...shown, ...upTo(alone?.onHandByDay ?? [], days)] : shown;
    const highest = Math.max(0, ...mostOf);
    const scale = height / Math.max(1, highest);
    const path =
      area<number>(
        (_, age) => x(age),
        base,
        (count) => base - count * scale,
      ).curve(curveMonotoneX)(shown) ?? '';
    const band = { name, base, height, most: Math.max(0, ...shown), highest, path };
    base += gap;
    return band;
  });
  return {
    bands,
    unharvested: aloneLine(alone, bands, days, x),
    harvests: harvestAges(life, days),
    x,
    height: base - gap,
  };
}

function aloneLine(alone: LifecycleAnswer | null, bands: StageBand[], days: number, x: (age: number) => number) {
  const flies = bands.at(-1);
  if (!alone || !flies) return null;
  const shown = upTo(alone.onHandByDay, days);
  const scale = flies.height / Math.max(1, flies.highest);
  return line<number>(
    (_, age) => x(age),
    (count) => flies.base - count * scale,
  ).curve(curveMonotoneX)(shown);
}

function upTo(series: number[], days: number): number[] {
  return series.slice(0, Math.floor(days) + 1);
}

function harvestAges(life: LifecycleAnswer, days: number): number[] {
  return life.harvestedByDay.flatMap((flies, age) => (flies >= 1 && age <= Math.min(days, life.spentDay) ? [age] : []));
}
