/**
 * Seeded random streams. Every draw in the project comes from a stream named by a seed and a path of
 * labels, so that the same question always gets the same answer and two uses never share draws.
 */
import { uniformFloat64 } from 'pure-rand/distribution/uniformFloat64';
import { xoroshiro128plus } from 'pure-rand/generator/xoroshiro128plus';
import { mix32 } from './counter-random.ts';
import { normalQuantile } from './normal-distribution.ts';

/** A stream of independent draws; each call moves it on. */
export interface RandomStream {
  /** Uniform on [0, 1). */
  uniform(): number;
  /** Whole number from 0 to `n` - 1. */
  below(n: number): number;
  /** Normal with mean 0 and standard deviation 1. */
  normal(): number;
  /** Gamma with the given shape (> 0) and scale 1. */
  gamma(shape: number): number;
  /** Beta with parameters `a`, `b` (> 0). */
  beta(a: number, b: number): number;
  /** Poisson count with the given mean (>= 0). */
  poisson(mean: number): number;
  /** Negative binomial count: mean `mean`, size `k`, so variance mean + mean^2 / k. */
  negativeBinomial(mean: number, k: number): number;
}

/** The stream of `seed` for the use that `labels` names. */
export function randomStream(seed: number, ...labels: (string | number)[]): RandomStream {
  const generator = xoroshiro128plus(hashLabels(seed, labels));
  const uniform = () => uniformFloat64(generator);
  const normal = () => normalQuantile(openUniform(uniform));
  const gamma = (shape: number): number => {
    if (!(shape > 0)) throw new RangeError(`gamma: shape ${shape} is not above 0`);
    return shape < 1
      ? gammaFrom(shape + 1, uniform, normal) * openUniform(uniform) ** (1 / shape)
      : gammaFrom(shape, uniform, normal);
  };
  const poisson = (mean: number): number => poissonFrom(mean, uniform, gamma);
  return {
    uniform,
    below: (n) => Math.floor(uniform() * n),
    normal,
    gamma,
    beta: (a, b) => {
      const x = gamma(a);
      return x / (x + gamma(b));
    },
    poisson,
    negativeBinomial: (mean, k) => poisson((mean * gamma(k)) / k),
  };
}

/** Uniform on (0, 1): the quantile of 0 is not finite. */
function openUniform(uniform: () => number): number {
  let u = uniform();
  while (u === 0) u = uniform();
  return u;
}

/** Marsaglia and Tsang (2000), ACM Trans. Math. Softw. 26:363, for shape >= 1. */
function gammaFrom(shape: number, uniform: () => number, normal: () => number): number {
  const d = shape - 1 / 3;
  const c = 1 / Math.sqrt(9 * d);
  for (;;) {
    const x = normal();
    const v = (1 + c * x) ** 3;
    if (v > 0 && Math.log(openUniform(uniform)) < 0.5 * x * x + d - d * v + d * Math.log(v)) return d * v;
  }
}

/** By multiplication when small; by the gamma reduction of Ahrens and Dieter (1974) when large. */
function poissonFrom(mean: number, uniform: () => number, gamma: (shape: number) => number): number {
  if (!(mean >= 0)) throw new RangeError(`poisson: mean ${mean} is not 0 or more`);
  let count = 0;
  let rest = mean;
  while (rest > 20) {
    const m = Math.floor(rest * 0.875);
    const arrival = gamma(m);
    if (arrival > rest) {
      // `m - 1` earlier arrivals are uniform before `arrival`: a binomial thinning gives the count.
      const p = rest / arrival;
      for (let i = 1; i < m; i++) if (uniform() < p) count++;
      return count;
    }
    count += m;
    rest -= arrival;
  }
  const limit = Math.exp(-rest);
  for (let product = uniform(); product > limit; product *= uniform()) count++;
  return count;
}

function hashLabels(seed: number, labels: readonly (string | number)[]): number {
  let h = mix32(seed | 0, 0x9e3779b9);
  for (const label of labels) {
    const text = String(label);
    for (let i = 0; i < text.length; i++) h = mix32(h, text.charCodeAt(i));
    h = mix32(h, 0x1f);
  }
  return h;
}
