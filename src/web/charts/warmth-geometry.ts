/**
 * A place's warmth as geometry: the last weeks as they were read (a line of daily means, a stroke from each
 * day's lowest to its highest), the days ahead as a band about their middle, the season alone, the limits.
 */
import { scaleLinear } from 'd3-scale';
import { area, line } from 'd3-shape';
import type { TimeAxis } from './axis.ts';

export interface WarmthDay {
  date: string;
  p05C: number;
  p50C: number;
  p95C: number;
  usualC: number;
  /** True when it was read; then the band has no width. */
  read: boolean;
  minC: number | null;
  maxC: number | null;
}

export interface WarmthGeometry {
  /** Where nobody read, and ahead: what is likely. */
  band: string;
  middle: string;
  season: string;
  /** What was expected some days before. */
  expected: string;
  dots: { x: number; y: number; date: string }[];
  strokes: { x: number; top: number; bottom: number; date: string }[];
  /** The keeper's limits that lie within the picture. */
  limits: { y: number; celsius: number; which: 'low' | 'high' }[];
  y: (celsius: number) => number;
  lowestC: number;
  highestC: number;
}

export interface WarmthPictureOf {
  days: WarmthDay[];
  limitsC: { low: number; high: number };
  expected: { date: string; expectedC: number }[];
}

/** Degrees around the drawn ones, so that nothing touches the frame; and the least that a picture spans, C. */
const marginC = 0.7;
const leastSpanC = 6;
/** A limit further away than this from all that is drawn would only flatten the picture, C. */
const limitWithinC = 4;

export function warmthGeometry(
  { days, limitsC, expected }: WarmthPictureOf,
  axis: TimeAxis,
  height: number,
): WarmthGeometry {
  const { lowestC, highestC } = rangeOf(days, limitsC);
  const y = scaleLinear([lowestC, highestC], [height, 0]);
  const x = (day: { date: string }) => axis.x(day.date);
  const isDrawn = new Set(axis.days);
  return {
    band:
      area<WarmthDay>(
        x,
        (day) => y(day.p05C),
        (day) => y(day.p95C),
      )(days) ?? '',
    middle: line<WarmthDay>(x, (day) => y(day.p50C))(days) ?? '',
    season: line<WarmthDay>(x, (day) => y(day.usualC))(days) ?? '',
    expected: runs(
      expected.filter(({ date }) => isDrawn.has(date)),
      axis,
    )
      .map((run) => line<{ date: string; expectedC: number }>(x, (day) => y(day.expectedC))(run) ?? '')
      .join(''),
    dots: days.filter((day) => day.read).map((day) => ({ x: x(day), y: y(day.p50C), date: day.date })),
    strokes: days.flatMap((day) =>
      day.minC === null || day.maxC === null
        ? []
        : [{ x: x(day), top: y(day.maxC), bottom: y(day.minC), date: day.date }],
    ),
    limits: (['low', 'high'] as const)
      .map((which) => ({ which, celsius: limitsC[which], y: y(limitsC[which]) }))
      .filter(({ celsius }) => celsius > lowestC && celsius < highestC),
    y,
    lowestC,
    highestC,
  };
}

function rangeOf(days: WarmthDay[], limits: { low: number; high: number }): { lowestC: number; highestC: number } {
  const all = days.flatMap((day) => [day.p05C, day.p95C, day.usualC, day.minC ?? day.p05C, day.maxC ?? day.p95C]);
  const drawn = { low: Math.min(...all), high: Math.max(...all) };
  const low = limits.low > drawn.low - limitWithinC ? Math.min(drawn.low, limits.low) : drawn.low;
  const high = limits.high < drawn.high + limitWithinC ? Math.max(drawn.high, limits.high) : drawn.high;
  const more = Math.max(0, (leastSpanC - (high - low)) / 2);
  return { lowestC: low - more - marginC, highestC: high + more + marginC };
}

/** Days with no more than two unread between them, so that no line is drawn over a longer gap. */
function runs<D extends { date: string }>(days: D[], axis: TimeAxis): D[][] {
  const found: D[][] = [];
  for (const day of days) {
    const run = found.at(-1);
    const last = run?.at(-1);
    if (run && last && axis.x(day.date) - axis.x(last.date) < 3.5 * axis.dayWidth) run.push(day);
    else found.push([day]);
  }
  return found;
}
