import { existsSync } from 'node:fs';
import { defineConfig } from '@playwright/test';

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
/** Long journeys, run by `npm run test:slow`. */
const slow = process.env['FLYLARDER_SLOW_TESTS'] === '1';
const long = slow ? [] : [/\.slow\.spec\.ts/];
/** What a desk does no differently, or what sets the width itself, is tried on the phone alone, save in the slow run. */
const sameOnDesk = slow
  ? []
  : [/(forms|house-work|lifecycle|screens|recording|labels-read|file-door|passkeys|temperature)\.spec\.ts/];
/** These choose the words themselves, whatever the device. */
const anyDevice = slow ? [] : [/nothing is wider than a small screen/, /the second language is complete/];

/** The page in a real Chromium, on a phone and on a desk, against the built program. */
export default defineConfig({
  testDir: 'tests/browser',
  outputDir: 'test-results',
  timeout: 120_000,
  expect: { timeout: 30_000 },
  workers: 1,
  reporter: [['list']],
  use: {
    locale: 'en-GB',
    timezoneId: 'Europe/Berlin',
    screenshot: 'only-on-failure',
    launchOptions: { args: quietChromium, ...(existsSync(named) && { executablePath: named }) },
  },
  projects: [
    {
      name: 'phone',
      testIgnore: [printed, /desk\.slow\.spec\.ts/, ...long],
      use: { viewport: { width: 390, height: 844 }, hasTouch: true, isMobile: true },
    },
    {
      name: 'desk',
      testIgnore: [printed, ...long, ...sameOnDesk],
      grepInvert: anyDevice,
      use: { viewport: { width: 1280, height: 800 } },
    },
    { name: 'paper', testMatch: printed },
  ],
});
