/** A phone on the home network: paired over HTTPS under the household's own certificate, then offline. */
import { type ChildProcess, execFileSync, spawn } from 'node:child_process';
import { createHash, X509Certificate } from 'node:crypto';
import { mkdtempSync, readFileSync, rmSync } from 'node:fs';
import { hostname, tmpdir } from 'node:os';
import { join } from 'node:path';
import { chromium, expect, test } from '@playwright/test';
import { settled } from './page.ts';

const household = mkdtempSync(join(tmpdir(), 'flylarder-browser-'));
const name = `${hostname().split('.')[0]?.toLowerCase()}.local`;
let server: ChildProcess;
let port = '';

test.beforeAll(async () => {
  const args = ['bin/flylarder.mjs', 'serve', '--lan', '--data', household, '--port', '0', '--https-port', '0'];
  server = spawn(process.execPath, args, { stdio: ['ignore', 'pipe', 'inherit'] });
  port = await new Promise((resolve, reject) => {
    let said = '';
    server.stdout?.on('data', (part) => {
      said += part;
      const found = /https:\/\/[^:]+:(\d+)/.exec(said);
      if (found) resolve(found[1] as string);
    });
    server.once('exit', (code) => reject(new Error(`serve ended with ${code}`)));
  });
});
test.afterAll(async () => {
  const ended = new Promise((resolve) => server.once('exit', resolve));
  server.kill('SIGINT');
  await ended;
  rmSync(household, { recursive: true, force: true });
});

/** Chromium has no list of authorities on the command line: it is told to trust this one key in its place. */
function trusted(): string {
  const certificate = new X509Certificate(readFileSync(join(household, 'certificate', 'server.pem')));
  const key = certificate.publicKey.export({ type: 'spki', format: 'der' });
  return createHash('sha256').update(key).digest('base64');
}

test('a phone is paired over HTTPS and works without the network', async ({ launchOptions }) => {
  test.slow();
  const found = [`--host-resolver-rules=MAP ${name} 127.0.0.1`];
  const launch = (args: string[]) =>
    chromium.launch({ ...launchOptions, args: [...(launchOptions.args ?? []), ...found, ...args] });

  const stranger = await launch([]);
  const refused = await (await stranger.newPage()).goto(`https://${name}:${port}/`).catch((error: Error) => error);
  expect(String(refused)).toContain('ERR_CERT_AUTHORITY_INVALID');
  await stranger.close();

  const browser = await launch([`--ignore-certificate-errors-spki-list=${trusted()}`]);
  const context = await browser.newContext({ viewport: { width: 390, height: 844 }, isMobile: true, hasTouch: true });
  const page = await context.newPage();
  const add = ['bin/flylarder.mjs', 'devices', 'add', '--data', household];
  const code = /Code: (\S+)/.exec(execFileSync(process.execPath, add, { encoding: 'utf8' }))?.[1] as string;
  await page.goto(`https://${name}:${port}/`);
  await expect(page).toHaveURL(/\/network\/pair$/);
  await page.getByLabel('Code').fill(code.toLowerCase());
  await page.getByLabel('Name of this device').fill('Phone');
  await page.getByRole('button', { name: 'Pair this device' }).click();
  await settled(page);
  expect(await page.evaluate(() => [isSecureContext, document.cookie])).toEqual([true, '']);
  await page.evaluate(() => navigator.serviceWorker.ready);
  await page.reload();
  await settled(page);
  await context.setOffline(true);
  await page.reload();
  await settled(page);
  await context.setOffline(false);

  await page.goto(`https://${name}:${port}/network/certificate`);
  await expect(page.getByRole('heading', { name: 'HTTPS for this device' })).toBeVisible();

  // Shut out, it goes on from its own copy and says how to be let in again.
  execFileSync(process.execPath, ['bin/flylarder.mjs', 'devices', 'revoke', 'Phone', '--data', household]);
  await page.goto(`https://${name}:${port}/`);
  await settled(page);
  await page.getByRole('link', { name: 'Pair or sign in' }).click();
  await expect(page).toHaveURL(/\/network\/pair$/);
  await browser.close();
});
