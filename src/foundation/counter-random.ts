/**
 * Draws by counter: a pure function of a seed and up to three counters. Common random numbers need
 * them: the yield of the third cup of scenario 17 is the same whatever plan is being tried.
 */
import { normalQuantile } from './normal-distribution.ts';

/** Mixes two 32-bit words into one (the finaliser of MurmurHash3, A. Appleby, public domain). */
export function mix32(a: number, b: number): number {
  let h = Math.imul(a ^ 0x85ebca6b, 0xcc9e2d51) ^ Math.imul(b ^ 0xc2b2ae35, 0x1b873593);
  h ^= h >>> 16;
  h = Math.imul(h, 0x85ebca6b);
  h ^= h >>> 13;
  h = Math.imul(h, 0xc2b2ae35);
  return h ^ (h >>> 16);
}

/** Uniform on (0, 1), never 0 or 1. */
export function counterUniform(seed: number, a: number, b = 0, c = 0): number {
  return ((mix32(mix32(mix32(seed, a), b), c) >>> 0) + 0.5) / 4294967296;
}

/** Normal with mean 0 and standard deviation 1. */
export function counterNormal(seed: number, a: number, b = 0, c = 0): number {
  return normalQuantile(counterUniform(seed, a, b, c));
}
