/** Temperatures of places, the cups' clocks and what-if answers, as text. */
import type { TemperatureAnswer, TemperatureWhatIfAnswer } from '../../app/index.ts';
import { bareDay, longDay } from './day-text.ts';
import { counted, percent, table, wrapped } from './layout.ts';

export function temperatureText(answer: TemperatureAnswer): string[] {
  return [
    longDay(answer.on),
    '',
    ...table(['place', 'last read', 'C', 'in a week', 'in two weeks', 'warned'], answer.places.map(placeRow)),
    '',
    ...answer.places.flatMap(({ alarms }) => alarms.flatMap(({ text }) => wrapped(text, '! '))),
    ...answer.places.flatMap(cupOffsetLines),
    ...answer.places.flatMap(hindcastLines),
    ...cups(answer),
  ];
}

function placeRow({ name, latest, ahead, limitsC }: TemperatureAnswer['places'][number]): string[] {
  const band = (i: number) => {
    const day = ahead[i];
    return day ? `${day.p50C} (${day.p05C} to ${day.p95C})` : '';
  };
  const range = latest && latest.minC !== null && latest.maxC !== null ? ` (${latest.minC} to ${latest.maxC})` : '';
  return [
    name,
    latest ? bareDay(latest.on) : 'never',
    latest ? `${latest.meanC}${range}` : '',
    band(6),
    band(13),
    `<${limitsC.low} >${limitsC.high}`,
  ];
}

/** Said where the keeper measured inside a cup. */
function cupOffsetLines({ name, cupOffset }: TemperatureAnswer['places'][number]): string[] {
  const { meanC, sdC, pairs } = cupOffset;
  if (pairs === 0) return [];
  const from = `${counted(pairs, 'reading')} in cups and beside them`;
  const caution = 'Cups that ferment are warmest in their first week and when crowded.';
  const text = `${name}: cups are ${signed(meanC)} C against the shelf, give or take ${sdC}, from ${from}. ${caution}`;
  return [...wrapped(text), ''];
}

function hindcastLines({ name, hindcast }: TemperatureAnswer['places'][number]): string[] {
  const { days, leadDays, meanErrorC, rmsErrorC, within90Share } = hindcast;
  if (meanErrorC === null || within90Share === null) return [];
  const text =
    `${name}: expected ${leadDays} days before and came, over ${days.length} days: ${meanErrorC > 0 ? '+' : ''}${meanErrorC} C ` +
    `on average, ${rmsErrorC} C root mean square, ${percent(within90Share)} within the 90 % band.`;
  return [...wrapped(text), ''];
}

function cups({ cultures }: TemperatureAnswer): string[] {
  if (cultures.length === 0) return ['No cup stands.'];
  const rows = cultures.map((cup) => [
    cup.label,
    cup.place ?? '',
    percent(cup.developmentShare),
    degreeDaysText(cup),
    cup.fliesHaveCome
      ? 'have come'
      : `${bareDay(cup.firstAdults)} (${bareDay(cup.firstAdultsBand.p05)} to ${bareDay(cup.firstAdultsBand.p95)})`,
  ]);
  return [
    ...table(['cup', 'place', 'egg to fly', 'degree-days', 'first flies'], rows, [2]),
    ...cultures.flatMap(({ shift }) => (shift === null ? [] : wrapped(shift, '  '))),
  ];
}

export function whatIfText({ cultures, cautions }: TemperatureWhatIfAnswer): string[] {
  if (cultures.length === 0) return ['No cup stands there.'];
  const change = ({ asIs, changed }: { asIs: string; changed: string }) =>
    asIs === changed ? bareDay(asIs) : `${bareDay(asIs)} -> ${bareDay(changed)}`;
  const rows = cultures.map((cup) => [
    cup.label,
    change(cup.firstAdults),
    change(cup.peak),
    change(cup.spent),
    laterText(cup),
  ]);
  return [
    ...table(['cup', 'first flies', 'most flies', 'throw out', 'held (+) or hurried (-)'], rows, [4]),
    ...cautions.flatMap((text) => wrapped(text, '! ')),
  ];
}

const nextWords = { firstAdults: 'first flies', peak: 'most flies', spent: 'throw out' };

function laterText({ next, nextLaterDays }: TemperatureWhatIfAnswer['cultures'][number]): string {
  const { p05, p50, p95 } = nextLaterDays;
  const band = p05 === p95 ? '' : ` (${signed(p05)} to ${signed(p95)})`;
  return `${nextWords[next]} ${signed(p50)} d${band}`;
}

function signed(value: number): string {
  return `${value > 0 ? '+' : ''}${value}`;
}

function degreeDaysText({
  degreeDays,
  degreeDaysNeeded,
  thresholdC,
  fliesHaveCome,
}: TemperatureAnswer['cultures'][number]): string {
  const needed = fliesHaveCome ? '' : ` of ${degreeDaysNeeded}`;
  return `${degreeDays}${needed} above ${thresholdC.toFixed(1)} C`;
}
