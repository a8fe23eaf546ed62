import { describe, expect, it } from 'vitest';
import { bareCup, look } from '../../tests/simulation/learning-cup.ts';
import { sightingChance, sightingLogLikelihood, sightingsOf } from './sightings.ts';

describe('stages seen and not seen', () => {
  it('bracket the first sight between the last "not there" and the first "there"', () => {
    const cup = bareCup({
      ageDays: 10,
      looks: [
        look(2, { absent: ['larvae'] }),
        look(4, { absent: ['larvae'] }),
        look(6, { present: ['larvae'] }),
        look(8, { present: ['larvae'] }),
      ],
    });
    expect(sightingsOf(cup)).toEqual([{ stage: 'larvae', nominalAge: 2.5, notYetAge: 4, seenAge: 6 }]);
  });

  it('say nothing where nobody looked', () => {
    expect(sightingsOf(bareCup({ ageDays: 10, looks: [look(4, {}), look(6, {})] }))).toEqual([]);
  });

  it('take adults in a young cup for its founders', () => {
    const young = bareCup({ ageDays: 12, looks: [look(3, { present: ['adults'] })] });
    expect(sightingsOf(young)).toEqual([]);
  });

  it('leave out what is both there and not there, and what was written after the end', () => {
    const both = bareCup({ ageDays: 10, looks: [look(4, { present: ['pupae'], absent: ['pupae'] })] });
    const after = bareCup({ ageDays: 10, looks: [look(12, { present: ['pupae'] })] });
    expect(sightingsOf(both)).toEqual([]);
    expect(sightingsOf(after)).toEqual([]);
  });

  it('make a late cup slow and an early one quick', () => {
    const late = [{ stage: 'pupae' as const, nominalAge: 8, notYetAge: 10, seenAge: Infinity }];
    const early = [{ stage: 'pupae' as const, nominalAge: 8, notYetAge: -Infinity, seenAge: 6 }];
    const at = (s: typeof late, pace: number) => sightingLogLikelihood(s, pace, 0.03);
    expect(at(late, -0.25)).toBeGreaterThan(at(late, 0));
    expect(at(early, 0.25)).toBeGreaterThan(at(early, 0));
  });

  it('have the chance of the normal between the brackets: one sd on either side is 68.27 %', () => {
    const sighting = { stage: 'larvae' as const, nominalAge: 3, notYetAge: 2.2, seenAge: 3.8 };
    expect(sightingChance(sighting, 0)).toBeCloseTo(0.6827, 4);
  });
});
