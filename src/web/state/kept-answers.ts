/**
 * The last answers, kept on the device: a page that is opened again on the same day with the same
 * logbook shows its jobs at once. An answer follows from logbook, day and program alone, so one that was
 * given for the same three is still true.
 */
import type { ForecastAnswer, TodayAnswer } from '../../app/index.ts';
import type { Entry } from '../../logbook/index.ts';
import { remember, remembered } from './device-memory.ts';

export interface KeptAnswers {
  today?: TodayAnswer;
  forecast?: ForecastAnswer;
}

const key = 'flylarder answers';
const aheadKey = 'flylarder answers ahead';

/** What an answer follows from: the day, the entries (ids are never used twice), and the program's build. */
export function basisOf(on: string, entries: readonly Entry[], program: string): string {
  const newest = entries.reduce((last, { id }) => (id > last ? id : last), '');
  return `${on} ${entries.length} ${newest} ${program}`;
}

export function keptAnswers(basis: string): KeptAnswers {
  return answersUnder(key, basis) ?? answersUnder(aheadKey, basis) ?? {};
}

/** A device without room for them costs the next opening a moment, nothing else. */
export function keepAnswers(basis: string, answers: KeptAnswers): void {
  remember(key, JSON.stringify({ basis, answers: { ...keptAnswers(basis), ...answers } }));
}

/** An answer worked out before its day: the first opening of that day shows it, if nothing was written since. */
export function keepAhead(basis: string, answers: KeptAnswers): void {
  remember(aheadKey, JSON.stringify({ basis, answers }));
}

function answersUnder(name: string, basis: string): KeptAnswers | null {
  try {
    const kept = JSON.parse(remembered(name) ?? 'null') as { basis: string; answers: KeptAnswers } | null;
    return kept?.basis === basis ? kept.answers : null;
  } catch {
    return null;
  }
}
