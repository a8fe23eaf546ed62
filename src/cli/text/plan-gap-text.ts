/** How near the best the plan is, as text: a table of steps, then the same in sentences. */
import type { GapStep, PlanGapAnswer } from '../../app/index.ts';
import { longDay } from './day-text.ts';
import { counted, table, wrapped } from './layout.ts';

const stepNames: Record<GapStep['step'], string> = {
  parts: 'parts of cups, any day',
  founders: 'with founders',
  rules: 'with your days and limits',
  wholeCups: 'with whole cups',
  search: "with the plan's way of deciding",
  uncertainty: 'the plan, not knowing',
};

export function planGapText(answer: PlanGapAnswer): string[] {
  const rows = answer.steps.map(({ step, cups, adds }) => [stepNames[step], cups.toFixed(1), adds.toFixed(1)]);
  return [
    `Where the cups go from ${longDay(answer.on)}, ${counted(answer.weeks, 'week')}, seed ${answer.seed}`,
    '',
    ...table(['', 'cups', 'adds'], rows, [1, 2]),
    '',
    ...answer.sentences.flatMap((sentence) => wrapped(sentence)),
  ];
}
