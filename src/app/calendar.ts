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

/** The events of the jobs, in the jobs' order, each key once; jobs that are one session are one event. */
export function calendarEvents(facts: Facts, jobs: readonly Job[], question: CalendarQuestion): CalendarEvent[] {
  const wanted = sessions(jobs.filter((job) => question.withFeeding === true || job.kind !== 'feed'));
  const sessionNumber = sessionNumbers(facts, wanted);
  const events = wanted.flatMap((job) => eventsOf(facts, job, sessionNumber, question));
  const seen = new Set<string>();
  return events.filter(({ key }) => !seen.has(key) && seen.add(key));
}

/** Two jobs of a kind for one strain on one day are one session, with the cups of both. */
function sessions(jobs: readonly Job[]): Job[] {
  const merged = new Map<string, Job>();
  const rest: Job[] = [];
  for (const job of jobs) {
    if (!numberedKinds.some((kind) => kind === job.kind)) {
      rest.push(job);
      continue;
    }
    const key = `${job.kind} ${job.strain} ${job.date}`;
    const before = merged.get(key);
    if (!before) rest.push(job);
    const joined = before && { ...before, cups: (before.cups ?? 1) + (job.cups ?? 1) };
    merged.set(key, joined ?? job);
  }
  return rest.map((job) => merged.get(`${job.kind} ${job.strain} ${job.date}`) ?? job);
}

const numberedKinds = ['start', 'mix', 'buy', 'receive', 'look', 'wash', 'shop', 'stretch'] as const;
type Series = (kind: Job['kind'], of: string | null, date: string) => number;

/**
 * The number of a session in its series: how many days with such a session the logbook and the plan know up
 * to and with its own. A day on which one was written down and another is planned counts once, so the
 * numbers of later sessions do not change when a part of a day's work has been done.
 */
function sessionNumbers(facts: Facts, jobs: readonly Job[]): Series {
  const days = new Map<string, Set<string>>();
  const note = (kind: Job['kind'], of: string | null, date: string) => {
    const key = `${kind} ${of}`;
    days.set(key, (days.get(key) ?? new Set()).add(date));
  };
  for (const c of facts.cultures) {
    // An order that has arrived is known by its arrival only; medium is mixed for all of a day's starts.
    const past = c.origin === 'started' ? (['start', 'mix'] as const) : (['receive', 'buy'] as const);
    for (const kind of past) note(kind, kind === 'mix' ? null : c.strain, c.on);
    for (const { on } of c.seen) note('look', c.culture, on);
  }
  for (const { strain, on } of facts.purchases) note('buy', strain, on);
  for (const job of jobs) for (const of of seriesOf(job)) note(job.kind, of, job.date);
  return (kind, of, date) => [...(days.get(`${kind} ${of}`) ?? [])].filter((d) => d <= date).length;
}

function seriesOf(job: Job): (string | null)[] {
  return job.kind === 'look' ? (job.cultures ?? []) : [job.strain];
}

function eventsOf(facts: Facts, job: Job, sessionNumber: Series, question: CalendarQuestion): CalendarEvent[] {
  const event = (key: string, one: Job = job): CalendarEvent => ({
    key: safeKey(key),
    on: job.date as Day,
    title: jobTitle(facts, one, question.language ?? 'en'),
    details: job.why,
    link: linkOf(one, question),
  });
  const number = (of: string | null) => sessionNumber(job.kind, of, job.date);
  switch (job.kind) {
    case 'discard':
    case 'move':
      return (job.cultures ?? []).map((c) => event(`${job.kind}-${c}`, { ...job, cultures: [c] }));
    case 'look':
      return (job.cultures ?? []).map((c) => event(`look-${c}-${number(c)}`, { ...job, cultures: [c] }));
    case 'feed':
      return [event(`feed-${job.group}-${job.date}`)];
    default:
      return [event(`${job.kind}-${job.strain ?? 'all'}-${number(job.strain)}`)];
  }
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
