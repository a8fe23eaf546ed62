/** Which columns of a sample hold the moment, and in which order its numbers are. */
import { clockTimeMs, type TimeOrder, timeOrders, wallTime } from './time-text.ts';

export interface TimeGuess {
  timeColumns: number[];
  timeOrder: TimeOrder;
  /** Orders that read the sample as well as the one chosen. */
  equallyGood: TimeOrder[];
}

/** Share of a sample's lines that a column must read on. */
export const enoughLines = 0.7;

/** @param rows cells of the sample's later lines. */
export function guessTime(rows: string[][], width: number): TimeGuess | null {
  const whole = Array.from({ length: width }, (_, column) => ({ column, orders: ordersOf(rows, column) }));
  const dated = whole.filter(({ orders }) => orders.length > 0);
  const withClock = dated.find(({ column, orders }) => hasClock(rows, column, orders[0] as TimeOrder));
  const day = withClock ?? dated[0];
  if (!day) return null;
  const clock = withClock ? undefined : clockColumn(rows, width, day.column);
  const timeColumns = clock === undefined ? [day.column] : [day.column, clock];
  const ranked = rankOrders(rows, timeColumns, day.orders);
  return { timeColumns, timeOrder: ranked[0] as TimeOrder, equallyGood: ranked.slice(1) };
}

function ordersOf(rows: string[][], column: number): TimeOrder[] {
  return timeOrders.filter(
    (order) => shareOf(rows, (cells) => wallTime(cells[column] ?? '', order) !== null) >= enoughLines,
  );
}

function hasClock(rows: string[][], column: number, order: TimeOrder): boolean {
  return shareOf(rows, (cells) => wallTime(cells[column] ?? '', order)?.hasClock === true) >= enoughLines;
}

function clockColumn(rows: string[][], width: number, day: number): number | undefined {
  return Array.from({ length: width }, (_, column) => column).find(
    (column) => column !== day && shareOf(rows, (cells) => clockTimeMs(cells[column] ?? '') !== null) >= enoughLines,
  );
}

export function shareOf(rows: string[][], holds: (cells: string[]) => boolean): number {
  return rows.length === 0 ? 0 : rows.filter(holds).length / rows.length;
}

/** The moment in a line's time columns, ms of the wall clock, or null. */
export function momentOf(
  cells: (string | null)[],
  order: TimeOrder,
): { wallMs: number; offsetMs: number | null } | null {
  const at = wallTime(cells[0] ?? '', order);
  if (!at) return null;
  const clock = cells.length > 1 ? clockTimeMs(cells[1] ?? '') : at.ms;
  return clock === null ? null : { wallMs: at.day * 86_400_000 + clock, offsetMs: at.offsetMs };
}

/** The orders that read most lines, and of those the ones under which time runs most evenly; the best first. */
function rankOrders(rows: string[][], columns: number[], orders: TimeOrder[]): TimeOrder[] {
  const scored = orders.map((order) => {
    const times = rows.flatMap(
      (cells) =>
        momentOf(
          columns.map((c) => cells[c] ?? ''),
          order,
        )?.wallMs ?? [],
    );
    return { order, read: times.length, unevenness: unevenness(times), times: times.join() };
  });
  const best = (a: (typeof scored)[number], b: (typeof scored)[number]) =>
    b.read - a.read || a.unevenness - b.unevenness;
  const sorted = scored.toSorted(best);
  const first = sorted[0] as (typeof scored)[number];
  // A year written first or a month by its name reads alike under every order: that is no doubt.
  const others = sorted.filter((one) => best(one, first) === 0 && one.times !== first.times);
  return [first.order, ...others.map(({ order }) => order)];
}

/** The span of the sample over its typical step: small when time runs on, large when it jumps about. */
function unevenness(times: number[]): number {
  const steps = times.slice(1).map((t, i) => Math.abs(t - (times[i] as number)));
  return steps.reduce((sum, step) => sum + step, 0);
}
