/** Need by week as geometry: a column a week, the groups one on the other, and a bracket for what is uncertain. */
import { scaleLinear } from 'd3-scale';

export interface NeedWeek {
  from: string;
  /** By group, in one order for all weeks. */
  parts: { group: string; flies: number }[];
  flies: number;
  low: number;
  high: number;
}

export interface NeedColumn {
  from: string;
  x: number;
  width: number;
  parts: { group: string; y: number; height: number }[];
  /** Null where the week is certain. */
  bracket: { x: number; top: number; bottom: number } | null;
}

export function needColumns(weeks: readonly NeedWeek[], width: number, height: number) {
  const most = Math.max(10, ...weeks.map(({ flies, high }) => Math.max(flies, high)));
  const y = scaleLinear([0, most], [height, 6]);
  const step = width / Math.max(1, weeks.length);
  return {
    columns: weeks.map((week, i) => columnOf(week, i * step, step, y)),
    ticks: y.ticks(3).map((flies) => ({ flies, y: y(flies) })),
    step,
  };
}

function columnOf(week: NeedWeek, x: number, step: number, y: (flies: number) => number): NeedColumn {
  let below = 0;
  const parts = week.parts.map(({ group, flies }) => {
    const bottom = y(below);
    below += flies;
    return { group, y: y(below), height: Math.max(0, bottom - y(below)) };
  });
  const isCertain = week.high - week.low < 0.02 * Math.max(1, week.flies);
  const bracket = isCertain ? null : { x: x + step / 2, top: y(week.high), bottom: y(week.low) };
  return { from: week.from, x: x + step * 0.16, width: step * 0.68, parts, bracket };
}
