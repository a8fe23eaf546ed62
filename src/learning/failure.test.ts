import { describe, expect, it } from 'vitest';
import { bareCup } from '../../tests/simulation/learning-cup.ts';
import { randomStream } from '../foundation/index.ts';
import { drawFailure, failurePosterior, failureSummary } from './failure.ts';
import { ordinaryPrior } from './priors.ts';

const prior = { ...ordinaryPrior, failure: { a: 2, b: 24 } };

const failed = (session: number) => bareCup({ ageDays: 12, session, ended: { ageDays: 12, failed: true } });
const spent = (session: number) =>
  bareCup({ ageDays: 35, session, ended: { ageDays: 35, failed: false, spent: true } });

describe('the chance that a cup fails', () => {
  it('is the Beta posterior when every cup has run its course', () => {
    const cups = [failed(1), failed(2), ...Array.from({ length: 18 }, (_, i) => spent(3 + i))];
    const { cup } = failureSummary(failurePosterior(prior, cups));
    // Beta(2 + 2, 24 + 18) from a prior of Beta(2, 24): mean 4 / 46; R 4.2.2 qbeta(c(.05, .95), 4, 42): 0.0309343, 0.1633884.
    expect(cup.mean).toBeCloseTo(4 / 46, 4);
    expect(cup.p05).toBeCloseTo(0.0309343, 4);
    expect(cup.p95).toBeCloseTo(0.1633884, 4);
  });

  it('counts a young cup for the part of its life behind it only', () => {
    const meanWith = (ageDays: number) =>
      failureSummary(
        failurePosterior(
          prior,
          Array.from({ length: 20 }, (_, i) => bareCup({ ageDays, session: i })),
        ),
      ).cup.mean;
    expect(meanWith(0)).toBeCloseTo(2 / 26, 4);
    expect(meanWith(10)).toBeLessThan(meanWith(1));
    expect(meanWith(35)).toBeCloseTo(2 / 46, 4);
  });

  it('tells a session that lost all its cups from single failures', () => {
    const alone = failureSummary(failurePosterior(prior, [failed(1), failed(2), failed(3), spent(4), spent(5)]));
    const together = failureSummary(failurePosterior(prior, [failed(1), failed(1), failed(1), spent(4), spent(5)]));
    expect(together.session.mean).toBeGreaterThan(1.5 * alone.session.mean);
    expect(together.cup.mean).toBeLessThan(alone.cup.mean);
  });

  it('draws both chances with the mean of the posterior', () => {
    const posterior = failurePosterior(prior, [failed(1), failed(1), spent(2)]);
    const random = randomStream(1, 'failure');
    const draws = Array.from({ length: 20_000 }, () => drawFailure(posterior, random));
    const { cup, session } = failureSummary(posterior);
    const mean = (of: (d: (typeof draws)[number]) => number) => draws.reduce((a, d) => a + of(d), 0) / draws.length;
    // Four standard errors of a mean of 20,000 draws (sd .06 and .015).
    expect(Math.abs(mean((d) => d.cup) - cup.mean)).toBeLessThan(0.0017);
    expect(Math.abs(mean((d) => d.session) - session.mean)).toBeLessThan(0.0006);
  });
});
