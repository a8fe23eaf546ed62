/**
 * Passkeys of a facility's people, with the authenticator that Chromium brings for tests (Web Authentication,
 * "User Agent Automation"): added, used, used up, removed.
 */
import { type ChildProcess, execFileSync, spawn } from 'node:child_process';
import { AxeBuilder } from '@axe-core/playwright';
import { type CDPSession, expect, type Page, test } from '@playwright/test';
import pg from 'pg';
import { type PostgresServer, startPostgres } from '../postgres/postgres-server.ts';

const password = 'correct horse 7';
let database: PostgresServer;
let url = '';
let server: ChildProcess;
let address = '';

test.beforeAll(async () => {
  database = await startPostgres();
  const client = new pg.Client({ connectionString: database.adminUrl });
  await client.connect();
  await client.query("CREATE ROLE zoo LOGIN PASSWORD 'reed'");
  await client.query('CREATE DATABASE zoo OWNER zoo');
  await client.end();
  url = `postgres://zoo:reed@${new URL(database.adminUrl).host}/zoo`;
  const add = ['bin/flylarder.mjs', 'accounts', 'add', 'ada', '--role', 'keeper', '--database', url];
  execFileSync(process.execPath, add, { input: `${password}\n` });
  const args = ['bin/flylarder.mjs', 'serve', '--accounts', '--database', url, '--port', '0'];
  server = spawn(process.execPath, args, { stdio: ['ignore', 'pipe', 'ignore'] });
  address = await new Promise((resolve, reject) => {
    server.stdout?.on('data', (part) => {
      const found = /http:\/\/localhost:\d+/.exec(String(part));
      if (found) resolve(found[0]);
    });
    server.once('exit', (code) => reject(new Error(`serve ended with ${code}`)));
  });
});
test.afterAll(async () => {
  const ended = new Promise((resolve) => server.once('exit', resolve));
  if (server.kill('SIGTERM')) await ended;
  await database.stop();
});

async function withAuthenticator(page: Page): Promise<{ devtools: CDPSession; authenticatorId: string }> {
  const devtools = await page.context().newCDPSession(page);
  await devtools.send('WebAuthn.enable');
  const { authenticatorId } = await devtools.send('WebAuthn.addVirtualAuthenticator', {
    options: {
      protocol: 'ctap2',
      transport: 'internal',
      hasResidentKey: true,
      hasUserVerification: true,
      isUserVerified: true,
    },
  });
  return { devtools, authenticatorId };
}

const signInByKey = async (page: Page) => {
  await page.goto(`${address}/network/sign-in`);
  await page.getByRole('button', { name: 'Sign in with a passkey' }).click();
};
const signOut = async (page: Page) => {
  await page.goto(`${address}/network/account`);
  await page.getByRole('button', { name: 'Sign out' }).click();
  await expect(page).toHaveURL(/sign-in$/);
};

test('a passkey is added, signs in without a password, and no longer once it is removed', async ({ page }) => {
  test.slow();
  const { devtools, authenticatorId } = await withAuthenticator(page);
  await page.goto(`${address}/`);
  await page.getByLabel('Name', { exact: true }).fill('ada');
  await page.getByLabel('Password').fill(password);
  await page.getByRole('button', { name: 'Sign in', exact: true }).click();
  await expect(page).toHaveURL(`${address}/`);
  await page.goto(`${address}/network/account`);
  await page.getByLabel('Name of the new key').fill('my phone');
  await page.getByRole('button', { name: 'Add a passkey' }).click();
  await expect(page.getByText('not used yet')).toBeVisible();
  expect((await new AxeBuilder({ page }).analyze()).violations).toEqual([]);
  const { credentials } = await devtools.send('WebAuthn.getCredentials', { authenticatorId });
  expect(credentials.map(({ rpId, isResidentCredential }) => [rpId, isResidentCredential])).toEqual([
    ['localhost', true],
  ]);
  // The same device a second time: it says so itself.
  await page.getByLabel('Name of the new key').fill('again');
  await page.getByRole('button', { name: 'Add a passkey' }).click();
  await expect(page.getByRole('alert')).toHaveText('This device has a key for here already.');
  await signOut(page);

  const proof = page.waitForRequest(/passkeys\/sign-in$/);
  await signInByKey(page);
  await expect(page).toHaveURL(`${address}/`);
  expect((await page.request.get(`${address}/api/v1/facts`)).status()).toBe(200);
  await signOut(page);

  // A proof that was overheard is good no more.
  const overheard = (await proof).postData() as string;
  const replayed = await page.request.post(`${address}/network/passkeys/sign-in`, {
    headers: { 'content-type': 'application/json' },
    data: overheard,
  });
  expect(replayed.status()).toBe(401);
  expect((await page.request.get(`${address}/api/v1/facts`)).status()).toBe(401);

  // A device whose lock is not opened proves nothing.
  await devtools.send('WebAuthn.setUserVerified', { authenticatorId, isUserVerified: false });
  await signInByKey(page);
  await expect(page.getByRole('alert')).toHaveText(/No key was used/);
  await devtools.send('WebAuthn.setUserVerified', { authenticatorId, isUserVerified: true });

  await signInByKey(page);
  await expect(page).toHaveURL(`${address}/`);
  await page.goto(`${address}/network/account`);
  await expect(page.getByText(/last used \d+ \w+ 20\d\d/)).toBeVisible();
  await page.getByRole('button', { name: 'Remove my phone' }).click();
  await expect(page.getByText('None yet.')).toBeVisible();
  await signOut(page);
  await signInByKey(page);
  await expect(page.getByRole('alert')).toHaveText('This key is not known here, or it took too long.');
});

test('sessions of other devices are listed and ended; their open streams end at once', async ({ page, browser }) => {
  const signIn = async (on: Page) => {
    await on.goto(`${address}/network/sign-in`);
    await on.getByLabel('Name', { exact: true }).fill('ada');
    await on.getByLabel('Password').fill(password);
    await on.getByRole('button', { name: 'Sign in', exact: true }).click();
    await expect(on).toHaveURL(`${address}/`);
  };
  await signIn(page);
  const context = await browser.newContext();
  const elsewhere = await context.newPage();
  await signIn(elsewhere);
  await elsewhere.goto(`${address}/network/sign-in`);
  const ended = elsewhere.evaluate(async () => {
    const stream = await fetch('/api/v1/events');
    const reader = (stream.body as ReadableStream<Uint8Array>).getReader();
    await reader.read();
    document.title = 'listening';
    while (!(await reader.read()).done);
    return performance.now();
  });
  await expect(elsewhere).toHaveTitle('listening');
  await page.goto(`${address}/network/account`);
  await expect(page.getByText('(this one)')).toBeVisible();
  const before = await elsewhere.evaluate(() => performance.now());
  await page.getByRole('button', { name: 'Sign it out' }).first().click();
  expect((await ended) - before).toBeLessThan(1500);
  expect((await elsewhere.request.get(`${address}/api/v1/facts`)).status()).toBe(401);
  await context.close();
});
