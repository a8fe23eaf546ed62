/**
 * The jobs as an iCalendar object (RFC 5545), to subscribe to or to import. Events keep their UID for as
 * long as they mean the same job, so a changed plan moves an event and never doubles it; SEQUENCE grows
 * with the day the plan was made. An event without a time is a date, not midnight; one with a time is
 * given in UTC, reckoned for its own day, so summer time is right without a table of zones in the file.
 */
import ical, { ICalAlarmRelatesTo, ICalAlarmType, type ICalCalendar, ICalCalendarMethod } from 'ical-generator';
import { Temporal } from 'temporal-polyfill';
import { type Day, day, daysBetween, failed, ok, type Problem, type Result } from '../../foundation/index.ts';

export interface CalendarEvent {
  /** What stays the same when the job moves: letters, digits, dots and hyphens. */
  key: string;
  on: Day;
  title: string;
  details: string;
  /** Opened from the details, e.g. the cup's page. */
  link: string | null;
}

export interface CalendarRequest {
  /** Tells this household's events from any other's; part of every UID. */
  calendarKey: string;
  name: string;
  events: readonly CalendarEvent[];
  /** The day the plan is for, and the instant (ISO, UTC) at which this text is made. */
  on: Day;
  madeAt: string;
  timeZone: string;
  /** At which time of day jobs are done and how long they take; null = a day without a time. */
  at: { hour: number; minute: number; takesMinutes: number } | null;
  /** Alarm: minutes before the start, or for days without a time the minute of the day (480 = 8:00); null = none. */
  alarmMinutes: number | null;
}

/** Hours after which a subscribed calendar should look again. */
const refreshHours = 6;
const sequenceEpoch = day('2020-01-01');

/** The calendar as text with CRLF line ends; refused when a key, the zone or the instant is not usable. */
export function calendarText(request: CalendarRequest): Result<string> {
  const problems = problemsOf(request);
  if (problems.length > 0) return failed(...problems);
  const calendar = ical({
    name: escapedText(request.name),
    prodId: { company: 'Flylarder', product: 'Flylarder', language: 'EN' },
    method: ICalCalendarMethod.PUBLISH,
    scale: 'gregorian',
    ttl: refreshHours * 3600,
  });
  for (const event of request.events) addEvent(calendar, event, request);
  return ok(withStandardLineEnds(withZoneHint(calendar.toString(), request.timeZone)));
}

function addEvent(calendar: ICalCalendar, event: CalendarEvent, request: CalendarRequest): void {
  const created = calendar.createEvent({
    id: `${event.key}.${request.calendarKey}@flylarder`,
    sequence: Math.max(0, daysBetween(sequenceEpoch, request.on)),
    stamp: Temporal.Instant.from(request.madeAt),
    summary: event.title,
    description: event.link === null ? event.details : `${event.details}\n${event.link}`,
    ...timesOf(event.on, request),
  });
  if (request.alarmMinutes === null) return;
  const seconds = request.alarmMinutes * 60;
  const alarm = created.createAlarm({ type: ICalAlarmType.display, description: event.title });
  if (request.at === null) alarm.triggerAfter(seconds).relatesTo(ICalAlarmRelatesTo.start);
  else alarm.triggerBefore(seconds);
}

function timesOf(on: Day, request: CalendarRequest) {
  const date = Temporal.PlainDate.from(on);
  if (request.at === null) return { allDay: true, start: date, end: date.add({ days: 1 }) };
  const { hour, minute, takesMinutes } = request.at;
  const start = date.toZonedDateTime({ timeZone: request.timeZone, plainTime: new Temporal.PlainTime(hour, minute) });
  return { start, end: start.add({ minutes: takesMinutes }) };
}

function problemsOf(request: CalendarRequest): Problem[] {
  const problems: Problem[] = [];
  const keys = new Set<string>();
  for (const { key } of request.events) {
    if (!/^[A-Za-z0-9.-]+$/.test(key)) {
      problems.push({ where: 'event', found: `the key "${key}"`, expected: 'letters, digits, dots and hyphens' });
    }
    if (keys.has(key)) problems.push({ where: 'event', found: `the key "${key}" twice`, expected: 'one event a key' });
    keys.add(key);
  }
  if (!/^[A-Za-z0-9.-]+$/.test(request.calendarKey)) {
    problems.push({
      where: 'calendarKey',
      found: `"${request.calendarKey}"`,
      expected: 'letters, digits, dots, hyphens',
    });
  }
  const probe = (where: string, found: string, expected: string, read: () => unknown) => {
    try {
      read();
    } catch {
      problems.push({ where, found: `"${found}"`, expected });
    }
  };
  probe('timeZone', request.timeZone, 'a zone such as Europe/Berlin', () =>
    Temporal.PlainDate.from('2026-01-01').toZonedDateTime(request.timeZone),
  );
  probe('madeAt', request.madeAt, 'an instant such as 2026-11-25T10:00:00Z', () =>
    Temporal.Instant.from(request.madeAt),
  );
  return problems;
}

/** The library writes a calendar's name as it is; the standard's TEXT escapes these (section 3.3.11). */
function escapedText(text: string): string {
  return text.replaceAll(/[\\;,]/g, (c) => `\\${c}`).replaceAll(/\r\n|\r|\n/g, '\\n');
}

/**
 * Tells readers which zone the household lives in, ahead of the events as the grammar asks. The library's
 * own setting would also turn DTSTAMP into local time, its custom properties come after the events.
 */
function withZoneHint(text: string, timeZone: string): string {
  return text.replace('\r\nREFRESH-INTERVAL', `\r\nX-WR-TIMEZONE:${timeZone}\r\nREFRESH-INTERVAL`);
}

/** Ends every line with CRLF, as the standard asks, whatever a text held. */
function withStandardLineEnds(text: string): string {
  return `${text.replaceAll(/\r?\n/g, '\r\n').trimEnd()}\r\n`;
}
