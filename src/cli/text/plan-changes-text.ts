/** What changed since an earlier plan, as text. */
import type { PlanChangesAnswer } from '../../app/index.ts';
import { longDay } from './day-text.ts';
import { wrapped } from './layout.ts';

export function planChangesText({ since, jobs, reasons }: PlanChangesAnswer): string[] {
  const head = `Since the plan of ${longDay(since)}`;
  if (jobs.length === 0) return [`${head} no firm job changed.`, ...reasons.flatMap((text) => wrapped(text, '  '))];
  const why = reasons.length > 0 ? reasons : ['Nothing that the log says moved much; the day moved on.'];
  return [
    `${head}:`,
    ...jobs.flatMap(({ text }) => wrapped(text, '  ')),
    'Why:',
    ...why.flatMap((text) => wrapped(text, '  ')),
  ];
}
