/** One cup's life, as text. */
import type { LifecycleAnswer } from '../../app/index.ts';
import { bandText, table, wrapped } from './layout.ts';

export function lifecycleText(answer: LifecycleAnswer): string[] {
  const dayText = (age: number) => `day ${Math.round(age)}`;
  const rows = [
    ['first flies', dayText(answer.firstEmergenceDay)],
    ['most flies', dayText(answer.peakDay)],
    ['founders may be taken', `${dayText(answer.founderFromDay)} to ${dayText(answer.founderUntilDay)}`],
    ['spent, throw out', dayText(answer.spentDay)],
    [
      'mites, if any came in at the start',
      answer.mitesTroubleDay === null ? 'not so soon' : dayText(answer.mitesTroubleDay),
    ],
  ];
  return [
    `${answer.strain} at ${answer.temperatureC.toFixed(1)} C: ${answer.eggToAdultDays.toFixed(1)} days from egg to adult`,
    `  (${answer.stages.map(({ stage, days }) => `${stage} ${days.toFixed(1)}`).join(', ')})`,
    '',
    ...table(['in a cup', 'days from starting it'], rows),
    '',
    ...wrapped(
      `${bandText(answer.adultsEmerged)} flies from one cup (middle, 5 to 95 %); chance among the founders alone ` +
        `makes it ${bandText(answer.chanceAlone)}. ${massText(answer)}`,
    ),
    ...wrapped(emergenceText(answer)),
    ...wrapped(`Flies by founders: ${foundersText(answer)}. Best started with about ${answer.bestFounders}.`),
    ...wrapped(`Of a hundred such cups ${failuresText(answer)} fail before day ${Math.round(answer.spentDay)}.`),
    '',
    ...weeks(answer),
  ];
}

function massText({ flyMassMg }: LifecycleAnswer): string {
  return flyMassMg === null
    ? ''
    : `A fly weighs ${flyMassMg.toFixed(2)} mg, ${Math.round(1000 / flyMassMg)} to the gram.`;
}

/** Females before males, and the hours of the morning where it was said when it gets light. */
function emergenceText({ malesLaterHours, emergedShareByHour }: LifecycleAnswer): string {
  const first =
    malesLaterHours === null ? '' : `Females emerge ${malesLaterHours.toFixed(0)} hours before males in the mean. `;
  if (!emergedShareByHour) return first;
  const most = Math.max(...emergedShareByHour);
  const open = (hour: number) => emergedShareByHour[(hour + 24) % 24] === most;
  const opens = emergedShareByHour.findIndex((_, hour) => open(hour) && !open(hour - 1));
  const width = emergedShareByHour.filter((share) => share === most).length;
  return `${first}${Math.round(100 * width * most)} % of a day's flies come between ${opens} and ${(opens + width) % 24} o'clock.`;
}

function foundersText({ fliesByFounders }: LifecycleAnswer): string {
  const shown = new Set([10, 20, 50, 100, 200]);
  const some = fliesByFounders.filter(({ founders }) => shown.has(founders));
  return some.map(({ founders, netFlies }) => `${founders} give ${netFlies}`).join(', ');
}

/** Expected failures to the spent day, of a hundred cups, by cause. */
function failuresText({ failureByDay, spentDay }: LifecycleAnswer): string {
  const causes = [
    ['by mould', failureByDay.mould],
    ['by mites', failureByDay.mites],
    ['otherwise', failureByDay.other],
  ] as const;
  const share = (hazard: readonly number[]) => 100 * hazard.slice(0, Math.floor(spentDay)).reduce((a, b) => a + b, 0);
  return causes.map(([cause, hazard]) => `${share(hazard).toFixed(0)} ${cause}`).join(', ');
}

function weeks(answer: LifecycleAnswer): string[] {
  const rows: string[][] = [];
  const sum = (values: number[], from: number) => values.slice(from, from + 7).reduce((a, b) => a + b, 0);
  // After it is spent a cup is thrown out: what would still come is not shown.
  for (let from = 0; from <= answer.spentDay; from += 7) {
    rows.push([
      `${from}-${from + 6}`,
      String(Math.round(sum(answer.emergedByDay, from))),
      String(Math.round(sum(answer.harvestedByDay, from))),
      `${Math.round(100 * (answer.mediumLeftByDay[from] ?? 0))} %`,
    ]);
  }
  return table(['days', 'emerge', 'harvested', 'medium left'], rows, [1, 2, 3]);
}
