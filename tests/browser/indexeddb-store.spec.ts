/** The store of the browser, held to the suite that every store passes, in a real Chromium. */
import { createServer, type Server } from 'node:http';
import { type AddressInfo } from 'node:net';
import { resolve } from 'node:path';
import { expect, type Page, test } from '@playwright/test';
import { build, type Rollup } from 'vite';
import type { ConformancePage } from '../../src/store/indexeddb/conformance-page.ts';

declare const conformancePage: ConformancePage;

let server: Server;
let address = '';

test.beforeAll(async () => {
  const script = await bundle(resolve('src/store/indexeddb/conformance-page.ts'));
  server = createServer((request, response) => {
    const isScript = request.url === '/page.js';
    response.setHeader('content-type', isScript ? 'text/javascript' : 'text/html');
    response.end(
      isScript ? script : '<!doctype html><title>store</title><script type="module" src="/page.js"></script>',
    );
  });
  await new Promise<void>((done) => server.listen(0, '127.0.0.1', done));
  address = `http://127.0.0.1:${(server.address() as AddressInfo).port}/`;
});

test.afterAll(() => server.close());

async function bundle(entry: string): Promise<string> {
  const output = (await build({
    configFile: false,
    logLevel: 'error',
    build: { write: false, minify: false, rollupOptions: { input: entry } },
  })) as Rollup.RollupOutput;
  return output.output[0].code;
}

async function open(page: Page): Promise<void> {
  await page.goto(address);
  await page.waitForFunction(() => 'conformancePage' in globalThis);
}

test('the store in IndexedDB passes the conformance suite', async ({ page }) => {
  await open(page);
  const names = await page.evaluate(() => conformancePage.names);
  expect(names.length).toBeGreaterThan(10);
  for (const [index, name] of names.entries()) {
    expect(await page.evaluate((i) => conformancePage.run(i), index), name).toBeNull();
  }
});

test('two tabs on one store lose nothing', async ({ context }) => {
  const [one, other] = [await context.newPage(), await context.newPage()];
  await Promise.all([open(one), open(other)]);
  await Promise.all([
    one.evaluate(() => conformancePage.record('tabs', 0, 100)),
    other.evaluate(() => conformancePage.record('tabs', 50, 150)),
  ]);
  expect(await one.evaluate(() => conformancePage.count('tabs'))).toBe(150);
});

test('a full disk is said, and every acknowledged entry is there', async ({ page, context }) => {
  await open(page);
  const devtools = await context.newCDPSession(page);
  await devtools.send('Storage.overrideQuotaForOrigin', { origin: new URL(address).origin, quotaSize: 3_000_000 });
  const { message, acknowledged, kept } = await page.evaluate(() => conformancePage.fill('full', 60));
  expect(message).toMatch(/no space left for this site; nothing was written/);
  expect(acknowledged).toBeGreaterThan(0);
  expect(kept).toBe(acknowledged);
});
