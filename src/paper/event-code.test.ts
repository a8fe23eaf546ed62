import ICAL from 'ical.js';
import { describe, expect, it } from 'vitest';
import { day } from '../foundation/index.ts';
import { eventCode, qrMatrix } from './index.ts';

const event = {
  key: 'first-H12-2026-11-23',
  from: day('2026-12-13'),
  until: day('2026-12-15'),
  title: 'First new flies: D. hydei, flightless; from “Großmutters Regal” in the north room H12',
  madeOn: day('2026-11-23'),
};

describe('a date as a calendar file in a code', () => {
  const text = eventCode(event);
  it('is read by an independent parser, its last day included', () => {
    const [found] = new ICAL.Component(ICAL.parse(text)).getAllSubcomponents('vevent');
    const read = new ICAL.Event(found as InstanceType<typeof ICAL.Component>);
    expect(read.summary).toBe(event.title);
    expect([read.startDate.toString(), read.endDate.toString()]).toEqual(['2026-12-13', '2026-12-16']);
    expect(read.uid).toBe('first-H12-2026-11-23@flylarder');
  });
  it('has no line over 75 octets (RFC 5545, 3.1)', () => {
    const longest = Math.max(...text.split('\r\n').map((line) => new TextEncoder().encode(line).length));
    expect(longest).toBeLessThanOrEqual(75);
    expect(text.split('\r\n').some((line) => line.startsWith(' '))).toBe(true);
  });
  it('fits a code that a phone can still read from paper', () => {
    const matrix = qrMatrix(text, 480);
    if (!matrix.ok) throw new Error(JSON.stringify(matrix.problems));
    // 28 mm with a quiet zone of four modules: not finer than a third of a millimetre.
    expect(28 / (matrix.value.size + 8)).toBeGreaterThan(1 / 3);
  });
});
