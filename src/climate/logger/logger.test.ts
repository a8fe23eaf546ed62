import { describe, expect, test } from 'vitest';
import { Temporal } from 'temporal-polyfill';
import fc from 'fast-check';
import { guessLoggerForm, LoggerReader, readLogger, ZoneClock, type LoggerForm } from '../index.ts';

const berlin = 'Europe/Berlin';
const guess = (text: string, zone = berlin) => {
  const found = guessLoggerForm(text, 'a.csv', zone);
  if (!found.ok) throw new Error(JSON.stringify(found.problems));
  return found.value;
};
const read = (text: string, zone = berlin, change: Partial<LoggerForm> = {}) => {
  const report = readLogger(text, { ...guess(text, zone).form, ...change }, 'a.csv', zone);
  if (!report.ok) throw new Error(JSON.stringify(report.problems));
  return report.value;
};
const hours = Array.from({ length: 48 }, (_, i) => i);
const two = (n: number) => String(n).padStart(2, '0');
/** 48 hours from 25 November 2026, 20 C on the first day and 23 C on the second. */
const table = (line: (day: number, hour: number, c: number) => string) =>
  hours.map((i) => line(25 + Math.floor(i / 24), i % 24, i < 24 ? 20 : 23)).join('\n');
const days = (text: string, zone?: string) => read(text, zone).days.map(({ on, meanC }) => [on, meanC]);
const twoDays = [
  ['2026-11-25', 20],
  ['2026-11-26', 23],
];

describe('a logger file of any form', () => {
  const forms: [string, string][] = [
    ['ISO and commas', `time,temp\n${table((d, h, c) => `2026-11-${d}T${two(h)}:00:00,${c}.0`)}`],
    ['ISO with its offset', `t,temp\n${table((d, h, c) => `2026-11-${d}T${two(h)}:00:00+01:00,${c}`)}`],
    ['German', `Zeit;Temperatur (°C);Feuchte (%)\n${table((d, h, c) => `${d}.11.2026 ${two(h)}:00;${c},0;55,5`)}`],
    ['date and clock apart, tabs', `Date\tTime\tT\n${table((d, h, c) => `${d}/11/2026\t${h}:00\t${c}`)}`],
    [
      'American, Fahrenheit, 12 hours',
      `"Date Time","Temp, °F"\n${table((d, h, c) => `"11/${d}/26 ${h % 12 || 12}:00 ${h < 12 ? 'AM' : 'PM'}","${((c * 9) / 5 + 32).toFixed(1)}"`)}`,
    ],
    [
      'French month names',
      `Date|Température\n${table((d, h, c) => `${d} nov. 2026 ${h}h00|${c}`)}`.replaceAll('h00', ':00'),
    ],
    ['Japanese heading, slashes', `時刻,温度,湿度\n${table((d, h, c) => `2026/11/${d} ${h}:00,${c},40`)}`],
    ['no heading at all', table((d, h, c) => `${d}.11.2026 ${h}:00;${c}`)],
    [
      'numbered lines',
      `#;when;degrees\n${hours.map((i) => `${i + 1};2026-11-${25 + Math.floor(i / 24)} ${two(i % 24)}:00;${i < 24 ? 20 : 23}`).join('\n')}`,
    ],
    ['a preamble', `Logger 7\nSerial: 12345\n\nTime;T1 [°C]\n${table((d, h, c) => `2026-11-${d} ${two(h)}:00;${c}`)}`],
    ['compact digits', `t;c\n${table((d, h, c) => `202611${d}${two(h)}0000;${c}`)}`],
    ['seconds since 1970', `t,c\n${hours.map((i) => `${1795561200 + 3600 * i},${i < 24 ? 20 : 23}`).join('\n')}`],
    [
      'spreadsheet days',
      `t;c\n${hours.map((i) => `${(46351 + i / 24).toFixed(6).replace('.', ',')};${i < 24 ? 20 : 23}`).join('\n')}`,
    ],
    ['Windows line ends and a mark', `\ufeff${table((d, h, c) => `${d}.11.2026 ${h}:00;${c}\r`)}`],
    ['cells with their unit', `when;t\n${table((d, h, c) => `${d}.11.2026 ${h}:00;${c},5 °C`)}`.replaceAll(',5', ',0')],
  ];
  test.each(forms)('%s', (_, text) => expect(days(text)).toEqual(twoDays));

  test('asks what the file does not settle', () => {
    const text = `t;c\n${Array.from({ length: 12 }, (_, i) => `05/${two(i + 1)}/2026 12:00;21`).join('\n')}`;
    // Twelve days running read month first; as day first they would be a month apart.
    expect(guess(text)).toMatchObject({ form: { timeOrder: 'mdy' }, doubts: [] });
    expect(guess('t;c\n03/04/2026 12:00;21\n03/04/2026 13:00;21').doubts).toMatchObject([{ about: 'timeOrder' }]);
    expect(guess('t;a;b\n2026-03-30 12:00;21;20\n2026-03-30 13:00;21;19').doubts).toMatchObject([
      { about: 'temperatureColumn', choices: ['a', 'b'] },
    ]);
    expect(guess('t;c\n2026-03-30 12:00;71\n2026-03-30 13:00;72')).toMatchObject({
      form: { unit: 'F' },
      doubts: [{ about: 'unit', choices: ['F', 'C', 'K'] }],
    });
  });
});

