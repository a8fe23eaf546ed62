import { describe, expect, it } from 'vitest';
import { day, dayNumber, weekdays } from '../foundation/index.ts';
import type { FeedingGroup } from './feeding-period.ts';
import { needDraws } from './need-draws.ts';
import { wantedFlies } from './wanted-flies.ts';

const fromDay = dayNumber(day('2026-11-25'));
const fed = { until: null, feedingWeekdays: [...weekdays], strain: 'melanogaster', fliesPerFeeding: 3 };
/** An egg case of 40 to 200 that hatches between day 10 and 19, moults to hydei between day 20 and 39. */
const nymphs: FeedingGroup = {
  group: 'nymphs',
  periods: [
    {
      ...fed,
      from: fromDay + 14,
      count: 120,
      arrival: { earliest: fromDay + 10, latest: fromDay + 19, countLow: 40, countHigh: 200 },
    },
    {
      ...fed,
      strain: 'hydei',
      fliesPerFeeding: 4,
      from: fromDay + 30,
      count: 120,
      arrival: { earliest: fromDay + 20, latest: fromDay + 39, countLow: 40, countHigh: 200 },
    },
  ],
};
const frogs: FeedingGroup = { group: 'frogs', periods: [{ ...fed, from: fromDay, count: 4, fliesPerFeeding: 30 }] };
const drawn = (groups: FeedingGroup[], draws = 4000) => needDraws({ groups, fromDay, days: 50, draws, seed: 1 });
const at = (draws: Float32Array[] | undefined, i: number) => (draws ?? []).map((flies) => flies[i] as number);
const meanOf = (values: number[]) => values.reduce((a, b) => a + b, 0) / values.length;
const sdOf = (values: number[]) => Math.sqrt(meanOf(values.map((x) => (x - meanOf(values)) ** 2)));

describe('need as scenarios', () => {
  it('has the moments of the closed form on every day, for hatch and moult', () => {
    const draws = drawn([nymphs, frogs]);
    const closed = wantedFlies({ groups: [nymphs, frogs], fromDay, days: 50 });
    for (const strain of ['melanogaster', 'hydei'])
      for (const i of [0, 9, 12, 19, 24, 30, 38, 45]) {
        const values = at(draws.get(strain), i);
        const { flies, sd } = closed.get(strain) ?? { flies: [], sd: [] };
        // Even steps in random orders: the mean is closer than four standard errors of independent draws.
        expect(Math.abs(meanOf(values) - (flies[i] as number)), `${strain} ${i}`).toBeLessThan(
          4 * ((sd[i] as number) / Math.sqrt(4000)) + 1e-3,
        );
        expect(Math.abs(sdOf(values) - (sd[i] as number))).toBeLessThan(0.05 * (sd[i] as number) + 1e-3);
      }
  });
  it('feeds each nymph one fly or the other, never both and never none', () => {
    const draws = drawn([nymphs], 200);
    for (let s = 0; s < 200; s++)
      for (let i = 20; i < 50; i++) {
        const eaten = [draws.get('melanogaster')?.[s]?.[i] ?? 0, draws.get('hydei')?.[s]?.[i] ?? 0];
        expect(eaten.filter((flies) => flies > 0)).toHaveLength(1);
      }
  });
  it('by hand: uniform numbers from 40 to 200 at 3 flies have mean 360 and sd 160 / sqrt(12) x 3', () => {
    const values = at(drawn([nymphs]).get('melanogaster'), 19);
    expect(meanOf(values)).toBeCloseTo(360, 0);
    expect(sdOf(values)).toBeCloseTo((160 / Math.sqrt(12)) * 3, 0);
  });
  it('spreads an uncertain appetite about its ration, and draws nothing where all is certain', () => {
    const hungry = { ...frogs, appetiteLogSd: 0.2 };
    const values = at(drawn([hungry]).get('melanogaster'), 3);
    expect(meanOf(values)).toBeCloseTo(120, 0);
    expect(sdOf(values)).toBeCloseTo(120 * Math.sqrt(Math.exp(0.04) - 1), 0);
    expect(wantedFlies({ groups: [hungry], fromDay, days: 5 }).get('melanogaster')?.sd[3]).toBeCloseTo(
      120 * Math.sqrt(Math.exp(0.04) - 1),
      9,
    );
    expect(drawn([frogs]).size).toBe(0);
  });
  it('is the same for the same seed and another for another', () => {
    const of = (seed: number) =>
      needDraws({ groups: [nymphs], fromDay, days: 30, draws: 20, seed }).get('melanogaster');
    expect(of(1)).toEqual(of(1));
    expect(of(1)).not.toEqual(of(2));
  });
});
