/** The calendar against three readers that share no code with its writer: ical.js, python3-icalendar, python3-vobject. */
import { spawnSync } from 'node:child_process';
import { readFileSync } from 'node:fs';
import { fileURLToPath } from 'node:url';
import ICAL from 'ical.js';
import { beforeAll, describe, expect, it } from 'vitest';
import { day } from '../../src/foundation/index.ts';
import { type CalendarRequest, calendarText } from '../../src/paper/index.ts';
import { hasDebian } from './debian-program.ts';

const request: CalendarRequest = {
  calendarKey: 'k7',
  name: 'Küche & Fliegen; „Regal“',
  events: [
    {
      key: 'start-hydei-12',
      on: day('2026-03-28'),
      title: 'Start 2 cups of D. hydei, "gold"; backslash \\ comma, done',
      details: `First line\nsecond line, ${'ä🪰'.repeat(60)}`,
      link: 'https://example.org/cups/12?from=calendar',
    },
    { key: 'feed-frogs-2026-03-29', on: day('2026-03-29'), title: 'Feed', details: 'x', link: null },
    { key: 'look-c9-first-flies', on: day('2026-12-31'), title: 'Look', details: 'y', link: null },
  ],
  on: day('2026-03-20'),
  madeAt: '2026-03-20T05:06:07Z',
  timeZone: 'Europe/Berlin',
  at: null,
  alarmMinutes: 480,
};
const timed: CalendarRequest = { ...request, at: { hour: 18, minute: 30, takesMinutes: 20 }, alarmMinutes: 15 };
const textOf = (r: CalendarRequest): string => {
  const text = calendarText(r);
  if (!text.ok) throw new Error(JSON.stringify(text.problems));
  return text.value;
};

interface ReadEvent {
  uid: string;
  start: string;
  end: string;
  summary: string;
  description: string;
  sequence: number;
  alarms: number[];
}

describe('lines of the file (RFC 5545, section 3.1)', () => {
  const text = textOf(request);
  it('end with CRLF and hold at most 75 octets', () => {
    expect(text.endsWith('END:VCALENDAR\r\n')).toBe(true);
    expect(text.replaceAll('\r\n', '')).not.toMatch(/[\r\n]/);
    for (const line of text.split('\r\n')) expect(Buffer.byteLength(line), line).toBeLessThanOrEqual(75);
  });
  it('give a day without a time as a date', () => {
    expect(text).toContain('DTSTART;VALUE=DATE:20260328');
    expect(text).not.toMatch(/DTSTART:20260328T/);
  });
  it('give DTSTAMP in UTC', () => expect(text).toContain('DTSTAMP:20260320T050607Z'));
  it('have the properties of a component before the components in it (section 3.4 and 3.6)', () => {
    const open: { name: string; hasParts: boolean }[] = [];
    for (const line of text.split('\r\n').filter((l) => l !== '' && !l.startsWith(' '))) {
      const top = open.at(-1);
      if (line.startsWith('BEGIN:')) {
        if (top) top.hasParts = true;
        open.push({ name: line.slice(6), hasParts: false });
      } else if (line.startsWith('END:')) expect(open.pop()?.name).toBe(line.slice(4));
      else expect(top?.hasParts, `${line} in ${top?.name}`).toBe(false);
    }
    expect(open).toEqual([]);
  });
  it('keep the name one line of escaped text, whatever is in it', () => {
    const named = textOf({ ...request, name: 'A; B, C\\D\r\nX-INJECTED:1' });
    expect(named).toContain('\r\nX-WR-CALNAME:A\\; B\\, C\\\\D\\nX-INJECTED:1\r\n');
  });
  it('ring at a time of the day itself, not of its end', () => expect(text).toContain('TRIGGER;RELATED=START:PT8H'));
  it('name the zone', () => expect(text).toContain('\r\nX-WR-TIMEZONE:Europe/Berlin\r\n'));
});

