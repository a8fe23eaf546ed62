import { describe, expect, it } from 'vitest';
import { disagreements, fuzzReplicas } from './replica-fuzz.ts';

describe('replicas agree after a million steps', () => {
  for (const first of Array.from({ length: 20 }, (_, i) => 100_000 + 100 * i)) {
    it(`seeds ${first} to ${first + 99}, 2 to 8 devices, 500 steps each`, async () => {
      let steps = 0;
      for (let seed = first; seed < first + 100; seed++) {
        const report = await fuzzReplicas(seed, 2 + (seed % 7), 500);
        steps += report.steps;
        expect(disagreements(report), `seed ${seed}`).toEqual([]);
      }
      expect(steps).toBeGreaterThanOrEqual(50_000);
    });
  }
});
