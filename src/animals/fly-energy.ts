/** What a fly gives: joules per milligram of fresh fly, gross and usable, with the spread of the analyses. */
import { type Range, rangeOf } from './range.ts';

export interface FlyAnalysis {
  dryShare: number;
  grossKjPerGDry: number | null;
  usableKjPerGDry: number | null;
}

/**
 * Shares of gross energy that eaters take up. Frogs on crickets: 81.1 +/- 3.8 % (treefrog-thesis). Spiders
 * and mantises leave husks: from 0.7, a value from memory.
 */
export const assimilatedShare: Record<
  'amphibian' | 'reptile' | 'insect' | 'spider' | 'fish',
  { low: number; high: number }
> = {
  amphibian: { low: 0.773, high: 0.849 },
  reptile: { low: 0.773, high: 0.849 },
  fish: { low: 0.773, high: 0.849 },
  insect: { low: 0.7, high: 0.849 },
  spider: { low: 0.7, high: 0.849 },
};

/** Gross energy of fresh flies, J per mg (= kJ per g), over the analyses that give it. */
export function grossJoulePerMg(analyses: readonly FlyAnalysis[]): Range {
  return span(
    'grossJoulePerMg',
    analyses.flatMap(({ dryShare, grossKjPerGDry }) => (grossKjPerGDry === null ? [] : [dryShare * grossKjPerGDry])),
  );
}

/**
 * Usable energy, J per mg: gross times the share taken up, and the usable energy that an analysis gives
 * itself; the range spans all of them.
 */
export function usableJoulePerMg(analyses: readonly FlyAnalysis[], taken: { low: number; high: number }): Range {
  const gross = grossJoulePerMg(analyses);
  const given = analyses.flatMap(({ dryShare, usableKjPerGDry }) =>
    usableKjPerGDry === null ? [] : [dryShare * usableKjPerGDry],
  );
  return span('usableJoulePerMg', [gross.low * taken.low, gross.high * taken.high, ...given]);
}

function span(caller: string, values: number[]): Range {
  if (values.length === 0) throw new RangeError(`${caller}: no analysis gives an energy`);
  return rangeOf(Math.min(...values), Math.max(...values));
}
