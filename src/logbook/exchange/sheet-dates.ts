/** Days as spreadsheets write them. */
import { type Day, dayFromNumber, parseDay } from '../../foundation/index.ts';

export const dateOrders = ['dmy', 'mdy', 'ymd'] as const;
export type DateOrder = (typeof dateOrders)[number];

const parts = /^(\d{1,4})[./\-\s]+(\d{1,2})[./\-\s]+(\d{1,4})(?:[ T].*)?$/;
const serial = /^\d{5}(?:[.,]0+)?$/;
/** Day 0 of spreadsheets' serial dates is 1899-12-30 in days since 1970-01-01. */
const serialZero = -25_569;

/** The day that a cell names, or null. */
export function sheetDay(cell: string, order: DateOrder): Day | null {
  const text = cell.trim();
  if (serial.test(text)) return dayFromNumber(Math.floor(Number.parseInt(text, 10)) + serialZero);
  const match = parts.exec(text);
  if (!match) return null;
  const [a = '', b = '', c = ''] = match.slice(1);
  const [year, month, date] = a.length === 4 || order === 'ymd' ? [a, b, c] : order === 'dmy' ? [c, b, a] : [c, a, b];
  const iso = `${year.length === 2 ? `20${year}` : year}-${month.padStart(2, '0')}-${date.padStart(2, '0')}`;
  const day = parseDay(iso);
  return day.ok ? day.value : null;
}

/**
 * The order that reads most of the cells as days; when several do, points mean day first, and slashes
 * too, for `certain` is then false and the keeper should be asked.
 */
export function dateOrderOf(cells: readonly string[]): { order: DateOrder; certain: boolean } {
  const read = dateOrders.map((order) => ({
    order,
    days: cells.filter((cell) => sheetDay(cell, order) !== null).length,
  }));
  const best = Math.max(...read.map((r) => r.days));
  const good = read.filter((r) => r.days === best).map((r) => r.order);
  const distinct = new Set(good.map((order) => JSON.stringify(cells.map((cell) => sheetDay(cell, order)))));
  return { order: good[0] as DateOrder, certain: distinct.size === 1 };
}
