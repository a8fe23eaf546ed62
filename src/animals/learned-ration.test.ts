import { describe, expect, it } from 'vitest';
import { learnedBounds, learnedRation, type RecordedFeeding } from './learned-ration.ts';

const times = (n: number, feeding: Partial<RecordedFeeding>): RecordedFeeding[] =>
  Array.from({ length: n }, () => ({ flies: 100, planned: 100, leftOver: null, ...feeding }));
const factor = (feedings: RecordedFeeding[]) => learnedRation(feedings).factor;

describe('a ration learned from feedings', () => {
  it('stays as written where nothing speaks against it', () => {
    expect(factor([])).toBe(1);
    expect(factor(times(20, {}))).toBe(1);
    expect(factor(times(20, { leftOver: 'none' }))).toBe(1);
  });
  it('falls with left-overs: a little after one, more after ten', () => {
    const once = factor(times(1, { leftOver: 'some' }));
    const often = factor(times(10, { leftOver: 'some' }));
    expect(once).toBeLessThan(1);
    expect(often).toBeLessThan(once);
    // `some` stands for 15 to 40 % left: 60 to 85 % eaten.
    expect(often).toBeGreaterThan(0.6);
    expect(often).toBeLessThan(0.85);
    expect(learnedRation(times(10, { leftOver: 'some' }))).toMatchObject({ noted: 10, withLeftOvers: 10 });
  });
  it('rises with what is really given, drawn towards the ration as written', () => {
    // By hand: n / (n + 6) of ln 1.3.
    expect(factor(times(12, { flies: 130, leftOver: 'none' }))).toBeCloseTo(1.3 ** (12 / 18), 9);
    expect(factor(times(2, { flies: 130 }))).toBeCloseTo(1.3 ** (2 / 8), 9);
  });
  it('learns nothing from a day on which flies were short', () => {
    expect(factor(times(10, { flies: 40 }))).toBe(1);
    expect(factor(times(10, { flies: 40, leftOver: 'none' }))).toBe(1);
  });
  it('keeps to what it has learned when fed by it: given less with none left, it does not fall further', () => {
    const before = times(10, { leftOver: 'some' });
    const asked = factor(before);
    const after = factor([...before, ...times(10, { flies: 100 * asked, leftOver: 'none' })]);
    expect(after).toBeGreaterThanOrEqual(asked - 0.02);
    expect(after).toBeLessThan(1);
  });
  it('is bounded', () => {
    expect(factor(times(60, { leftOver: 'swarming' }))).toBe(learnedBounds.low);
    expect(factor(times(60, { flies: 400 }))).toBe(learnedBounds.high);
  });
  it('refuses nonsense', () => expect(() => factor(times(1, { planned: 0 }))).toThrow(/0 planned/));
});
