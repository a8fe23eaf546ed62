import { describe, expect, it } from 'vitest';
import { randomStream } from './random.ts';

const draws = 40_000;
const sample = (draw: () => number) => {
  let sum = 0;
  let squares = 0;
  for (let i = 0; i < draws; i++) {
    const x = draw();
    sum += x;
    squares += x * x;
  }
  const mean = sum / draws;
  return { mean, variance: squares / draws - mean * mean };
};

/** Expects a sample mean within five of its own standard errors. */
function expectMoments(draw: () => number, mean: number, variance: number) {
  const got = sample(draw);
  expect(Math.abs(got.mean - mean)).toBeLessThan(5 * Math.sqrt(variance / draws));
  // The variance of a sample variance is about (kurtosis - 1) sigma^4 / n; kurtosis below 12 here.
  expect(Math.abs(got.variance - variance)).toBeLessThan(5 * Math.sqrt((11 * variance * variance) / draws));
}

describe('random streams, against textbook moments', () => {
  const stream = () => randomStream(7, 'moments');
  it('normal', () => expectMoments(stream().normal, 0, 1));
  it('uniform', () => expectMoments(stream().uniform, 0.5, 1 / 12));
  for (const shape of [0.4, 1, 7.5]) {
    const s = stream();
    it(`gamma, shape ${shape}`, () => expectMoments(() => s.gamma(shape), shape, shape));
  }
  for (const mean of [0.3, 5, 60, 900]) {
    const s = stream();
    it(`poisson, mean ${mean}`, () => expectMoments(() => s.poisson(mean), mean, mean));
  }
  it('beta', () => {
    const s = stream();
    expectMoments(() => s.beta(2, 5), 2 / 7, 10 / (49 * 8));
  });
  it('negative binomial', () => {
    const s = stream();
    expectMoments(() => s.negativeBinomial(40, 5), 40, 40 + 320);
  });
});

describe('streams by name', () => {
  const first = (...path: (string | number)[]) => randomStream(11, ...path).uniform();
  it('the same path gives the same draws', () => expect(first('a', 1)).toBe(first('a', 1)));
  it('another path gives others', () =>
    expect(new Set([first('a', 1), first('a', 2), first('a1'), first('b', 1)]).size).toBe(4));
});