describe('what is wrong is named and left out, what is good is kept', () => {
  const refused = (text: string) => {
    const found = guessLoggerForm(text, 'a.csv', berlin);
    return found.ok ? null : found.problems[0];
  };
  test('no table, words, nothing', () => {
    expect(refused('')).toMatchObject({ where: 'a.csv', found: 'an empty file' });
    expect(refused('Dear diary,\nit was warm today.\n')).toMatchObject({ where: 'a.csv, line 2' });
    expect(refused('t;c\n2026-11-25 12:00;warm\n2026-11-25 13:00;cold')).toMatchObject({
      where: 'a.csv, line 3',
      found: '"cold" beside the time',
    });
    expect(refused('PK\0\u0003')).toMatchObject({ found: 'a file that is not text' });
  });
  test('single bad lines have their line and count', () => {
    const good = table((d, h, c) => `2026-11-${d} ${two(h)}:00;${c}`);
    const bad =
      '2026-11-25 12:10;1e9\n2026-11-25 12:20;-127\nsoon;20\n2026-11-25 12:30;\n2026-11-25 12:40;warm\n2026-02-30 1:00;20\n';
    const report = read(`t;c\n${bad}${good}`);
    expect(report.days.map(({ on, meanC }) => [on, meanC])).toEqual(twoDays);
    expect(report.leftOut.map(({ where, found, lines }) => [where, found, lines])).toEqual([
      ['a.csv, line 2', '1e9 C', 2],
      ['a.csv, line 4', '"soon" as time', 2],
      ['a.csv, line 5', 'no degrees', 1],
      ['a.csv, line 6', '"warm" as degrees', 1],
    ]);
  });
  test('duplicates, spikes and a stuck sensor', () => {
    const wave = (i: number) => (20 + 2 * Math.sin(i / 4)).toFixed(2);
    const at = (i: number) => Temporal.PlainDateTime.from('2026-11-20T00:00').add({ hours: i }).toString();
    const lines = Array.from(
      { length: 240 },
      (_, i) => `${at(i)};${i === 50 ? '41.3' : i >= 120 && i < 170 ? '21.37' : wave(i)}`,
    );
    const report = read(`t;c\n${[...lines, lines[3]].join('\n')}`);
    expect(report.notes).toHaveLength(3);
    expect(report.readings).toBe(240 - 1 - 50);
    expect(Math.max(...report.days.map((d) => d.maxC as number))).toBeLessThan(22.01);
    expect(report.days.map(({ on }) => on)).not.toContain('2026-11-25');
  });
  test('a real step to another place is no spike', () => {
    const lines = hours.map((i) => `2026-11-${25 + Math.floor(i / 24)} ${two(i % 24)}:00;${i < 24 ? 24 : 10}`);
    expect(read(`t;c\n${lines.join('\n')}`).readings).toBe(48);
  });
  test('an hour read every minute weighs no more than one read once', () => {
    const minutes = Array.from({ length: 60 }, (_, m) => `2026-11-25 05:${two(m)};23`);
    const rest = Array.from({ length: 24 }, (_, h) => `2026-11-25 ${two(h)}:00;${h === 5 ? 23 : 20}`);
    const text = `t;c\n${[...rest, ...minutes].sort().join('\n')}`;
    expect(read(text).days[0]?.meanC).toBe(20.13);
  });
});

