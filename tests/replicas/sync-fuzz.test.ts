import { describe, expect, it } from 'vitest';
import { disagreements, fuzzReplicas } from './replica-fuzz.ts';

describe('replicas agree after any course of events', () => {
  // Seeds that once failed are added here and stay.
  for (const seed of Array.from({ length: 25 }, (_, i) => 1000 + i)) {
    const devices = 1 + (seed % 5);
    it(`seed ${seed}, ${devices} devices, 400 steps`, async () => {
      expect(disagreements(await fuzzReplicas(seed, devices, 400))).toEqual([]);
    });
  }
});
