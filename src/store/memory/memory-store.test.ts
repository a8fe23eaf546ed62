import { describe, it } from 'vitest';
import { storeConformance } from '../conformance.ts';
import { memoryPlace, openMemoryStore } from './index.ts';

describe('the store in memory', () => {
  for (const { name, run } of storeConformance) {
    it(name, async () => {
      const place = memoryPlace();
      await run({ open: async () => openMemoryStore(place) });
    });
  }
});
