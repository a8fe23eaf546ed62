/** Two decoders that share no code with the encoder: jsqr (npm) and zbar (Debian's zbar-tools). */
import { spawnSync } from 'node:child_process';
import { mkdtempSync, rmSync, writeFileSync } from 'node:fs';
import { createRequire } from 'node:module';
import { tmpdir } from 'node:os';
import { join } from 'node:path';
import type { Page } from '@playwright/test';

/** Every distinct text that zbar finds in a PNG. */
export function readByZbar(png: Buffer): string[] {
  const folder = mkdtempSync(join(tmpdir(), 'label-'));
  try {
    const file = join(folder, 'page.png');
    writeFileSync(file, png);
    const run = spawnSync('zbarimg', ['--raw', '--quiet', '-Sdisable', '-Sqrcode.enable', file], { encoding: 'utf8' });
    return [...new Set(run.stdout.split('\n').filter((line) => line !== ''))];
  } finally {
    rmSync(folder, { recursive: true });
  }
}

/** The text that jsqr finds in a PNG, or null; it runs in the page, which unpacks the picture. */
export async function readByJsqr(page: Page, png: Buffer): Promise<string | null> {
  await page.addScriptTag({ path: createRequire(import.meta.url).resolve('jsqr') });
  return page.evaluate(async (base64) => {
    const image = new Image();
    image.src = `data:image/png;base64,${base64}`;
    await image.decode();
    const canvas = document.createElement('canvas');
    canvas.width = image.width;
    canvas.height = image.height;
    const context = canvas.getContext('2d') as CanvasRenderingContext2D;
    context.drawImage(image, 0, 0);
    const { data } = context.getImageData(0, 0, image.width, image.height);
    const { jsQR } = window as unknown as { jsQR: typeof import('jsqr').default };
    return jsQR(data, image.width, image.height)?.data ?? null;
  }, png.toString('base64'));
}
