/** Colours of the pictures, and series made from functions and from days. */
import type { Series } from './plot.ts';

export const blue = '#1f5fa8';
export const red = '#b3361b';
export const green = '#2c7a3f';
export const grey = '#666';

export const constant = (temperatureC: number, days: number) => new Float64Array(24 * days).fill(temperatureC);
export const range = (low: number, high: number, step: number) =>
  Array.from({ length: Math.round((high - low) / step) + 1 }, (_, i) => low + i * step);
export const line = (
  name: string,
  colour: string,
  xs: number[],
  of: (x: number) => number,
  kind: Series['kind'] = 'line',
) => ({ name, colour, kind, points: xs.map((x) => [x, of(x)]) }) satisfies Series as Series;
export const days = (name: string, colour: string, series: Float64Array) =>
  ({ name, colour, kind: 'line', points: Array.from(series, (value, i) => [i, value]) }) satisfies Series as Series;
