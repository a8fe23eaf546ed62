/** The plan, day by day, as text. */
import type { Job, PlanAnswer } from '../../app/index.ts';
import { longDay, shortDay } from './day-text.ts';
import { jobSentence, type LabelBook } from './job-text.ts';
import { counted, percent, wrapped } from './layout.ts';

export function planText(answer: PlanAnswer, labels: LabelBook): string[] {
  return [
    `Plan from ${longDay(answer.on)}, ${counted(answer.weeks, 'week')}, seed ${answer.seed}`,
    '',
    ...section(
      'Firm',
      answer.jobs.filter((job) => job.firmness === 'firm'),
      labels,
      true,
    ),
    ...section(
      'Expected, to be decided again',
      answer.jobs.filter((job) => job.firmness === 'expected'),
      labels,
      false,
    ),
    ...summary(answer, labels),
  ];
}

function section(title: string, jobs: Job[], labels: LabelBook, withReasons: boolean): string[] {
  if (jobs.length === 0) return [];
  const lines = jobs.flatMap((job, i) => {
    const date = job.date === jobs[i - 1]?.date ? ' '.repeat(10) : shortDay(job.date);
    const reason = withReasons ? wrapped(job.why, ' '.repeat(14)) : [];
    return [...wrapped(jobSentence(job, labels), `  ${date}  `), ...reason];
  });
  return [title, ...lines, ''];
}

function summary(answer: PlanAnswer, labels: LabelBook): string[] {
  const bought = answer.boughtCultures > 0 ? ` and ${counted(answer.boughtCultures, 'bought cup')}` : '';
  const worst = answer.worstDay ? ` on ${longDay(answer.worstDay)}` : '';
  const first = Object.entries(answer.homeGrownFrom).flatMap(([strain, date]) =>
    date ? [`Home-grown ${labels.strain(strain)} from ${longDay(date)} on.`] : [],
  );
  return [
    ...wrapped(
      `${counted(answer.culturesPlanned, 'cup')}${bought} in ${counted(answer.sessionsPlanned, 'session')}; ` +
        `no plan can do with fewer than ${counted(Math.ceil(answer.lowerBoundCultures), 'cup')}.`,
    ),
    ...wrapped(
      `The worst day is ${percent(answer.worstDayServiceLevel)} safe${worst}; ` +
        `${answer.expectedShortfallDays.toFixed(2)} short days expected; ` +
        `chance of none at all ${percent(answer.chanceOfNoShortfall)}.`,
    ),
    ...first.flatMap((text) => wrapped(text)),
  ];
}
