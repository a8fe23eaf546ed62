/** What a logger's file would be read as, as text. */
import type { LoggerForm, LoggerPlan, LoggerReport } from '../../app/index.ts';
import { counted, table, wrapped } from './layout.ts';

export interface LoggerPreview {
  plan: LoggerPlan;
  report: LoggerReport;
  drafts: unknown[];
  alreadyThere: number;
}

const mostDays = 6;

export function loggerText({ plan, report, drafts, alreadyThere }: LoggerPreview): string[] {
  const { place, form, columns, doubts } = plan;
  return [
    ...table(
      ['column', 'is taken for', 'first line'],
      columns.map(({ heading, firstCell }, i) => [heading, takenFor(form, i), firstCell.slice(0, 30)]),
    ),
    '',
    ...wrapped(
      `Times are ${orderWords[form.timeOrder]}, clock of ${form.timeZone}; degrees are ${unitWords[form.unit]}.`,
    ),
    ...(plan.known ? ['Matched as the last file with these headings was.'] : []),
    ...doubts.flatMap(({ about, chosen, choices, why }) =>
      wrapped(`${optionWords[about]}: ${chosen} of ${choices.join(', ')}: ${why}.`, '? '),
    ),
    '',
    ...wrapped(
      `${counted(report.lines, 'line')}, ${counted(report.readings, 'reading')} kept, on ${counted(report.days.length, 'day')}:`,
    ),
    ...dayLines(report),
    '',
    ...report.leftOut.flatMap(({ lines, where, found, expected }) =>
      wrapped(`${counted(lines, 'line')} left out, the first ${where}: found ${found}; expected ${expected}`, '! '),
    ),
    ...report.notes.flatMap((note) => wrapped(note, '! ')),
    ...wrapped(
      `${counted(drafts.length, 'entry', 'entries')} would be written for ${place}, ${alreadyThere} there already. ` +
        'Nothing was written. Add --yes to write it.',
    ),
  ];
}

function takenFor(form: LoggerForm, column: number): string {
  if (column === form.temperatureColumn) return 'temperature';
  const at = form.timeColumns.indexOf(column);
  if (at < 0) return 'left out';
  return at === 1 ? 'clock' : 'time';
}

function dayLines({ days }: LoggerReport): string[] {
  const shown = days.length <= mostDays ? days : [...days.slice(0, mostDays / 2), ...days.slice(-mostDays / 2)];
  const lines = shown.map(
    ({ on, meanC, minC, maxC }) => `  ${on}  ${meanC.toFixed(1)} C${minC === null ? '' : ` (${minC} to ${maxC})`}`,
  );
  const between = days.length - shown.length;
  return between > 0 ? [...lines.slice(0, mostDays / 2), `  ... ${between} more`, ...lines.slice(mostDays / 2)] : lines;
}

const orderWords = {
  dmy: 'day, month, year',
  mdy: 'month, day, year',
  ymd: 'year, month, day',
  unixSeconds: 'seconds since 1970',
  unixMilliseconds: 'milliseconds since 1970',
  spreadsheetDays: "a spreadsheet's days",
};
const unitWords = { C: 'Celsius', F: 'Fahrenheit', K: 'kelvin' };
const optionWords = {
  timeOrder: 'Order of the date (--date-order)',
  temperatureColumn: 'Column (--match COLUMN=temperature)',
  unit: 'Unit (--unit)',
};
