/** Rations, as text. */
import type { HatchRange, RationAnswer, StarterRation } from '../../app/index.ts';
import { table, wrapped } from './layout.ts';

export function starterText(starters: StarterRation[], hatches: HatchRange[] = []): string[] {
  const rows = starters.map(({ animal, fliesPerFeeding, fly, everyDays, status }) => [
    animal,
    span(fliesPerFeeding.low, fliesPerFeeding.high),
    fly,
    span(everyDays.low, everyDays.high),
    status,
  ]);
  const young = hatches.map(({ name, youngLow, youngHigh, status }) => [name, span(youngLow, youngHigh), status]);
  return [
    ...table(['animal', 'flies a feeding', 'of', 'every days', 'from'], rows, [1, 3]),
    ...(young.length > 0 ? ['', ...table(['egg case', 'young', 'from'], young, [1])] : []),
  ];
}

export function rationText(answer: RationAnswer): string[] {
  const { starter, practice, energy } = answer;
  const rows = [['practice', ...cells(practice)], ...(energy ? [['energy', ...cells(energy)]] : [])];
  return [
    ...wrapped(
      `${starter.name}, ${rounded(answer.massG)} g at ${answer.temperatureC} C; one fly weighs ${span(answer.flyMassMg.low, answer.flyMassMg.high)} mg.`,
    ),
    ...wrapped(
      `${span(starter.fliesPerFeeding.low, starter.fliesPerFeeding.high)} ${starter.fly} a feeding, every ${span(starter.everyDays.low, starter.everyDays.high)} days.`,
    ),
    '',
    ...table(['one animal a day', 'flies', 'mg'], rows, [1, 2]),
    '',
    `Practice and energy: ${answer.verdict}.`,
    ...answer.cautions.flatMap((caution) => wrapped(caution, '! ')),
    ...wrapped(`Source: ${starter.source} (${starter.status}).`),
  ];
}

function cells({ fliesPerDay, mgPerDay }: RationAnswer['practice']): string[] {
  return [span(fliesPerDay.low, fliesPerDay.high), span(mgPerDay.low, mgPerDay.high)];
}

function span(low: number, high: number): string {
  return low === high ? rounded(low) : `${rounded(low)}-${rounded(high)}`;
}

function rounded(value: number): string {
  return String(Number(value.toPrecision(value < 100 ? 2 : 3)));
}
