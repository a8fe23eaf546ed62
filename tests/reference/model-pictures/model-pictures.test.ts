/** The pictures in docs/models are what the code draws today. */
import { readFileSync } from 'node:fs';
import { describe, expect, test } from 'vitest';
import { modelPictures } from './pictures.ts';

const folder = new URL('../../../docs/models/', import.meta.url).pathname;

describe('pictures of docs/models are drawn from the code (node scripts/draw-model-pictures.mjs)', () => {
  test.each([...modelPictures()])('%s', (file, svg) => {
    expect(readFileSync(folder + file, 'utf8')).toBe(svg);
  });
});
