import { mkdtempSync, rmSync, writeFileSync } from 'node:fs';
import { tmpdir } from 'node:os';
import { join } from 'node:path';
import { chromium, expect, type Page } from '@playwright/test';
import { renderSVG } from 'uqr';
import { settled } from './page.ts';
import { logbookFile, smallHousehold, test, today } from './static-host.ts';

const address = 'http://192.168.1.20:4180/#/culture/M2';

/** A label's code as a picture of that type, drawn by the page. */
async function picture(page: Page, text: string, type: 'image/png' | 'image/jpeg'): Promise<Buffer> {
  const base64 = await page.evaluate(
    async ([svg, as]) => {
      const image = new Image();
      image.src = `data:image/svg+xml;base64,${btoa(svg)}`;
      await image.decode();
      const canvas = Object.assign(document.createElement('canvas'), { width: 640, height: 480 });
      const context = canvas.getContext('2d') as CanvasRenderingContext2D;
      context.fillStyle = '#fff';
      context.fillRect(0, 0, 640, 480);
      context.drawImage(image, 140, 60, 360, 360);
      return canvas.toDataURL(as).split(',')[1] as string;
    },
    [renderSVG(text), type] as const,
  );
  return Buffer.from(base64, 'base64');
}

async function bringLogbook(page: Page): Promise<void> {
  await page.goto('./#/settings');
  await settled(page);
  await page.getByLabel('Bring a logbook in').setInputFiles(logbookFile(smallHousehold(today())));
  await expect(page.getByText('6 entries read.')).toBeVisible();
}

test('a label is read from a photo, and one of another household says so', async ({ page }) => {
  await bringLogbook(page);
  const [ours, other] = [
    await picture(page, address, 'image/png'),
    await picture(page, 'http://other/#/culture/X9', 'image/png'),
  ];
  await page.goto('./#/scan');
  const photo = page.getByLabel('Choose a photo');
  await photo.setInputFiles({ name: 'other.png', mimeType: 'image/png', buffer: other });
  await expect(page.getByText('this logbook has no such cup')).toBeVisible();
  await photo.setInputFiles({ name: 'ours.png', mimeType: 'image/png', buffer: ours });
  await expect(page.getByRole('heading', { level: 1, name: 'M2' })).toBeVisible();
});

test('a label held before the camera opens its cup', async ({ page, baseURL, launchOptions }) => {
  const folder = mkdtempSync(join(tmpdir(), 'flylarder-camera-'));
  const frame = await picture(page, address, 'image/jpeg');
  const film = join(folder, 'label.mjpeg');
  writeFileSync(film, Buffer.concat(Array.from({ length: 30 }, () => frame)));
  const camera = ['--use-fake-ui-for-media-stream', '--use-fake-device-for-media-stream'];
  const browser = await chromium.launch({
    ...launchOptions,
    args: [...(launchOptions.args ?? []), ...camera, `--use-file-for-fake-video-capture=${film}`],
  });
  try {
    const device = await browser.newPage({ baseURL: baseURL ?? '', locale: 'en-GB' });
    await bringLogbook(device);
    await device.goto('./#/scan');
    await expect(device.getByRole('heading', { level: 1, name: 'M2' })).toBeVisible();
  } finally {
    await browser.close();
    rmSync(folder, { recursive: true });
  }
});

test('where the browser reads codes itself, its reader opens the cup and no other begins', async ({ page }) => {
  await page.addInitScript((text) => {
    class BarcodeDetector {
      static getSupportedFormats = async () => ['ean_13', 'qr_code'];
      readonly formats: string[];
      constructor(options: { formats: string[] }) {
        this.formats = options.formats;
      }
      async detect(picture: unknown) {
        if (!(picture instanceof ImageBitmap)) throw new TypeError('not a picture');
        return this.formats.includes('qr_code') ? [{ rawValue: text }] : [];
      }
    }
    Object.assign(globalThis, { BarcodeDetector });
  }, address);
  const workers: string[] = [];
  page.on('worker', (worker) => workers.push(worker.url()));
  await bringLogbook(page);
  await page.goto('./#/scan');
  // No code is on this picture: only the browser's reader can name the cup.
  const buffer = await picture(page, 'nothing', 'image/png');
  await page.getByLabel('Choose a photo').setInputFiles({ name: 'cup.png', mimeType: 'image/png', buffer });
  await expect(page.getByRole('heading', { level: 1, name: 'M2' })).toBeVisible();
  expect(workers.length).toBeGreaterThan(0);
  expect(workers.filter((url) => url.includes('label-worker'))).toEqual([]);
});

test('a photo of a cup stays on the device, through a reload and until it is removed', async ({ page }) => {
  await bringLogbook(page);
  const buffer = await picture(page, address, 'image/png');
  await page.goto('./#/culture/M2');
  await page.getByLabel('Add a photo').setInputFiles({ name: 'cup.png', mimeType: 'image/png', buffer });
  await expect(page.getByRole('img', { name: /^M2 on / })).toBeVisible();
  await page.reload();
  await page.getByRole('img', { name: /^M2 on / }).click();
  await page.getByRole('button', { name: 'Remove' }).click();
  await expect(page.getByRole('img', { name: /^M2 on / })).toHaveCount(0);
  await page.getByRole('button', { name: 'Undo' }).click();
  await expect(page.getByRole('img', { name: /^M2 on / })).toBeVisible();
});
