import { describe, expect, it } from 'vitest';
import { mix32, normalQuantile } from '../../foundation/index.ts';
import { normalOfWord, uniformOfWord } from './normal-table.ts';

describe('tabulated normals', () => {
  it('agree with the quantile function to 5e-4 inside 3.2 standard deviations', () => {
    for (const p of [0.001, 0.01, 0.3, 0.5, 0.77, 0.99, 0.999]) {
      expect(Math.abs(normalOfWord(Math.round(p * 2 ** 32) >>> 0) - normalQuantile(p))).toBeLessThan(
        5e-4 + (p < 0.002 || p > 0.998 ? 2e-2 : 0),
      );
    }
  });
  it('have mean 0 and variance 1 within sampling error', () => {
    const n = 200_000;
    let sum = 0;
    let squares = 0;
    for (let i = 0; i < n; i++) {
      const x = normalOfWord(mix32(9, i));
      sum += x;
      squares += x * x;
    }
    expect(Math.abs(sum / n)).toBeLessThan(5 / Math.sqrt(n));
    expect(Math.abs(squares / n - 1)).toBeLessThan(5 * Math.sqrt(2 / n) + 2e-3);
  });
  it('uniforms stay inside (0, 1)', () => {
    expect(uniformOfWord(0)).toBeGreaterThan(0);
    expect(uniformOfWord(0xffffffff)).toBeLessThan(1);
  });
});
