import { describe, expect, it } from 'vitest';
import { bareCup, look } from '../../../tests/simulation/learning-cup.ts';
import type { CupLook } from '../../learning/index.ts';
import { laterSights } from './later-notes.ts';

/** What the looks up to age 17 say beyond those up to age 10, of pupae. */
function pupae(...looks: CupLook[]) {
  const earlier = bareCup({ ageDays: 10, looks: looks.filter((l) => l.ageDays <= 10) });
  return laterSights(earlier, bareCup({ ageDays: 24, looks }), 17)
    .filter((s) => s.kind === 'pupae')
    .map(({ ageDays, low, high, notYetAge }) => ({ ageDays, low, high, notYetAge }));
}

describe('a look for a stage after the forecast', () => {
  it('says nothing of when the stage came before it when nobody had looked', () => {
    expect(pupae(look(12, { present: ['pupae'] }))).toEqual([
      { ageDays: 12, low: -Infinity, high: 12, notYetAge: -Infinity },
    ]);
  });
  it('brackets the first sight between the last "not there", even of before, and the first "there"', () => {
    const seen = look(12, { present: ['pupae'] });
    expect(pupae(look(6, { absent: ['pupae'] }), seen)).toEqual([{ ageDays: 12, low: 6, high: 12, notYetAge: 6 }]);
    expect(pupae(look(6, { absent: ['pupae'] }), look(11, { absent: ['pupae'] }), seen)).toEqual([
      { ageDays: 12, low: 11, high: 12, notYetAge: 6 },
    ]);
  });
  it('counts when the stage is still not there, and takes nothing from after the week', () => {
    const still = look(12, { absent: ['pupae'] });
    const expected = [{ ageDays: 12, low: 12, high: Infinity, notYetAge: -Infinity }];
    expect(pupae(still)).toEqual(expected);
    expect(pupae(still, look(18, { present: ['pupae'] }))).toEqual(expected);
  });
  it('is no news of a stage that had been seen', () => {
    expect(pupae(look(9, { present: ['pupae'] }), look(12, { present: ['pupae'] }))).toEqual([]);
  });
});
