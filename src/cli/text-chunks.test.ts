import { expect, it } from 'vitest';
import { textChunks } from './text-chunks.ts';

it('gives the same text in fewer pieces', () => {
  const lines = Array.from({ length: 20_000 }, (_, n) => `line ${n}\n`);
  const chunks = [...textChunks(lines)];
  expect(chunks.join('')).toBe(lines.join(''));
  expect(chunks.length).toBeGreaterThan(1);
  expect(chunks.length).toBeLessThan(10);
  expect([...textChunks([])]).toEqual([]);
});
