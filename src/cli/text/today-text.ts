/** The day's jobs and the shelf, as text. */
import type { CultureToday, TodayAnswer } from '../../app/index.ts';
import { bareDay, longDay, shortDay } from './day-text.ts';
import { jobSentence, type LabelBook } from './job-text.ts';
import { bandText, table, wrapped } from './layout.ts';

export function todayText(answer: TodayAnswer, labels: LabelBook): string[] {
  return [
    `${longDay(answer.on)} - ${answer.household}`,
    '',
    ...jobsToday(answer, labels),
    ...jobsSoon(answer, labels),
    ...shelf(answer, labels),
    ...supply(answer, labels),
    ...answer.problems.flatMap((p) => wrapped(`${p.where}: found ${p.found}; expected ${p.expected}`, '! ')),
  ];
}

function jobsToday(answer: TodayAnswer, labels: LabelBook): string[] {
  if (answer.jobs.length === 0) return ['Nothing to do today.', ''];
  const jobs = answer.jobs.flatMap((job) => [
    ...wrapped(jobSentence(job, labels), '  * '),
    ...wrapped(job.why, '    '),
  ]);
  return ['To do today', ...jobs, ''];
}

function jobsSoon(answer: TodayAnswer, labels: LabelBook): string[] {
  if (answer.soon.length === 0) return [];
  const jobs = answer.soon.flatMap((job) => wrapped(jobSentence(job, labels), `  ${shortDay(job.date)}  `));
  return ['Coming up', ...jobs, ''];
}

function shelf(answer: TodayAnswer, labels: LabelBook): string[] {
  if (answer.cultures.length === 0) return ['No cups.', ''];
  const head = ['cup', 'strain', 'age', 'stage', 'flies (5-95 %)', 'next', 'spent'];
  const rows = answer.cultures.map((cup) => [
    cup.label,
    labels.strain(cup.strain),
    `${cup.ageDays} d`,
    cup.stage,
    bandText(cup.onHandFlies),
    nextEvent(cup),
    bareDay(cup.spentOn),
  ]);
  const warnings = answer.cultures.flatMap((cup) =>
    cup.warnings.flatMap((text) => wrapped(`${cup.label}: ${text}`, '! ')),
  );
  return ['Cups', ...table(head, rows, [2]), ...warnings, ''];
}

function nextEvent(cup: CultureToday): string {
  const next = cup.nextEvents[0];
  return next ? `${next.event} ${bareDay(next.p50)}` : '';
}

function supply(answer: TodayAnswer, labels: LabelBook): string[] {
  return Object.keys({ ...answer.wantedFlies, ...answer.onHandFlies }).map((strain) => {
    const onHand = answer.onHandFlies[strain];
    const held = onHand ? bandText(onHand) : 'none';
    return `${labels.strain(strain)}: ${Math.round(answer.wantedFlies[strain] ?? 0)} wanted today, ${held} on hand`;
  });
}
