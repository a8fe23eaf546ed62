/** Plans side by side, and the price of rules, as text. */
import type { CompareAnswer, PlanColumn, RulePricesAnswer } from '../../app/index.ts';
import { longDay } from './day-text.ts';
import { chance, counted, table, wrapped } from './layout.ts';

export function compareText(answer: CompareAnswer): string[] {
  const head = ['', 'cups', 'bought', 'sessions', answer.currency, 'hours', 'worst day', 'bound'];
  return [
    `Plans of ${counted(answer.weeks, 'week')} from ${longDay(answer.on)}, ${answer.scenarios} worlds, seed ${answer.seed}`,
    '',
    ...table(
      head,
      answer.columns.map((column) => row(column, answer.scenarios)),
      [1, 2, 3, 4, 5, 6, 7],
    ),
    '',
    ...answer.columns.slice(1).flatMap(({ title, verdict }) => wrapped(`${title}: ${verdict}`)),
    '',
    ...wrapped(
      `${answer.currency} by your own weights of cup, session and bought cup; hours of starting, mixing and washing ` +
        '(common practice). Bound: cups that the need alone takes, without deaths or whole cups; no plan reaches it.',
    ),
  ];
}

function row(column: PlanColumn, scenarios: number): string[] {
  return [
    column.title.slice(0, 26),
    column.culturesPlanned.toFixed(1),
    column.boughtCultures.toFixed(1),
    column.sessionsPlanned.toFixed(1),
    column.cost.toFixed(0),
    (column.workMinutes / 60).toFixed(0),
    `${chance(column.worstDayServiceLevel, scenarios)}${column.holds ? '' : ' !'}`,
    column.lowerBoundCultures.toFixed(0),
  ];
}

export function rulePricesText(answer: RulePricesAnswer): string[] {
  const second = answer.secondBest
    ? [`Second-best plan: ${answer.secondBest.title}. ${answer.secondBest.verdict} ${costs(answer)}`]
    : ['There is no other rhythm of the week to compare with.'];
  return [
    `What your rules cost in a quarter, from ${longDay(answer.on)}, seed ${answer.seed}`,
    '',
    ...answer.rules.flatMap(({ verdict }) => wrapped(verdict)),
    '',
    ...second.flatMap((text) => wrapped(text)),
  ];
}

function costs({ best, secondBest, currency, weeks }: RulePricesAnswer): string {
  const cost = (column: PlanColumn) => column.cost.toFixed(0);
  return secondBest
    ? `It costs ${cost(secondBest)} ${currency} against ${cost(best)} in ${counted(weeks, 'week')}.`
    : '';
}
