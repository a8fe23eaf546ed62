/**
 * One cup's life as a line on the time axis: eggs as dots, larvae as a wave, pupae as beads, and flies
 * as a swelling whose height is the flies on hand. What lies behind today is solid, what lies ahead open.
 */
import { area, curveMonotoneX } from 'd3-shape';
import type { CupLife } from '../../app/index.ts';
import { dayIndex } from '../days/calendar.ts';
import type { TimeAxis } from './axis.ts';

export interface LifeLine {
  eggs: [number, number] | null;
  larvae: string | null;
  pupae: [number, number] | null;
  fliesPast: string | null;
  fliesAhead: string | null;
  /** The thin thread that the swelling hangs on, and where it ends. */
  thread: [number, number] | null;
  endX: number | null;
}

export function lifeLine(
  life: CupLife,
  axis: TimeAxis,
  today: string,
  halfHeight: number,
  mostFlies: number,
): LifeLine {
  const x = (days: number) => axis.x(life.from, days);
  const span = dayIndex(life.until) - dayIndex(life.from);
  const cut = (from: number, to: number): [number, number] | null => clip(x(from), x(Math.min(to, span)), axis.width);
  const larvae = cut(life.larvaeAt, life.pupaeAt);
  const now = dayIndex(today) - dayIndex(life.from);
  const endX = x(span);
  return {
    eggs: cut(0, life.larvaeAt),
    larvae: larvae && wave(larvae[0], larvae[1]),
    pupae: cut(life.pupaeAt, life.fliesAt),
    fliesPast: swelling(life, x, life.fliesAt, Math.min(now, span), halfHeight, mostFlies),
    fliesAhead: swelling(life, x, Math.max(now, life.fliesAt), span, halfHeight, mostFlies),
    thread: cut(life.fliesAt, span),
    endX: endX >= 0 && endX <= axis.width ? endX : null,
  };
}

function clip(from: number, to: number, width: number): [number, number] | null {
  const left = Math.max(-8, from);
  const right = Math.min(width + 8, to);
  return right > left ? [left, right] : null;
}

/** A sine of 9 px a wave, as quadratic curves about y = 0. */
export function wave(from: number, to: number): string {
  const half = 4.5;
  let path = `M${from.toFixed(1)} 0`;
  for (let x = from, up = true; x < to; x += half, up = !up) {
    const end = Math.min(x + half, to);
    path += `Q${((x + end) / 2).toFixed(1)} ${up ? -5 : 5} ${end.toFixed(1)} 0`;
  }
  return path;
}

function swelling(
  life: CupLife,
  x: (days: number) => number,
  from: number,
  to: number,
  halfHeight: number,
  mostFlies: number,
): string | null {
  if (to <= from) return null;
  const ages = [from, ...wholeDaysBetween(from, to), to];
  const half = (age: number) =>
    halfHeight *
    Math.sqrt(fliesAt(life, age) / Math.max(1, mostFlies)) *
    Math.min(1, (age - life.fliesAt) / opensInDays);
  return area<number>(
    (age) => x(age),
    (age) => half(age),
    (age) => -half(age),
  ).curve(curveMonotoneX)(ages);
}

/** The first flies open the swelling from a point. */
const opensInDays = 1.5;

function wholeDaysBetween(from: number, to: number): number[] {
  const first = Math.floor(from) + 1;
  return Array.from({ length: Math.max(0, Math.ceil(to) - first) }, (_, i) => first + i);
}

/** Flies at a fractional age, between the whole days. */
function fliesAt(life: CupLife, age: number): number {
  const low = Math.floor(age);
  const a = life.flies[low] ?? 0;
  const b = life.flies[low + 1] ?? a;
  return Math.max(0, a + (b - a) * (age - low));
}
