/**
 * The plan as a calendar to subscribe to. What an event is stays the same when its day moves: the next
 * start of a strain is "start number 13" whichever day it falls on, a cup is thrown out once, a group is fed
 * on its day. So a changed plan moves events and never doubles them.
 */
import type { Day, Result } from '../foundation/index.ts';
import type { Facts } from '../logbook/index.ts';
import { type CalendarEvent, type CalendarRequest, calendarText, type Language } from '../paper/index.ts';
import type { Job } from './answers.ts';
import { jobTitle } from './kitchen/job-words.ts';

export interface CalendarQuestion {
  on: Day;
  /** The instant at which the text is made, ISO in UTC. */
  madeAt: string;
  language?: Language;
  /** Whole days when left out; else the hour and minute at which jobs are done. */
  at?: { hour: number; minute: number; takesMinutes: number };
  /** Minutes before the job, or the minute of a whole day; 480 (8:00) for whole days when left out, null = no alarm. */
  alarmMinutes?: number | null;
  /** Feeding every day drowns a phone: it is left out unless asked for. */
  withFeeding?: boolean;
  /** Tells this household's events from another's in one calendar; the first cup's key and day when left out. */
  calendarKey?: string;
  /** What a cup's address begins with; without it events carry no link. */
  linkBase?: string;
}

/** iCalendar text (RFC 5545) of the jobs. */
export function calendar(facts: Facts, jobs: readonly Job[], question: CalendarQuestion): Result<string> {
  const alarm = question.alarmMinutes === undefined ? (question.at ? 30 : 480) : question.alarmMinutes;
  const request: CalendarRequest = {
    calendarKey: question.calendarKey ?? firstCupKey(facts),
    name: facts.household.name || 'Flylarder',
    events: calendarEvents(facts, jobs, question),
    on: question.on,
    madeAt: question.madeAt,
    timeZone: facts.household.timeZone,
    at: question.at ?? null,
    alarmMinutes: alarm,
  };
  return calendarText(request);
}

/** Stays when the household is renamed, and is hardly ever another household's. */
function firstCupKey(facts: Facts): string {
  const first = [...facts.cultures].sort((a, b) => (a.startedOn < b.startedOn ? -1 : 1))[0];
  return first ? safeKey(`${first.culture}-${first.startedOn}`) : 'household';
}

/** The events of the jobs, in the jobs' order, each key once. */
export function calendarEvents(facts: Facts, jobs: readonly Job[], question: CalendarQuestion): CalendarEvent[] {
  const numbers = startNumbers(facts);
  const wanted = jobs.filter((job) => question.withFeeding === true || job.kind !== 'feed');
  const events = wanted.flatMap((job) => eventsOf(facts, job, numbers, question));
  const seen = new Set<string>();
  return events.filter(({ key }) => !seen.has(key) && seen.add(key));
}

type Numbers = Map<string, number>;

/** How many starts, purchases and looks the logbook already holds, by kind and strain or cup. */
function startNumbers(facts: Facts): Numbers {
  const numbers: Numbers = new Map();
  for (const { strain } of facts.strains) {
    const days = (origin: 'started' | 'bought') =>
      new Set(facts.cultures.filter((c) => c.strain === strain && c.origin === origin).map((c) => c.on)).size;
    numbers.set(`start ${strain}`, days('started'));
    numbers.set(`mix ${strain}`, days('started'));
    numbers.set(`buy ${strain}`, days('bought'));
    numbers.set(`receive ${strain}`, days('bought'));
  }
  for (const c of facts.cultures) numbers.set(`look ${c.culture}`, c.seen.length);
  return numbers;
}

function eventsOf(facts: Facts, job: Job, numbers: Numbers, question: CalendarQuestion): CalendarEvent[] {
  const event = (key: string, one: Job = job): CalendarEvent => ({
    key: safeKey(key),
    on: job.date as Day,
    title: jobTitle(facts, one, question.language ?? 'en'),
    details: job.why,
    link: linkOf(one, question),
  });
  switch (job.kind) {
    case 'start':
    case 'mix':
    case 'buy':
    case 'receive':
      return [event(`${job.kind}-${job.strain}-${next(numbers, `${job.kind} ${job.strain}`)}`)];
    case 'discard':
    case 'move':
      return (job.cultures ?? []).map((c) => event(`${job.kind}-${c}`, { ...job, cultures: [c] }));
    case 'look':
      return (job.cultures ?? []).map((c) =>
        event(`look-${c}-${next(numbers, `look ${c}`)}`, { ...job, cultures: [c] }),
      );
    case 'feed':
      return [event(`feed-${job.group}-${job.date}`)];
    default:
      return [event(`${job.kind}-${job.strain ?? 'all'}-${job.date}`)];
  }
}

function next(numbers: Numbers, key: string): number {
  const number = (numbers.get(key) ?? 0) + 1;
  numbers.set(key, number);
  return number;
}

function linkOf(job: Job, { linkBase }: CalendarQuestion): string | null {
  const culture = job.cultures?.[0];
  if (linkBase === undefined || culture === undefined) return null;
  return `${linkBase.replace(/\/+$/, '')}/#/culture/${encodeURIComponent(culture)}`;
}

/** Letters, digits, dots and hyphens stay; any other character becomes its code, so different keys stay different. */
function safeKey(text: string): string {
  return [...text].map((c) => (/[A-Za-z0-9-]/.test(c) ? c : `.${(c.codePointAt(0) as number).toString(16)}.`)).join('');
}