describe('clock changes, against the IANA database', () => {
  // Read off the database: 29 March 2026 01:00 UTC and 25 October 2026 01:00 UTC in the European Union;
  // Lord Howe moves by half an hour, Saint John's is at half past, New York on its own dates.
  const zones = [
    'Europe/Berlin',
    'America/New_York',
    'Australia/Lord_Howe',
    'America/St_Johns',
    'Asia/Kolkata',
    'Africa/Casablanca',
    'UTC',
  ];
  const clockOf = (zone: string) => {
    const clock = ZoneClock.of(zone);
    if (!clock.ok) throw new Error(zone);
    return clock.value;
  };

  test('property: offsets are Temporal’s, and an instant comes back from its wall time', () => {
    fc.assert(
      fc.property(fc.constantFrom(...zones), fc.integer({ min: 631152000, max: 2524608000 }), (zone, seconds) => {
        const clock = clockOf(zone);
        const instant = 1000 * seconds;
        const exact = Temporal.Instant.fromEpochMilliseconds(instant).toZonedDateTimeISO(zone);
        expect(clock.offsetMs(instant)).toBe(exact.offsetNanoseconds / 1e6);
        const wall = instant + clock.offsetMs(instant);
        const earlier = exact.toPlainDateTime().toZonedDateTime(zone, { disambiguation: 'earlier' });
        expect(clock.instantOf(wall, Number.NEGATIVE_INFINITY).instantMs).toBe(earlier.epochMilliseconds);
      }),
      { numRuns: 300 },
    );
  });

  test('the hour that comes twice is read twice, in order', () => {
    const lines = ['01:30', '02:00', '02:30', '02:00', '02:30', '03:00'].map((t) => `2026-10-25 ${t};20`);
    const report = read(`t;c\n${lines.join('\n')}`, berlin, {});
    expect(report.readings).toBe(6);
    expect(report.notes.join()).not.toMatch(/moment that was there already/);
  });

  test('an hour that the clock jumped over is said', () => {
    const spring = hours.map((i) => `2026-03-${28 + Math.floor(i / 24)} ${two(i % 24)}:00;20`);
    expect(read(`t;c\n${spring.join('\n')}`).notes).toContainEqual(expect.stringMatching(/^1 times .* jumped over/));
    expect(read(`t;c\n${spring.join('\n')}`, berlin, { timeZone: '+01:00' }).notes.join()).not.toMatch(/jumped/);
  });

  test('a file in UTC is put under the household’s days', () => {
    const text = `t,c\n${table((d, h, c) => `2026-11-${d}T${two(h)}:00:00Z,${c}`)}`;
    // 23:00 UTC of the 25th is midnight of the 26th in Berlin.
    expect(days(text)).toEqual([
      ['2026-11-25', 20],
      ['2026-11-26', 22.88],
    ]);
  });

  test('a zone that the database does not know is refused by name', () => {
    expect(ZoneClock.of('Mars/Olympus')).toMatchObject({ ok: false, problems: [{ found: '"Mars/Olympus"' }] });
  });
});

test('property: pieces of a file cut anywhere read as the whole', () => {
  const text = `t;c\r\n${table((d, h, c) => `2026-11-${d} ${two(h)}:00;${c + h / 10}\r`)}`;
  const { form } = guess(text);
  const whole = read(text);
  fc.assert(
    fc.property(fc.array(fc.integer({ min: 0, max: text.length }), { maxLength: 8 }), (cuts) => {
      const reader = LoggerReader.of(form, 'a.csv', berlin);
      if (!reader.ok) throw new Error('no reader');
      const at = [0, ...cuts.toSorted((a, b) => a - b), text.length];
      for (const [i, from] of at.slice(0, -1).entries()) reader.value.push(text.slice(from, at[i + 1]));
      expect(reader.value.end()).toEqual({ ok: true, value: whole });
    }),
    { numRuns: 50 },
  );
});
