import { describe, expect, it } from 'vitest';
import type { CupLife } from '../../app/index.ts';
import { labelledWeeks, timeAxis } from './axis.ts';
import { bandGeometry, hangingRisk, rootTicks } from './band-geometry.ts';
import { lifeLine, wave } from './life-line-geometry.ts';

const axis = timeAxis('2026-11-02', '2026-11-29', 280);

describe('time axis', () => {
  it('gives every day the same width and its middle', () => {
    expect(axis.days).toHaveLength(28);
    expect(axis.dayWidth).toBe(10);
    expect(axis.x('2026-11-02')).toBeCloseTo(5);
    expect(axis.x('2026-11-29')).toBeCloseTo(275);
  });

  it('labels weeks only where there is room, by the day that they begin with', () => {
    expect(axis.weekStarts).toEqual(['2026-11-02', '2026-11-09', '2026-11-16', '2026-11-23']);
    expect(timeAxis('2026-11-02', '2026-11-29', 280, 'sun').weekStarts[0]).toBe('2026-11-08');
    expect(labelledWeeks(axis, 71)).toEqual(['2026-11-02', '2026-11-16']);
  });
});

describe('supply and need picture', () => {
  const days = axis.days.map((date, i) => ({
    date,
    wanted: 40,
    onHand: { p05: 20 + i, p50: 100, p95: 400 },
    serviceLevel: i < 3 ? 0.9 : 0.999,
  }));

  it('draws four times the flies at twice the height', () => {
    const { y } = bandGeometry(days, axis, 208, 0.99);
    expect(208 - y(400)).toBeCloseTo(200);
    expect(208 - y(100)).toBeCloseTo(100);
  });

  it('marks the days below what was asked, and only those', () => {
    expect(bandGeometry(days, axis, 200, 0.99).risky.map((day) => day.date)).toEqual(axis.days.slice(0, 3));
    expect(hangingRisk(days, axis, 50, 0.99).drops.filter((drop) => drop.short)).toHaveLength(3);
  });

  it('chooses round ticks', () => {
    expect(rootTicks(1000)).toEqual([0, 50, 200, 500, 1000]);
    expect(rootTicks(10)).toEqual([0, 2, 5, 10]);
  });
});

describe('life-line', () => {
  const life: CupLife = {
    id: 'a',
    label: 'A',
    strain: 'melanogaster',
    place: null,
    from: '2026-11-02',
    until: '2026-11-27',
    ended: false,
    larvaeAt: 1.5,
    pupaeAt: 6,
    fliesAt: 11,
    flies: Array.from({ length: 26 }, (_, age) => (age < 11 ? 0 : 100)),
  };

  it('lays the stages end to end', () => {
    const drawn = lifeLine(life, axis, '2026-11-16', 10, 400);
    expect(drawn.eggs).toEqual([5, 20]);
    expect(drawn.pupae).toEqual([65, 115]);
    expect(drawn.endX).toBeCloseTo(255);
  });

  it('parts the flies at today', () => {
    expect(lifeLine(life, axis, '2026-11-10', 10, 400).fliesPast).toBeNull();
    expect(lifeLine(life, axis, '2026-11-28', 10, 400).fliesAhead).toBeNull();
    const both = lifeLine(life, axis, '2026-11-16', 10, 400);
    expect(both.fliesPast).not.toBeNull();
    expect(both.fliesAhead).not.toBeNull();
  });

  it('swells to the root of its share of the fullest cup', () => {
    const drawn = lifeLine(life, axis, '2026-11-28', 10, 400).fliesPast ?? '';
    const numbers = [...drawn.matchAll(/-?\d+(\.\d+)?/g)].map((match) => Math.abs(Number(match[0])));
    const heights = numbers.filter((_, i) => i % 2 === 1);
    expect(Math.max(...heights)).toBeCloseTo(5);
  });

  it('draws nothing of a life outside the axis', () => {
    const later = timeAxis('2027-11-02', '2027-11-29', 280);
    expect(lifeLine(life, later, '2026-11-16', 10, 400)).toMatchObject({
      eggs: null,
      larvae: null,
      pupae: null,
      endX: null,
    });
  });

  it('waves from end to end', () => {
    expect(wave(0, 9)).toBe('M0.0 0Q2.3 -5 4.5 0Q6.8 5 9.0 0');
  });
});
