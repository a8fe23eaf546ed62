/**
 * What females and males hand on. Crossing-over happens in females only (in Drosophila males there is
 * none, source key morgan-1912); a female with one copy of an inversion has none on that chromosome.
 */
import type { Layout } from './layout.ts';

/** Calls `emit(haplotype, share)` for every gamete of the fly with chromosome sets `a` and `b`. */
export function forEachGamete(
  layout: Layout,
  a: number,
  b: number,
  parting: (i: number) => number,
  emit: (haplotype: number, share: number) => void,
): void {
  const count = layout.loci.length;
  const descend = (i: number, haplotype: number, onA: number, onB: number): void => {
    if (i === count) return emit(haplotype, onA + onB);
    const r = parting(i);
    const toA = onA * (1 - r) + onB * r;
    const toB = onB * (1 - r) + onA * r;
    const bit = 1 << i;
    const inA = a & bit;
    const inB = b & bit;
    if (inA === inB) return descend(i + 1, haplotype | inA, toA, toB);
    if (toA > 0) descend(i + 1, haplotype | inA, toA, 0);
    if (toB > 0) descend(i + 1, haplotype | inB, 0, toB);
  };
  // Either set comes first with chance a half: the state before the first locus.
  descend(0, 0, 0.5, 0.5);
}

/** Eggs by haplotype, summing to the summed weight of `females` (weight by `a * haplotypes + b`). */
export function eggs(layout: Layout, females: Float64Array): Float64Array {
  const { haplotypes, recombination, groupStart, loci } = layout;
  const out = new Float64Array(haplotypes);
  const locked = new Uint8Array(loci.length);
  const parting = (i: number) =>
    locked[groupStart[i] as number] && groupStart[i] !== i ? 0 : (recombination[i] as number);
  for (let a = 0; a < haplotypes; a++) {
    for (let b = 0; b < haplotypes; b++) {
      const weight = females[a * haplotypes + b] as number;
      if (weight === 0) continue;
      lockInversions(layout, a ^ b, locked);
      forEachGamete(layout, a, b, parting, (haplotype, share) => {
        out[haplotype] = (out[haplotype] as number) + weight * share;
      });
    }
  }
  return out;
}

function lockInversions({ loci, groupStart }: Layout, heterozygous: number, locked: Uint8Array): void {
  locked.fill(0);
  loci.forEach((locus, i) => {
    if (locus.suppressesCrossing && heterozygous & (1 << i)) locked[groupStart[i] as number] = 1;
  });
}

export interface Sperm {
  /** X-bearing, by haplotype, summing to half the weight of the males. */
  x: Float64Array;
  /** Y-bearing, likewise; their X bits are 0. */
  y: Float64Array;
}

/** Sperm of `males`, whose set `a` came from the mother and carries the one X. */
export function sperm(layout: Layout, males: Float64Array): Sperm {
  const { haplotypes, groupStart, xMask } = layout;
  const out = { x: new Float64Array(haplotypes), y: new Float64Array(haplotypes) };
  const parting = (i: number) => (groupStart[i] === i ? 0.5 : 0);
  for (let a = 0; a < haplotypes; a++) {
    for (let b = 0; b < haplotypes; b++) {
      const weight = (males[a * haplotypes + b] as number) / 2;
      if (weight === 0) continue;
      const maternalX = a & xMask;
      forEachGamete(layout, a & ~xMask, b & ~xMask, parting, (autosomes, share) => {
        const withX = autosomes | maternalX;
        out.x[withX] = (out.x[withX] as number) + weight * share;
        out.y[autosomes] = (out.y[autosomes] as number) + weight * share;
      });
    }
  }
  return out;
}
