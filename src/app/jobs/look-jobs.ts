/** Looks worth taking: the day after a start, when a stage is due, and when a cup is off its course. */
import { type Day, dayFromNumber, dayNumber } from '../../foundation/index.ts';
import type { CultureToday, Job } from '../answers.ts';
import { dayWords } from '../day-words.ts';
import type { CupHistory } from '../takes.ts';

const looksFor = ['larvae', 'pupae', 'first flies'];
/** Days between two looks at a cup that is off its course. */
const lookAgainDays = 3;

export function lookJobs(cups: CupHistory[], states: CultureToday[], today: number, daysAhead: number): Job[] {
  const jobs = states.flatMap((state) => {
    const cup = cups.find((c) => c.culture.culture === state.id) as CupHistory;
    return [...nextDayLook(cup, today), ...dueStages(state, today), ...strayCup(cup, state, today)];
  });
  const last = dayFromNumber(today + daysAhead);
  return jobs.filter((job) => job.date <= last);
}

function lookJob(on: number, culture: CultureToday['id'], strain: string, why: string): Job {
  const date = dayFromNumber(on);
  return { id: `${date}:look:${culture}`, date, kind: 'look', strain, cultures: [culture], why, firmness: 'firm' };
}

function nextDayLook({ culture, start }: CupHistory, today: number): Job[] {
  const due = start + 1;
  const looked = culture.seen.some((s) => s.on > culture.startedOn);
  if (culture.origin === 'bought' || looked || due < today) return [];
  const why = `${culture.label} was started the day before: are the founders alive, is the medium moist and not wet?`;
  return [lookJob(due, culture.culture, culture.strain, why)];
}

/** A stage whose middle date has come and that nobody has noted yet. */
function dueStages(state: CultureToday, today: number): Job[] {
  return state.nextEvents
    .filter((e) => looksFor.includes(e.event))
    .map((e) => {
      const why = `${state.label}: ${e.event} are due about ${words(e.p50)} (${words(e.p05)} to ${words(e.p95)}); a note sharpens the forecast.`;
      return lookJob(Math.max(today, dayNumber(e.p50 as Day)), state.id, state.strain, why);
    });
}

function words(date: string): string {
  return dayWords(date as Day);
}

function strayCup(cup: CupHistory, state: CultureToday, today: number): Job[] {
  const warning = state.warnings.at(-1);
  const lately = cup.culture.seen.some((s) => s.on > dayFromNumber(today - lookAgainDays));
  if (warning === undefined || lately) return [];
  return [lookJob(today, state.id, state.strain, `${state.label}: ${warning}`)];
}
