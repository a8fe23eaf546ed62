/**
 * One day as a whole calendar file, short enough for a QR code: for someone who cannot reach the household's
 * server. RFC 5545: lines of at most 75 octets, text escaped.
 */
import { addDays, type Day } from '../../foundation/index.ts';

export interface CodedEvent {
  /** Letters, digits, dots and hyphens. */
  key: string;
  from: Day;
  /** Last day of it. */
  until: Day;
  title: string;
  /** A day on which this was made; the file holds no clock time. */
  madeOn: Day;
}

const mostOctets = 75;

export function eventCode({ key, from, until, title, madeOn }: CodedEvent): string {
  const lines = [
    'BEGIN:VCALENDAR',
    'VERSION:2.0',
    'PRODID:-//Flylarder//EN',
    'BEGIN:VEVENT',
    `UID:${key}@flylarder`,
    `DTSTAMP:${compact(madeOn)}T000000Z`,
    `DTSTART;VALUE=DATE:${compact(from)}`,
    `DTEND;VALUE=DATE:${compact(addDays(until, 1))}`,
    `SUMMARY:${title.replaceAll(/[\\;,]/g, (c) => `\\${c}`).replaceAll(/\r\n|\r|\n/g, '\\n')}`,
    'END:VEVENT',
    'END:VCALENDAR',
  ];
  return `${lines.map(folded).join('\r\n')}\r\n`;
}

function compact(day: Day): string {
  return day.replaceAll('-', '');
}

/** A line in parts of at most 75 octets; a continued part begins with a space. */
function folded(line: string): string {
  const parts: string[] = [''];
  let octets = 0;
  for (const character of line) {
    const size = utf8Octets(character);
    if (octets + size > mostOctets) {
      parts.push(' ');
      octets = 1;
    }
    parts[parts.length - 1] += character;
    octets += size;
  }
  return parts.join('\r\n');
}

function utf8Octets(character: string): number {
  const code = character.codePointAt(0) as number;
  return code < 0x80 ? 1 : code < 0x800 ? 2 : code < 0x10000 ? 3 : 4;
}
