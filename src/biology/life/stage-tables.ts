/**
 * How many are still in a stage at a given physiological age: gamma (Erlang) distributed stage ends on
 * one clock, which is the linear chain of the stage's sub-steps for any temperature path. Tables, so
 * that the engine's step is a look-up. Level 0 is the strain's own spread; each level is 8 % wider.
 */
import type { StrainLife } from '../culture.ts';

/** Points per unit of clock, and the clock's end. */
export const pointsPerUnit = 512;
export const clockEnd = 2;
export const pointsPerLevel = pointsPerUnit * clockEnd + 2;
export const levels = 16;
/** Each level's CV over the last one's. */
export const levelRatio = 1.08;

export interface StageTables {
  cv: number;
  /** Share still egg, not yet pupa, not yet adult, by level and clock. */
  egg: Float32Array;
  larva: Float32Array;
  pupa: Float32Array;
  /** Mean of three times the squared progress of those who are larvae, by level and clock. */
  appetite: Float32Array;
  /** Clock, by level, before which next to nobody (1e-6) leaves the stage. */
  eggEnds: Float64Array;
  larvaEnds: Float64Array;
  pupaEnds: Float64Array;
  /** Squared coefficient of variation of each level. */
  variance: Float64Array;
}

const cache = new Map<string, StageTables>();
const cacheLimit = 64;

/** The tables for a strain's shares and spread; made once and kept. */
export function stageTables(strain: StrainLife): StageTables {
  const { egg, larva } = strain.stageShares;
  const key = `${egg} ${larva} ${strain.developmentCv}`;
  const known = cache.get(key);
  if (known) return known;
  if (cache.size >= cacheLimit) cache.clear();
  const made = makeTables(egg, larva, strain.developmentCv);
  cache.set(key, made);
  return made;
}

function makeTables(eggShare: number, larvaShare: number, cv: number): StageTables {
  const size = levels * pointsPerLevel;
  const [egg, larva, pupa, appetite] = [0, 1, 2, 3].map(() => new Float32Array(size)) as [Table, Table, Table, Table];
  for (let level = 0; level < levels; level += 1) {
    const shape = 1 / (cv * levelRatio ** level) ** 2;
    const from = level * pointsPerLevel;
    fillSurvivor(egg.subarray(from, from + pointsPerLevel), shape * eggShare, shape);
    fillSurvivor(larva.subarray(from, from + pointsPerLevel), shape * (eggShare + larvaShare), shape);
    fillSurvivor(pupa.subarray(from, from + pointsPerLevel), shape, shape);
    fillAppetite(appetite.subarray(from, from + pointsPerLevel), shape, eggShare, larvaShare);
  }
  const ends = { eggEnds: firstEnds(egg), larvaEnds: firstEnds(larva), pupaEnds: firstEnds(pupa) };
  const variance = Float64Array.from({ length: levels }, (_, level) => (cv * levelRatio ** level) ** 2);
  return { cv, egg, larva, pupa, appetite, variance, ...ends };
}

type Table = Float32Array;

/**
 * Fills `out` with 3 E(u^2), u the progress of a larva through its stage, among those of a cohort at
 * clock x who are larvae: sub-stages passed are Poisson with mean shape x. A grown larva counts 3, so
 * that the whole stage adds up to 1.
 */
function fillAppetite(out: Float32Array, shape: number, eggShare: number, larvaShare: number): void {
  const first = Math.ceil(shape * eggShare);
  const last = Math.floor(shape * (eggShare + larvaShare));
  for (let i = 0; i < out.length; i += 1) {
    const mean = (shape * i) / pointsPerUnit;
    // Weights relative to the most likely number among larvae: only ratios count.
    const likeliest = Math.max(first, Math.min(last, Math.floor(mean)));
    let weights = 0;
    let sum = 0;
    const add = (n: number, weight: number) => {
      const u = Math.min(1, (n + 0.5 - shape * eggShare) / (shape * larvaShare));
      weights += weight;
      sum += weight * u * u;
    };
    for (let n = likeliest, weight = 1; n <= last && weight > 1e-9; n += 1, weight *= mean / n) add(n, weight);
    for (let n = likeliest, weight = 1; n > first && weight > 1e-9 && mean > 0; n -= 1) {
      weight *= n / mean;
      add(n - 1, weight);
    }
    out[i] = (3 * sum) / weights;
  }
}

function firstEnds(survivors: Float32Array): Float64Array {
  return Float64Array.from({ length: levels }, (_, level) => {
    let point = 0;
    while ((survivors[level * pointsPerLevel + point] as number) > 1 - 1e-6) point += 1;
    return (point - 1) / pointsPerUnit;
  });
}

/**
 * Fills `out` with 1 - gamma cdf(x; shape, rate) on the grid, by Simpson's rule on the density; the
 * constant is fixed by the total, so that no gamma function is needed.
 */
function fillSurvivor(out: Float32Array, shape: number, rate: number): void {
  const panels = 4;
  const h = 1 / pointsPerUnit / panels;
  const logPeak = (shape - 1) * Math.log((shape - 1) / rate) - (shape - 1);
  const density = (x: number) => (x <= 0 ? 0 : Math.exp((shape - 1) * Math.log(x) - rate * x - logPeak));
  const sums = new Float64Array(out.length);
  for (let i = 1; i < out.length; i += 1) {
    const x = (i - 1) / pointsPerUnit;
    const area = density(x) + 4 * density(x + h) + 2 * density(x + 2 * h) + 4 * density(x + 3 * h) + density(x + 4 * h);
    sums[i] = (sums[i - 1] as number) + area;
  }
  const total = sums[out.length - 1] as number;
  for (let i = 0; i < out.length; i += 1) out[i] = Math.max(0, 1 - (sums[i] as number) / total);
}
