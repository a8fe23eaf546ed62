/** What warmth has done and will do, as sentences of the page's language and the keeper's degrees. */
import type { TemperatureAnswer, TemperatureWhatIfAnswer } from '../../../app/index.ts';
import { shortDay } from '../../days/calendar.ts';
import { placeName } from '../../state/words.ts';
import { locale, t } from '../../text/text.svelte.ts';
import { degrees, degreesApart, setDegrees } from './degrees.ts';

export type Place = TemperatureAnswer['places'][number];
export type Cup = TemperatureAnswer['cultures'][number];
export type ChangedCup = TemperatureWhatIfAnswer['cultures'][number];

export function alarmSentence({
  place,
  date,
  kind,
  cupsC,
  limitC,
  sterile,
  frost,
}: { place: string } & Place['alarms'][number]): string {
  const params = { place, day: shortDay(date, locale()), degrees: degrees(cupsC), limit: setDegrees(limitC) };
  const harm = sterile ? t('warmth.alarm.sterile') : frost ? t('warmth.alarm.frost') : '';
  return `${t(`warmth.alarm.${kind}`, params)} ${harm}`.trim();
}

export interface ShiftOfPlace {
  cause: string;
  cups: string[];
}

/** What the last week did, place by place: its cause once, and every cup that it touches. */
export function shiftsByPlace(cups: readonly Cup[]): ShiftOfPlace[] {
  const byCause = new Map<string, string[]>();
  for (const cup of cups) {
    if (cup.shiftCause === null) continue;
    const cause = causeSentence(cup.place, cup.shiftCause);
    byCause.set(cause, [...(byCause.get(cause) ?? []), shiftSentence(cup)]);
  }
  return [...byCause].map(([cause, touched]) => ({ cause, cups: touched }));
}

function causeSentence(place: string | null, { kind, days, meanOffC }: NonNullable<Cup['shiftCause']>): string {
  const off = t(meanOffC < 0 ? 'warmth.below' : 'warmth.above', { degrees: degreesApart(Math.abs(meanOffC)) });
  return t(`warmth.shift.${kind}`, { count: days, place: placeName(place), off });
}

function shiftSentence({ label, shiftDays, firstAdults }: Cup): string {
  const params = { cup: label, count: Math.abs(shiftDays), day: shortDay(firstAdults, locale()) };
  return t(shiftDays > 0 ? 'warmth.shift.later' : 'warmth.shift.earlier', params);
}

/** What was read last, what the coming week is likely to have, and how good such words were so far. */
export function placeSentence({ latest, ahead }: Place): string {
  const read = latest
    ? t(latest.minC === null || latest.maxC === null ? 'warmth.latest' : 'warmth.latestRange', {
        degrees: degrees(latest.meanC),
        low: degrees(latest.minC ?? latest.meanC, 0),
        high: degrees(latest.maxC ?? latest.meanC, 0),
        day: shortDay(latest.on, locale()),
      })
    : t('warmth.neverRead');
  const week = ahead.slice(0, 7);
  const mean = week.reduce((sum, day) => sum + day.p50C, 0) / week.length;
  const next = t('warmth.week', {
    degrees: degrees(mean),
    low: degrees(Math.min(...week.map((day) => day.p05C)), 0),
    high: degrees(Math.max(...week.map((day) => day.p95C)), 0),
  });
  return `${read} ${next}`;
}

/** The first day on which the room is more likely than not beyond a limit, cups' own warmth included. */
export function limitAhead({ ahead, limitsC, cupOffsetC }: Place): string | null {
  const over = ahead.find((day) => day.p50C + cupOffsetC > limitsC.high);
  const under = ahead.find((day) => day.p50C + cupOffsetC < limitsC.low);
  if (over) return t('warmth.overAhead', { day: shortDay(over.date, locale()), limit: setDegrees(limitsC.high) });
  return under ? t('warmth.underAhead', { day: shortDay(under.date, locale()), limit: setDegrees(limitsC.low) }) : null;
}

/** By how much what is next in a cup's life comes later, or earlier. */
export function changeSentence({ label, next, nextLaterDays, ...dates }: ChangedCup): string {
  const { p05, p50, p95 } = nextLaterDays;
  const days = (n: number) => Math.abs(n).toLocaleString(locale(), { maximumFractionDigits: 1 });
  const [near, far] = [p05, p95].toSorted((a, b) => Math.abs(a) - Math.abs(b)) as [number, number];
  const what = t(`warmth.next.${next}`);
  if (p50 === 0) return t('warmth.noChange', { cup: label, what });
  const params = {
    cup: label,
    what,
    count: Math.abs(p50),
    day: shortDay(dates[next].changed, locale()),
    before: shortDay(dates[next].asIs, locale()),
    band: near === far ? '' : ` (${t('warmth.band', { low: p05 * p95 < 0 ? '0' : days(near), high: days(far) })})`,
  };
  return t(p50 > 0 ? 'warmth.held' : 'warmth.hurried', params);
}
