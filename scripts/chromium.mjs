/** Finds a Chromium for the browser tests, or installs one where that is allowed. */
import { existsSync } from 'node:fs';
import { runCommand } from './run-command.mjs';

const usualPlaces = ['/usr/bin/chromium', '/usr/bin/chromium-browser', '/usr/bin/google-chrome'];

/** The path of a Chromium, or null after one line that says what to install. */
export async function findOrInstallChromium() {
  return existing() ?? (await fromPlaywright()) ?? (await byDebian()) ?? (await byPlaywright()) ?? sayWhatToInstall();
}

function existing() {
  const named = process.env.CHROMIUM_PATH;
  return [named, ...usualPlaces].find((path) => path && existsSync(path)) ?? null;
}

/** Where Playwright keeps its own, when it has been downloaded before. */
async function fromPlaywright() {
  const { chromium } = await import('@playwright/test');
  const path = chromium.executablePath();
  return path && existsSync(path) ? path : null;
}

async function byDebian() {
  if (process.getuid?.() !== 0 || !existsSync('/usr/bin/apt-get')) return null;
  console.log("Installing Debian's chromium ...");
  const env = { DEBIAN_FRONTEND: 'noninteractive' };
  await runCommand('apt-get', ['update', '-q'], { env });
  await runCommand('apt-get', ['install', '-q', '-y', '--no-install-recommends', 'chromium'], { env });
  return existing();
}

async function byPlaywright() {
  console.log("Downloading Playwright's Chromium ...");
  await runCommand('playwright', ['install', 'chromium']);
  return fromPlaywright();
}

function sayWhatToInstall() {
  console.error(
    'No Chromium for the browser tests: install one (Debian: `sudo apt-get install chromium`) or set CHROMIUM_PATH.',
  );
  return null;
}
