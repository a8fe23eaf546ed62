import fc from 'fast-check';
import { describe, expect, test } from 'vitest';
import { randomStream } from '../foundation/index.ts';
import { offsetPriorSdC, pairSdC, thermometersSdC } from './cup-offset.ts';
import { cupOffset } from './index.ts';

const pair = (offsetC: number, shelfC = 22) => ({ cupC: shelfC + offsetC, shelfC });

describe('how much warmer cups are', () => {
  test('without pairs it is what the keeper set, as unsure as such a number is', () => {
    expect(cupOffset([], 1.5)).toEqual({ meanC: 1.5, sdC: offsetPriorSdC, pairs: 0 });
  });

  test('one pair moves it most of the way, many all the way, whatever the room was', () => {
    const one = cupOffset([pair(3)], 0);
    // By hand: precision 1 + 1/.49, mean 3 x 2.0408 / 3.0408.
    expect(one.meanC).toBeCloseTo(2.013, 3);
    expect(one.sdC).toBeCloseTo(Math.hypot(0.5735, 0.3), 3);
    const many = Array.from({ length: 400 }, (_, i) => pair(3, 15 + (i % 12)));
    expect(cupOffset(many, 0).meanC).toBeCloseTo(3, 1);
    expect(cupOffset(many, 0).sdC).toBeGreaterThan(thermometersSdC);
  });

  test('property: it lies between the keeper’s number and the pairs’ mean, and another pair makes it surer', () => {
    fc.assert(
      fc.property(
        fc.array(fc.double({ min: -5, max: 8, noNaN: true }), { minLength: 1, maxLength: 20 }),
        fc.double({ min: -3, max: 3, noNaN: true }),
        (offsets, keeperC) => {
          const got = cupOffset(
            offsets.map((o) => pair(o)),
            keeperC,
          );
          const mean = offsets.reduce((a, b) => a + b) / offsets.length;
          expect(got.meanC).toBeGreaterThanOrEqual(Math.min(mean, keeperC) - 1e-9);
          expect(got.meanC).toBeLessThanOrEqual(Math.max(mean, keeperC) + 1e-9);
          expect(
            cupOffset(
              [...offsets, 0].map((o) => pair(o)),
              keeperC,
            ).sdC,
          ).toBeLessThan(got.sdC);
        },
      ),
    );
  });

  test('its 90 % band holds the true offset about nine times in ten', () => {
    const random = randomStream(7, 'cup offset');
    const households = 2000;
    let held = 0;
    for (let i = 0; i < households; i += 1) {
      const truth = offsetPriorSdC * random.normal();
      const shared = thermometersSdC * random.normal();
      const pairs = Array.from({ length: 1 + (i % 5) }, () => pair(truth + shared + pairSdC * random.normal()));
      const { meanC, sdC } = cupOffset(pairs, 0);
      if (Math.abs(meanC - truth) <= 1.6449 * sdC) held += 1;
    }
    // Binomial error of 2000 households is 0.7 %; the band is a little wide, as the shared part is not shrunk.
    expect(held / households).toBeGreaterThan(0.88);
    expect(held / households).toBeLessThan(0.94);
  });
});
