import { describe, expect, it } from 'vitest';
import { randomStream } from '../foundation/index.ts';
import { cleanChance, type CleanChanceInput, fliesToLookAt, noneSeenUpperShare } from './clean-chance.ts';

const input = (more: Partial<CleanChanceInput> = {}): CleanChanceInput => ({
  priorContaminated: 0.5,
  founders: 4,
  wildAlleles: 2,
  looks: [0],
  foundersAre: 'any',
  ...more,
});
const last = (more: Partial<CleanChanceInput>) => cleanChance(input(more)).afterLook.at(-1) ?? Number.NaN;

describe('none seen in N', () => {
  it('is the rule of three: below 3/N, and near it (Hanley and Lippman-Hand 1983, JAMA 249:1743)', () => {
    for (const flies of [30, 100, 1000]) {
      expect(noneSeenUpperShare(flies)).toBeLessThan(3 / flies);
      expect(noneSeenUpperShare(flies)).toBeGreaterThan(2.8 / flies);
    }
  });
  it('7 offspring of a test-cross find a carrier with 99 %: 1/2^7 < 0.01 < 1/2^6', () =>
    expect(fliesToLookAt(0.5, 0.99)).toBe(7));
  it('needs one fly where all show it', () => expect(fliesToLookAt(1, 0.99)).toBe(1));
});

describe('chance that a line is clean', () => {
  it('without a look is the prior', () => expect(last({})).toBe(0.5));
  it('after one look is Bayes by hand', () => {
    // Two wild alleles of eight: winged 1 - (3/4)^2 = 7/16; ten flies all flightless: (9/16)^10.
    const missed = (9 / 16) ** 10;
    expect(last({ looks: [10] })).toBeCloseTo(0.5 / (0.5 + 0.5 * missed), 12);
  });
  it('founders picked flightless as virgins clean at once, mated ones by halves', () => {
    expect(last({ looks: [0, 0], foundersAre: 'flightless virgins' })).toBe(1);
    // Mated: four sperm draws, each wild with 2/8; all plain with (3/4)^4.
    expect(last({ looks: [0, 0], foundersAre: 'flightless mated' })).toBeCloseTo(0.5 + 0.5 * 0.75 ** 4, 12);
  });
  it('agrees with a simulated line of three generations', () => {
    const stream = randomStream(9, 'clean');
    const looks = [2, 3, 4];
    let seenNone = 0;
    let clean = 0;
    for (let run = 0; run < 60_000; run++) {
      let wild = stream.uniform() < 0.5 ? 2 : 0;
      let none = true;
      looks.forEach((flies, g) => {
        const share = wild / 8;
        if (g > 0) {
          wild = 0;
          for (let i = 0; i < 8; i++) if (stream.uniform() < share) wild++;
        }
        for (let i = 0; i < flies; i++) if (stream.uniform() < 1 - (1 - wild / 8) ** 2) none = false;
      });
      if (!none) continue;
      seenNone++;
      if (wild === 0) clean++;
    }
    const share = clean / seenNone;
    const error = Math.sqrt((share * (1 - share)) / seenNone);
    expect(Math.abs(last({ looks }) - share)).toBeLessThan(5 * error);
  });
  it('stays a chance with many founders and flies', () => {
    const { afterLook } = cleanChance(input({ founders: 500, looks: [100, 5000, 20, 300] }));
    for (const chance of afterLook) expect(chance >= 0.5 && chance <= 1).toBe(true);
    expect(afterLook).toEqual([...afterLook].sort((a, b) => a - b));
  });
  it('refuses nonsense', () => {
    expect(() => last({ priorContaminated: 1.1 })).toThrow(/priorContaminated 1.1/);
    expect(() => last({ founders: 0 })).toThrow(/founders 0/);
    expect(() => last({ wildAlleles: 9 })).toThrow(/wildAlleles 9/);
    expect(() => last({ looks: [-1] })).toThrow(/looks has -1/);
    expect(() => noneSeenUpperShare(0)).toThrow(/flies 0/);
    expect(() => fliesToLookAt(0, 0.9)).toThrow(/share 0/);
  });
});
