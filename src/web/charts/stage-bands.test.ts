import { describe, expect, it } from 'vitest';
import { lifecycle } from '../../app/index.ts';
import { stageBands } from './stage-bands.ts';

function lifeOf(more: object) {
  const life = lifecycle({ strain: 'melanogaster', temperatureC: 24, ...more });
  if (!life.ok) throw new Error(life.problems[0]?.found);
  return life.value;
}

describe('bands of a cup', () => {
  const life = lifeOf({ harvestEveryDays: 3 });
  const alone = lifeOf({ harvestShare: 0 });

  it('stand under each other in the order of life, each within its row', () => {
    const { bands, height } = stageBands(life, alone, 30, 300);
    expect(bands.map(({ name }) => name)).toEqual(['eggs', 'larvae', 'pupae', 'flies']);
    for (const [i, band] of bands.entries()) {
      expect(band.base - band.height).toBeGreaterThanOrEqual(bands[i - 1]?.base ?? 0);
      expect(band.most).toBeGreaterThan(0);
    }
    expect(height).toBe(bands.at(-1)?.base);
  });

  it('marks a harvest every third day, and none after the last day shown', () => {
    const { harvests, x } = stageBands(life, alone, 30, 300);
    const apart = harvests.slice(1).map((age, i) => age - (harvests[i] ?? 0));
    expect(new Set(apart)).toEqual(new Set([3]));
    expect(Math.max(...harvests.map(x))).toBeLessThanOrEqual(300);
  });

  it('gives the flies of a cup left alone the same scale', () => {
    const { bands, unharvested } = stageBands(life, alone, 30, 300);
    expect(unharvested).not.toBeNull();
    expect(bands.at(-1)?.most).toBeLessThan(Math.max(...alone.onHandByDay));
    expect(bands.at(-1)?.highest).toBe(Math.max(...alone.onHandByDay.slice(0, 31)));
    expect(stageBands(life, null, 30, 300).unharvested).toBeNull();
  });
});
