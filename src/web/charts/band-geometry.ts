/**
 * The supply and need picture as geometry: a band of flies on hand, a comb of flies wanted, and the
 * days on which they may not meet. Heights are on a root scale, because a full shelf holds many times
 * what one day needs and both must be legible.
 */
import { scaleSqrt } from 'd3-scale';
import { area, curveMonotoneX, line } from 'd3-shape';
import type { TimeAxis } from './axis.ts';

export interface SupplyDay {
  date: string;
  wanted: number;
  onHand: { p05: number; p50: number; p95: number };
  serviceLevel: number;
}

export interface BandGeometry {
  band: string;
  low: string;
  middle: string;
  comb: { x: number; y: number; width: number; date: string }[];
  risky: { x: number; date: string }[];
  ticks: { y: number; flies: number }[];
  y: (flies: number) => number;
}

export function bandGeometry(days: SupplyDay[], axis: TimeAxis, height: number, asked: number): BandGeometry {
  const most = Math.max(10, ...days.map((day) => Math.max(day.wanted, day.onHand.p95)));
  const y = scaleSqrt([0, most], [height, 8]);
  const xOf = (day: SupplyDay) => axis.x(day.date);
  const lineOf = (value: (day: SupplyDay) => number) =>
    line<SupplyDay>(xOf, (day) => y(value(day))).curve(curveMonotoneX)(days) ?? '';
  return {
    band:
      area<SupplyDay>(
        xOf,
        (day) => y(day.onHand.p05),
        (day) => y(day.onHand.p95),
      ).curve(curveMonotoneX)(days) ?? '',
    low: lineOf((day) => day.onHand.p05),
    middle: lineOf((day) => day.onHand.p50),
    comb: days
      .filter((day) => day.wanted > 0)
      .map((day) => ({ x: xOf(day), y: y(day.wanted), width: Math.max(1.2, axis.dayWidth * 0.42), date: day.date })),
    risky: days.filter((day) => day.serviceLevel < asked).map((day) => ({ x: xOf(day), date: day.date })),
    ticks: rootTicks(most).map((flies) => ({ flies, y: y(flies) })),
    y,
  };
}

/** Round numbers that stand about evenly on a root scale, zero first. */
export function rootTicks(most: number): number[] {
  const parts = [0, 1 / 16, 1 / 4, 9 / 16, 1].map((share) => roundNumber(share * most));
  return [...new Set(parts)].filter((flies) => flies <= most);
}

/** `n` to one leading digit of 1, 2 or 5, downwards. */
function roundNumber(n: number): number {
  if (n < 1) return 0;
  const power = 10 ** Math.floor(Math.log10(n));
  const lead = n / power;
  return (lead >= 5 ? 5 : lead >= 2 ? 2 : 1) * power;
}

/**
 * The chance of falling short, hung from a ceiling: the longer, the likelier. Depth is on a root scale
 * of the chance, so that one in a hundred can be seen beside one in two, and reaches to the likeliest
 * short day, or to one in ten.
 */
export function hangingRisk(days: SupplyDay[], axis: TimeAxis, height: number, asked: number) {
  const likeliest = Math.max(0.1, ...days.map((day) => 1 - day.serviceLevel));
  const depth = scaleSqrt([0, likeliest], [0, height - 4]);
  return {
    askedY: depth(1 - asked),
    drops: days.map((day) => ({
      x: axis.x(day.date),
      depth: depth(1 - day.serviceLevel),
      short: day.serviceLevel < asked,
      date: day.date,
    })),
  };
}
