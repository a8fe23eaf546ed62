import { describe, expect, it } from 'vitest';
import { backupCups, refreshAdvice } from './line-advice.ts';
import { quarantine } from './quarantine.ts';

describe('what a line needs', () => {
  it('is fine, wants founders, or wants new flies', () => {
    expect(refreshAdvice({ loss: 0.05, effectiveSize: 60 }).verdict).toBe('fine');
    expect(refreshAdvice({ loss: 0.05, effectiveSize: 20 }).verdict).toBe('more founders');
    expect(refreshAdvice({ loss: 0.25, effectiveSize: 60 }).verdict).toBe('refresh');
  });
  it('says in how many generations: ln(0.8/0.95) / ln(1 - 1/40) = 6.8 at 20', () =>
    expect(refreshAdvice({ loss: 0.05, effectiveSize: 20 }).why.values[2]).toBe(6));
  it('backup cups by hand: 0.1^2 = 0.01, with a shared 0.004 it takes three', () => {
    expect(backupCups(0.1, 0, 0.01).cups).toBe(2);
    expect(backupCups(0.1, 0.004, 0.01).cups).toBe(3);
    expect(backupCups(0.1, 0.02, 0.01)).toMatchObject({ cups: null });
    expect(() => backupCups(1, 0, 0.1)).toThrow(/own 1/);
  });
  it('quarantine by whole generations', () => {
    const { until, steps } = quarantine(100, 14, 3);
    expect(until).toBe(142);
    expect(steps.map((step) => step.onDay)).toEqual([100, 114, 128, 142]);
    expect(() => quarantine(100, 14, 0)).toThrow(/generations 0/);
  });
});
