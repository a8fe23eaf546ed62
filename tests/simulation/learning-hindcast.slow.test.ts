import { describe, expect, it } from 'vitest';
import { hindcastOfWorld } from './learning-hindcast.ts';
import { ordinaryWorld, type WorldOptions } from './learning-world.ts';

const households = 40;

const worlds: [string, Partial<WorldOptions>][] = [
  ['as the model says', {}],
  ['the keeper looks on Sundays only, and writes words', { lookEvery: 7, wordShare: 1 }],
];

describe(`a past week's notes in what was forecast then, ${households} households a world`, () => {
  for (const [name, options] of worlds) {
    it(`${name}: the bands of 90 and 50 % hold as many notes, of every kind`, () => {
      const seeds = Array.from({ length: households }, (_, n) => 50_000 + n);
      const notes = seeds.flatMap((seed) => hindcastOfWorld({ ...ordinaryWorld, cups: 12, ...options }, seed));
      const shown = notes.flatMap((n) => (n.shown ? [n.shown] : []));
      const share = (of: typeof shown, inside: 'inside50' | 'inside90') =>
        of.filter((n) => n[inside]).length / of.length;
      for (const kind of ['word', 'emptied', 'pupae', 'adults'] as const) {
        const some = shown.filter((n) => n.kind === kind);
        console.log(`${name}: ${kind} ${some.length}, 90 % ${share(some, 'inside90').toFixed(3)}`);
        // Notes of one household hang together; three standard errors of half as many independent ones.
        expect(share(some, 'inside90')).toBeGreaterThan(0.9 - 3 * Math.sqrt((0.09 * 2) / some.length));
      }
      console.log(`${name}: all ${shown.length}, 90 % ${share(shown, 'inside90').toFixed(3)}`);
      expect(Math.abs(share(shown, 'inside90') - 0.9)).toBeLessThan(0.03);
      expect(Math.abs(share(shown, 'inside50') - 0.5)).toBeLessThan(0.05);
    }, 600_000);
  }
});
