import { describe, expect, it } from 'vitest';
import { publishedFlyCompositions } from '../reference/index.ts';
import { assimilatedShare, grossJoulePerMg, usableJoulePerMg } from './fly-energy.ts';

describe('a fly as food (Bernard and Allen 1997; Hand-Rearing Birds, table 41.1)', () => {
  it('a fly of 0.95 mg has 6.0 J gross, 5.4 J usable by the second table', () => {
    expect(0.95 * grossJoulePerMg(publishedFlyCompositions).middle).toBeCloseTo(6.0, 1);
    expect(0.95 * usableJoulePerMg(publishedFlyCompositions, assimilatedShare.amphibian).high).toBeCloseTo(5.4, 1);
  });
  it('usable energy spans what frogs take up: 0.811 - 0.038 of gross at least', () =>
    expect(usableJoulePerMg(publishedFlyCompositions, assimilatedShare.amphibian).low).toBeCloseTo(
      0.296 * 21.4 * 0.773,
      9,
    ));
  it('wants an analysis with energy', () => expect(() => grossJoulePerMg([])).toThrow(/no analysis/));
});
