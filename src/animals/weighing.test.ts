import { describe, expect, it } from 'vitest';
import { day, dayNumber } from '../foundation/index.ts';
import { weightCheck } from './weighing.ts';

const monday = dayNumber(day('2026-11-23'));

describe('weighing the animals', () => {
  const every = (days: number, masses: number[]) => masses.map((massG, i) => ({ onDay: monday + i * days, massG }));
  const growing = { changePerDay: 0.01 };
  it('a line by hand: ln mass rises 0.01 a day', () => {
    const check = weightCheck(every(10, [1, 1.1052, 1.2214, 1.3499]), growing);
    expect(check.changePerDay).toBeCloseTo(0.01, 5);
    expect(check.verdict).toBe('enough');
    // Known error of a slope: sigma / sqrt(sum (x - mean)^2), here days -15, -5, 5, 15.
    expect(check.standardError).toBeCloseTo(0.03 / Math.sqrt(500), 12);
  });
  it('flags early', () => {
    expect(weightCheck(every(14, [1, 1.01, 1.0, 1.01]), growing).verdict).toBe('watch');
    expect(weightCheck(every(14, [1, 0.97, 0.93, 0.91]), { changePerDay: 0 }).verdict).toBe('too little');
    expect(weightCheck(every(7, [1, 1.01, 0.88]), growing).why).toMatchObject({
      said: expect.stringMatching(/lost \{0\} %.*vet/),
      values: [13],
    });
    expect(weightCheck(every(10, [2, 2.2, 2.5, 2.8]), { changePerDay: 0 }).verdict).toBe('too much');
    expect(weightCheck(every(14, [2, 2.01, 1.99, 2]), { changePerDay: 0 }).verdict).toBe('enough');
  });
  it('is slower to judge when only some of many were weighed', () => {
    const some = (share: number) => every(10, [1, 0.98, 0.95, 0.92]).map((one) => ({ ...one, animals: 3, share }));
    expect(weightCheck(some(1), { changePerDay: 0 }).verdict).toBe('too little');
    expect(weightCheck(some(0.1), { changePerDay: 0 }).verdict).toBe('enough');
    // Error of a weighing by hand: 3 % by the scale, 15 % / sqrt 3 x sqrt 0.9 by the choice of three of thirty.
    expect(weightCheck(some(0.1), { changePerDay: 0 }).standardError).toBeCloseTo(
      Math.hypot(0.03, (0.15 / Math.sqrt(3)) * Math.sqrt(0.9)) / Math.sqrt(500),
      12,
    );
  });
  it('gives the mass on the line', () =>
    expect(weightCheck(every(10, [1, 1.1052, 1.2214, 1.3499]), growing).lineMassG).toBeCloseTo(1.3499, 3));
  it('wants three days', () => {
    expect(weightCheck(every(7, [1, 1.1]), growing).verdict).toBe('too few weighings');
    expect(weightCheck(every(0, [1, 1, 1]), growing).verdict).toBe('too few weighings');
    expect(() => weightCheck(every(7, [0]), growing)).toThrow(/massG 0/);
  });
});
