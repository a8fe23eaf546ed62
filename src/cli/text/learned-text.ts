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
    ...strains.flatMap((each) => ['', labels.strain(each.strain), ...lessonLines(each), ...strayLines(each)]),
  ];
}

function lessonLines({ lessons }: Learned): string[] {
  return lessons.flatMap(({ text }) => wrapped(`- ${text}`));
}

/** Cups outside their band with what to check first, and notes that contradict the rest. */
function strayLines({ strays }: Learned): string[] {
  return strays.flatMap(({ label, offCourse, doubtful }) => [
    ...(offCourse ? wrapped(`! ${label}: ${offCourse.what}. ${causeText(offCourse.causes)}`) : []),
    ...doubtful.flatMap(({ found, expected }) => wrapped(`? ${label}: found ${found}; expected ${expected}.`)),
  ]);
}

function causeText(causes: { cause: string; check: string }[]): string {
  const likely = causes.slice(0, 3).map(({ cause }) => cause);
  return `Likely: ${likely.join(', ')}. ${causes[0]?.check ?? ''}`;
}

function factorText({ p05, p50, p95 }: Learned['pace']): string {
  return `${p50.toFixed(2)} (${p05.toFixed(2)}-${p95.toFixed(2)})`;
}
