/** What the logbook has taught, as text. */
import type { Learned } from '../../app/index.ts';
import type { LabelBook } from './job-text.ts';
import { counted, percent, table, wrapped } from './layout.ts';

export function learnedText(strains: Learned[], labels: LabelBook): string[] {
  if (strains.length === 0) return ['No cup has taught anything yet: record starts, looks and harvests.'];
  const rows = strains.map(({ strain, cups, pace, yields, failure }) => [
    labels.strain(strain),
    counted(cups, 'cup'),
    factorText(pace),
    factorText(yields),
    percent(failure.mean),
  ]);
  return [
    ...table(['strain', 'from', 'pace', 'yield', 'cups that fail'], rows, [1, 4]),
    '',
    ...wrapped(
      'Pace and yield are factors on the values of the books, with their 5 to 95 % band: pace 0.90 is a tenth slower.',
    ),
  ];
}

function factorText({ p05, p50, p95 }: Learned['pace']): string {
  return `${p50.toFixed(2)} (${p05.toFixed(2)}-${p95.toFixed(2)})`;
}
