import { describe, expect, it } from 'vitest';
import { randomStream } from '../foundation/index.ts';
import { fliesInPot, mixedFlyMass } from './weigh-flies.ts';

describe('flies by weight', () => {
  const mixed = mixedFlyMass({ meanMg: 1.172, sdMg: 0.132 }, { meanMg: 0.773, sdMg: 0.075 });
  it('a gram of both sexes is about 1,030 flies (fresh masses at 25 C, DGRP lines)', () =>
    expect(1000 / mixed.meanMg).toBeCloseTo(1028, 0));
  it('its spread is that of simulated pots', () => {
    const stream = randomStream(4, 'pots');
    const truth = 400;
    const belief = { ...mixed, meanSdMg: 0.05 };
    let sum = 0;
    let squares = 0;
    const pots = 4000;
    for (let i = 0; i < pots; i++) {
      const bias = 0.05 * stream.normal();
      let mg = 0;
      for (let k = 0; k < truth; k++)
        mg += bias + (stream.uniform() < 0.5 ? 1.172 + 0.132 * stream.normal() : 0.773 + 0.075 * stream.normal());
      const { flies } = fliesInPot(50_000 + mg + 10 * stream.normal(), 50_000 + 10 * stream.normal() - 100, 10, belief);
      const counted = flies - 100 / mixed.meanMg;
      sum += counted;
      squares += counted ** 2;
    }
    const mean = sum / pots;
    const sd = Math.sqrt(squares / pots - mean * mean);
    const stated = fliesInPot(50_000 + truth * mixed.meanMg, 50_000, 10, belief);
    expect(Math.abs(mean - truth)).toBeLessThan((5 * sd) / Math.sqrt(pots));
    // The sd of a sample sd of normal draws is sd / sqrt(2 n).
    expect(Math.abs(stated.sd - sd)).toBeLessThan((5 * sd) / Math.sqrt(2 * pots));
    expect(stated.mainDoubt).toBe('the mean mass of a fly');
    expect(stated.band.p50).toBeCloseTo(truth, 9);
  });
  it('few flies on a coarse scale: the scale is the doubt', () => {
    const few = fliesInPot(1010, 1000, 10, { ...mixed, meanSdMg: 0.05 });
    expect(few.mainDoubt).toBe('the scale');
    // Two readings of 10 mg each: sqrt(200) mg over 0.97 mg a fly, and next to nothing from ten flies.
    expect(few.sd).toBeCloseTo(Math.sqrt(200) / mixed.meanMg, 0);
    expect(few.band.p05).toBe(0);
  });
  it('refuses pots that gain', () => {
    expect(() => fliesInPot(10, 20, 1, { ...mixed, meanSdMg: 0 })).toThrow(/not above 20/);
    expect(() => fliesInPot(20, 10, 1, { meanMg: 0, sdMg: 0, meanSdMg: 0 })).toThrow(/not above 0/);
  });
});
