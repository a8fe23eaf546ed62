import { expect, test } from 'vitest';
import { beliefDraws } from './belief-draws.ts';
import type { Histories } from './evidence.ts';

const living = (cups: number): Histories =>
  new Map([['quick', Array.from({ length: cups }, () => ({ end: null }))]]) as unknown as Histories;

test('a household of hundreds has a thousand draws, one of thousands fewer, and never too few for its bands', () => {
  expect(beliefDraws(living(0))).toBe(1000);
  expect(beliefDraws(living(4000))).toBe(1000);
  expect(beliefDraws(living(8000))).toBe(500);
  expect(beliefDraws(living(50_000))).toBe(400);
});

test('cups that have ended take no memory', () => {
  const ended = new Map([['quick', Array.from({ length: 9000 }, () => ({ end: 3 }))]]) as unknown as Histories;
  expect(beliefDraws(ended)).toBe(1000);
});