describe('read back by ical.js', () => {
  const read = (text: string) =>
    new ICAL.Component(ICAL.parse(text)).getAllSubcomponents('vevent').map((c) => new ICAL.Event(c));
  it('whole days stay days, and texts come back as they were', () => {
    const [first] = read(textOf(request));
    expect(first?.startDate.isDate).toBe(true);
    expect(first?.startDate.toString()).toBe('2026-03-28');
    expect(first?.endDate.toString()).toBe('2026-03-29');
    expect(first?.summary).toBe(request.events[0]?.title);
    expect(first?.description).toBe(`${request.events[0]?.details}\n${request.events[0]?.link}`);
  });
  it('half past six in Berlin is 17:30 UTC before summer time began on 29 March 2026, 16:30 after', () => {
    const starts = read(textOf(timed)).map((e) => e.startDate.toString());
    expect(starts).toEqual(['2026-03-28T17:30:00Z', '2026-03-29T16:30:00Z', '2026-12-31T17:30:00Z']);
  });
  it('a changed plan moves the event: same UID, later SEQUENCE', () => {
    const moved = {
      ...request,
      on: day('2026-03-22'),
      events: request.events.map((e) => ({ ...e, on: day('2026-04-02') })),
    };
    const [before, after] = [read(textOf(request))[0], read(textOf(moved))[0]];
    expect(after?.uid).toBe(before?.uid);
    expect(after?.sequence).toBe((before?.sequence ?? 0) + 2);
    expect(after?.startDate.toString()).toBe('2026-04-02');
  });
});

describe('read back by python3-icalendar and checked by python3-vobject', () => {
  const python = '/usr/bin/python3'; // Debian's own, which sees Debian's packages
  let hasParsers = false;
  beforeAll(() => {
    hasParsers =
      hasDebian('python3-icalendar', [python, '-c', 'import icalendar']) &&
      hasDebian('python3-vobject', [python, '-c', 'import vobject']);
  }, 600_000);
  const script = fileURLToPath(new URL('calendar-read-back.py', import.meta.url));
  const kept = (name: string) => readFileSync(new URL(`calendar-read-back/${name}`, import.meta.url), 'utf8');
  /**
   * What the parsers find. Where they cannot be installed, what they found in the kept copy of the same text
   * (made with `/usr/bin/python3 calendar-read-back.py < NAME.ics > NAME.json`, icalendar 4.0.3, vobject 0.9.6.1).
   */
  const readBack = (name: string, r: CalendarRequest): { icalendar: ReadEvent[]; vobject: ReadEvent[] } => {
    const text = textOf(r);
    if (!hasParsers) {
      expect(text).toBe(kept(`${name}.ics`));
      return JSON.parse(kept(`${name}.json`));
    }
    const run = spawnSync(python, [script], { input: text, encoding: 'utf8' });
    expect(run.stderr).toBe('');
    return JSON.parse(run.stdout);
  };
  it('days, texts, order and alarms at 8:00', () => {
    const { icalendar, vobject } = readBack('days', request);
    expect(icalendar.map((e) => [e.start, e.end])).toEqual([
      ['2026-03-28', '2026-03-29'],
      ['2026-03-29', '2026-03-30'],
      ['2026-12-31', '2027-01-01'],
    ]);
    expect(icalendar[0]?.summary).toBe(request.events[0]?.title);
    expect(icalendar[0]?.description).toBe(`${request.events[0]?.details}\n${request.events[0]?.link}`);
    expect(icalendar.map((e) => e.alarms)).toEqual([[28800], [28800], [28800]]);
    expect(icalendar[0]?.uid).toBe('start-hydei-12.k7@flylarder');
    expect(vobject.map((e) => [e.uid, e.start, e.summary])).toEqual(icalendar.map((e) => [e.uid, e.start, e.summary]));
  });
  it('times in UTC, a quarter of an hour of warning', () => {
    const { icalendar, vobject } = readBack('times', timed);
    expect(icalendar.map((e) => e.start)).toEqual([
      '2026-03-28T17:30:00+00:00',
      '2026-03-29T16:30:00+00:00',
      '2026-12-31T17:30:00+00:00',
    ]);
    expect(icalendar.map((e) => e.alarms)).toEqual([[-900], [-900], [-900]]);
    expect(vobject.map((e) => e.start)).toEqual(icalendar.map((e) => e.start));
  });
});

describe('bad input', () => {
  const refused = (r: Partial<CalendarRequest>) => {
    const text = calendarText({ ...request, ...r });
    return text.ok ? [] : text.problems.map((p) => p.where);
  };
  const [event] = request.events;
  it('an unknown zone, an instant that is none, a key with a line break, a key twice', () => {
    expect(refused({ timeZone: 'Europe/Atlantis' })).toEqual(['timeZone']);
    expect(refused({ madeAt: 'yesterday' })).toEqual(['madeAt']);
    if (!event) throw new Error('no event');
    expect(refused({ events: [{ ...event, key: 'a\r\nEND:VEVENT' }] })).toEqual(['event']);
    expect(refused({ events: [event, event] })).toEqual(['event']);
  });
});
