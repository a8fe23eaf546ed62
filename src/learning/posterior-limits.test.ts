import { describe, expect, it } from 'vitest';
import { bareCup, look, strainOf, take } from '../../tests/simulation/learning-cup.ts';
import { fliesPerTap } from './flies-per-tap.ts';
import { learn } from './learn.ts';
import { ordinaryPrior, tapPrior } from './priors.ts';
import { logLife } from './useful-life.ts';

/** Pace known, no wrong notes, no luck of sessions, no stray: what is left is normal and conjugate. */
const plain = {
  ...ordinaryPrior,
  householdPaceSd: 1e-3,
  cupPaceSd: 1e-3,
  recipePaceSd: 1e-3,
  placePaceSd: 1e-3,
  sessionYieldSd: 1e-3,
  wrongEntryShare: 0,
  discrepancySd: 1e-3,
};

/** A hundred thousand flies at once on day 15, looked at a day later, none dying: no rounding, no chance births. */
function burst(): Float32Array {
  const curve = new Float32Array(120);
  curve[15] = 100_000;
  return curve;
}

describe('limits in closed form', () => {
  it('one count of each of 20 cups: the household is the normal-normal posterior', () => {
    const counts = Array.from({ length: 20 }, (_, i) => Math.round(100_000 * Math.exp(0.3 + 0.25 * Math.sin(3 * i))));
    const cups = counts.map((count, i) =>
      bareCup({ id: `c${i}`, session: i, emergedByAge: burst(), ageDays: 16, looks: [look(16, { count })] }),
    );
    const seen = learn({ seed: 3, draws: 4000, prior: plain, strains: [strainOf(cups, 1)] }).byStrain.get(
      'melanogaster',
    );
    // Variance of one count around the household: cups' spread and count error, as learned.
    const each = (seen?.cupYieldSd ?? 0) ** 2 + (seen?.countSd ?? 0) ** 2;
    const precision = 1 / plain.householdYieldSd ** 2 + counts.length / each;
    const mean = counts.reduce((sum, c) => sum + Math.log(c / 100_000), 0) / each / precision;
    // 4,000 draws that hang together somewhat: four standard errors at an effective 800 draws.
    const sd = 1 / Math.sqrt(precision);
    expect(Math.abs((seen?.logYield.mean ?? 9) - mean)).toBeLessThan((4 * sd) / Math.sqrt(800));
    expect((seen?.logYield.sd ?? 9) / sd).toBeGreaterThan(0.85);
    expect((seen?.logYield.sd ?? 9) / sd).toBeLessThan(1.15);
  });

  it('a cup counted today is forecast from what was seen: prior and count weigh by their variances', () => {
    const cup = bareCup({ emergedByAge: burst(), ageDays: 16, looks: [look(16, { count: 200_000 })] });
    const belief = learn({ seed: 5, draws: 4000, prior: plain, strains: [strainOf([cup], 1)] });
    const logs = [...(belief.cups.get('cup')?.draws.fliesNow ?? [])].map((f) => Math.log(f / 100_000));
    const mean = logs.reduce((a, b) => a + b, 0) / logs.length;
    const prior = plain.householdYieldSd ** 2 + (belief.byStrain.get('melanogaster')?.cupYieldSd ?? 0) ** 2;
    const error = (belief.byStrain.get('melanogaster')?.countSd ?? 0) ** 2;
    // The spreads are means over their posterior, so that the closed form holds to a few per cent.
    expect(mean).toBeCloseTo((Math.log(2) * prior) / (prior + error), 1);
  });

  it('without notes the beliefs are the prior', () => {
    const belief = learn({ seed: 7, draws: 4000, prior: ordinaryPrior, strains: [strainOf([bareCup()])] });
    const strain = belief.byStrain.get('melanogaster');
    expect(strain?.informativeCups).toBe(0);
    expect(strain?.logPace.sd).toBeCloseTo(ordinaryPrior.householdPaceSd, 2);
    expect(Math.abs(strain?.logYield.mean ?? 1)).toBeLessThan((4 * ordinaryPrior.householdYieldSd) / Math.sqrt(4000));
    expect(strain?.logYield.sd).toBeCloseTo(ordinaryPrior.householdYieldSd, 1);
    expect(belief.cups.get('cup')?.offCourse).toBeNull();
  });

  it('flies per tap: the normal posterior of logs', () => {
    const cup = bareCup({ takes: [take(15, { flies: 40, taps: 2 }), take(17, { flies: 90, taps: 3 })] });
    const each = 1 / tapPrior.eachTakeLogSd ** 2;
    const before = 1 / tapPrior.logSd ** 2;
    const mean = (before * Math.log(tapPrior.medianFlies) + each * (Math.log(20) + Math.log(30))) / (before + 2 * each);
    expect(fliesPerTap(strainOf([cup])).median).toBeCloseTo(Math.exp(mean), 10);
    expect(fliesPerTap(strainOf([bareCup()]))).toMatchObject({ median: tapPrior.medianFlies, takes: 0 });
  });

  it('useful life: the normal posterior of cups that were spent, and of no others', () => {
    const ended = (ageDays: number, failed: boolean) => bareCup({ ageDays, ended: { ageDays, failed } });
    const life = logLife([ended(40, false), ended(42, false), ended(12, true), ended(5, false), bareCup()], 0.12);
    const precision = 1 / 0.15 ** 2 + 2 / 0.12 ** 2;
    expect(life.mean).toBeCloseTo((Math.log(40 / 35) + Math.log(42 / 35)) / 0.12 ** 2 / precision, 10);
    expect(life.sd).toBeCloseTo(1 / Math.sqrt(precision), 10);
  });
});
