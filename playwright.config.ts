import { existsSync } from 'node:fs';
import { defineConfig } from '@playwright/test';

const named = process.env.CHROMIUM_PATH ?? '/usr/bin/chromium';
const executablePath = existsSync(named) ? named : undefined;

export default defineConfig({
  testDir: 'tests/browser',
  outputDir: 'test-results',
  timeout: 60_000,
  workers: 1,
  retries: 0,
  reporter: 'list',
  use: {
    screenshot: 'only-on-failure',
    launchOptions: {
      // Chromium's sandbox refuses to run as root, which is who runs containers and CI.
      args: process.getuid?.() === 0 ? ['--no-sandbox'] : [],
      ...(executablePath ? { executablePath } : {}),
    },
  },
});
