/** What was forecast on past days and what came, as text. */
import type { HindcastAnswer } from '../../app/index.ts';
import { longDay, shortDay } from './day-text.ts';
import { counted, percent, table, wrapped } from './layout.ts';

type Scores = HindcastAnswer['total'];

export function hindcastText(answer: HindcastAnswer): string[] {
  const { total, harvests, leadDays } = answer;
  const title = `What was forecast in the ${counted(answer.weeks, 'week')} before ${longDay(answer.on)}, and what came within ${leadDays} days`;
  if (total.notes === 0) return [...wrapped(title), '', 'No note of these weeks can be held against a forecast.'];
  const head = ['forecast of', 'notes', 'in 50 %', 'in 90 %', 'error', 'books'];
  const rows = answer.byWeek.map((week) => [shortDay(week.madeOn), ...scoreCells(week)]);
  return [
    ...wrapped(title),
    '',
    ...table(head, [...rows, ['all', ...scoreCells(total)]], [1, 2, 3, 4, 5]),
    '',
    ...wrapped(
      'Error: continuous ranked probability score of counted flies, in flies; books: the same without anything learned. Lower is better.',
    ),
    ...wrapped(
      `Of ${counted(harvests.taken, 'harvest')} that left flies behind, ${harvests.beyondTheBand} took more than the forecast's band held.`,
    ),
    ...wrapped(answer.why),
  ];
}

function scoreCells({ notes, inside50, inside90, crps, booksCrps }: Scores): string[] {
  const share = (value: number | null) => (value === null ? '' : percent(value));
  const flies = (value: number | null) => (value === null ? '' : value.toFixed(1));
  return [String(notes), share(inside50), share(inside90), flies(crps), flies(booksCrps)];
}
