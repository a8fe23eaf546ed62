import { describe, expect, it } from 'vitest';
import { type WingEffect, wingCheck } from './wing-check.ts';

describe('long wings: warmth, food or a stranger', () => {
  const effects: WingEffect[] = [
    { symbol: 'vg', unit: 'C', low: null, high: 29, wingedLookingShare: 0, effect: 'short', source: 's' },
    { symbol: 'vg', unit: 'C', low: 29, high: 31, wingedLookingShare: null, effect: 'longer', source: 's' },
    { symbol: 'vg', unit: '% w/v', low: 0.05, high: 0.4, wingedLookingShare: null, effect: 'larger', source: 's' },
  ];
  const check = (symbol: string, rearedC: number, methylparabenPercent: number | null = null) =>
    wingCheck({ symbol, rearedC, methylparabenPercent, onDay: 100, coolGenerationDays: 11.5, effects });
  it('warm: cool and look again a generation later', () => {
    expect(check('vg', 30)).toMatchObject({ verdict: 'condition explains it', lookAgainOn: 112, expectedShare: null });
  });
  it('cool: a stranger', () =>
    expect(check('vg', 24)).toMatchObject({ verdict: 'not explained', expectedShare: 0, lookAgainOn: null }));
  it('the mould inhibitor counts too', () => expect(check('vg', 24, 0.15).verdict).toBe('condition explains it'));
  it('does not pretend for other mutations', () => expect(check('u1', 30).verdict).toBe('not known for this mutation'));
});
