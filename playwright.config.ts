import { existsSync, mkdtempSync } from 'node:fs';
import { tmpdir } from 'node:os';
import { join } from 'node:path';
import { defineConfig } from '@playwright/test';

const port = Number(process.env['FLYLARDER_TEST_PORT'] ?? 23471);
// Workers of the runner read this file again: the folder is made once and handed on.
const household = (process.env['FLYLARDER_TEST_HOUSEHOLD'] ??= mkdtempSync(join(tmpdir(), 'flylarder-browser-')));

const named = process.env['CHROMIUM_PATH'] ?? '/usr/bin/chromium';
const quietChromium = [
  // Chromium's sandbox refuses to run as root, which is who runs containers and CI.
  ...(process.getuid?.() === 0 ? ['--no-sandbox'] : []),
  '--disable-gpu',
  '--disable-quic',
  '--no-first-run',
  '--disable-background-networking',
  '--disable-component-update',
  '--disable-sync',
];

/** What is printed is the same on every device. */
const printed = /(labels|sheets)\.spec\.ts/;

/** The page in a real Chromium, on a phone and on a desk, against the built program. */
export default defineConfig({
  testDir: 'tests/browser',
  outputDir: 'test-results',
  timeout: 60_000,
  expect: { timeout: 15_000 },
  workers: 1,
  reporter: [['list']],
  use: {
    baseURL: `http://127.0.0.1:${port}/`,
    locale: 'en-GB',
    timezoneId: 'Europe/Berlin',
    screenshot: 'only-on-failure',
    launchOptions: { args: quietChromium, ...(existsSync(named) && { executablePath: named }) },
  },
  projects: [
    {
      name: 'phone',
      testIgnore: printed,
      use: { viewport: { width: 390, height: 844 }, hasTouch: true, isMobile: true },
    },
    { name: 'desk', testIgnore: printed, use: { viewport: { width: 1280, height: 800 } } },
    { name: 'paper', testMatch: printed },
  ],
  webServer: {
    command: `node bin/flylarder.mjs serve --data ${household} --port ${port}`,
    url: `http://127.0.0.1:${port}/api/v1/health`,
    reuseExistingServer: false,
  },
});
