import { defineConfig } from 'vitest/config';

export default defineConfig({
  test: {
    include: ['src/**/*.test.ts', 'tests/{reference,simulation,replicas,journeys,architecture}/**/*.test.ts'],
    exclude: ['**/*.slow.test.ts', 'node_modules/**', 'dist/**'],
    testTimeout: 30_000,
    reporters: ['default'],
  },
});
