/** A month on paper for the fridge: weeks from Monday, each day with its jobs and boxes to tick. */
import {
  addDays,
  day,
  dayNumber,
  type Day,
  failed,
  monthOf,
  ok,
  type Result,
  weekdayIndex,
} from '../../foundation/index.ts';
import type { Language } from '../text/catalogue.ts';
import { texts } from '../text/texts.ts';
import type { Cell, Sheet } from './sheet.ts';

export interface MonthRequest {
  language: Language;
  household: string;
  year: number;
  /** 1 to 12. */
  month: number;
  jobs: readonly { on: Day; title: string }[];
}

/** The month's sheet, landscape. */
export function monthSheet(request: MonthRequest): Result<Sheet> {
  const { language, year, month } = request;
  if (!Number.isInteger(month) || month < 1 || month > 12) {
    return failed({ where: 'month', found: String(month), expected: 'a whole number from 1 to 12' });
  }
  if (!Number.isInteger(year) || year < 1990 || year > 2200) {
    return failed({ where: 'year', found: String(year), expected: 'a year from 1990 to 2200' });
  }
  const t = texts(language);
  return ok({
    language,
    title: t.monthTitle(year, month),
    subtitle: `${request.household} · ${t.sheets.monthLegend}`,
    orientation: 'landscape',
    blocks: [{ kind: 'table', head: t.weekdays, rows: weeksOf(request), isGrid: true }],
  });
}

function weeksOf({ year, month, jobs }: MonthRequest): Cell[][] {
  const first = day(`${year}-${String(month).padStart(2, '0')}-01`);
  const weeks: Cell[][] = [];
  for (
    let monday = addDays(first, -weekdayIndex(dayNumber(first)));
    isBeforeEnd(monday, first);
    monday = addDays(monday, 7)
  ) {
    const days = Array.from({ length: 7 }, (_, i) => addDays(monday, i));
    weeks.push(days.map((d) => (monthOf(d) === month ? dayCell(d, jobs) : [])));
  }
  return weeks;
}

function isBeforeEnd(monday: Day, first: Day): boolean {
  return monday < first || monday.slice(0, 7) === first.slice(0, 7);
}

function dayCell(on: Day, jobs: MonthRequest['jobs']): Cell {
  const number = { text: String(Number(on.slice(8))), isStrong: true };
  return [number, ...jobs.filter((j) => j.on === on).map(({ title }) => ({ text: title, hasBox: true }))];
}
