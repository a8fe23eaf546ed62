import { defineConfig } from 'vitest/config';

const slow = process.env.FLYLARDER_SLOW_TESTS === '1';

export default defineConfig({
  test: {
    include: ['src/**/*.test.ts', 'tests/**/*.test.ts', 'bench/**/*.test.ts'],
    exclude: [...(slow ? [] : ['**/*.slow.test.ts']), 'node_modules/**', 'dist/**'],
    testTimeout: slow ? 600_000 : 60_000,
    hookTimeout: 120_000,
    // Two cores are common; the database and command tests start processes of their own.
    maxWorkers: 2,
    reporters: ['default'],
  },
});
