/** The forecast, week by week, as text. */
import type { ForecastAnswer } from '../../app/index.ts';
import { longDay, shortDay } from './day-text.ts';
import type { LabelBook } from './job-text.ts';
import { bandText, chance, percent, table, wrapped } from './layout.ts';
import { nothingWanted } from './nothing-wanted.ts';

type ForecastDay = ForecastAnswer['days'][number];

export function forecastText(answer: ForecastAnswer, labels: LabelBook, nothingNew: boolean): string[] {
  const strains = [...new Set(answer.days.map((d) => d.strain ?? ''))];
  return [
    `Forecast from ${longDay(answer.on)}, ${answer.scenarios} scenarios, seed ${answer.seed}`,
    '',
    ...strains.flatMap((strain) => strainText(answer, strain, labels)),
    ...(strains.length === 0 ? nothingWanted() : verdict(answer, nothingNew)),
  ];
}

function strainText(answer: ForecastAnswer, strain: string, labels: LabelBook): string[] {
  const days = answer.days.filter((d) => (d.strain ?? '') === strain);
  const head = ['week from', 'wanted', 'emerging', 'least on hand (5-95 %)', 'worst day'];
  const rows: string[][] = [];
  for (let i = 0; i < days.length; i += 7) rows.push(weekRow(days.slice(i, i + 7), answer));
  return [...(strain ? [labels.strain(strain)] : []), ...table(head, rows, [1, 2, 4]), ''];
}

function weekRow(week: ForecastDay[], { serviceLevelAsked: asked, scenarios }: ForecastAnswer): string[] {
  const least = week.reduce((a, b) => (b.onHandFlies.p05 < a.onHandFlies.p05 ? b : a));
  const worst = Math.min(...week.map((d) => d.serviceLevel));
  const sum = (read: (d: ForecastDay) => number) => String(Math.round(week.reduce((total, d) => total + read(d), 0)));
  return [
    shortDay((week[0] as ForecastDay).date),
    sum((d) => d.wantedFlies),
    sum((d) => d.emergingFlies.p50),
    bandText(least.onHandFlies),
    `${chance(worst, scenarios)} safe${worst < asked ? ' !' : '  '}`,
  ];
}

function verdict(answer: ForecastAnswer, nothingNew: boolean): string[] {
  const asked = percent(answer.serviceLevelAsked);
  const risky = answer.firstRiskyDay
    ? `The first day below the ${asked} you asked for is ${longDay(answer.firstRiskyDay)}.`
    : `Every day is at least as sure as the ${asked} you asked for.`;
  const whole = `Chance of no shortfall at all: ${chance(answer.chanceOfNoShortfall, answer.scenarios)}.`;
  const run =
    answer.shortfallRunDays.mean > 0
      ? ` A shortfall lasts ${answer.shortfallRunDays.mean.toFixed(1)} days on average.`
      : '';
  const basis = nothingNew
    ? 'As if no cup were started or bought from now on.'
    : "Counting the plan's jobs as done, and decided again as you go.";
  return wrapped(`${risky} ${whole}${run} ${basis}`);
}
