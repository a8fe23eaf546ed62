import { describe, expect, it } from 'vitest';
import { forecast, plan } from '../../app/index.ts';
import { day } from '../../foundation/index.ts';
import { fold } from '../../logbook/index.ts';
import { forecastText } from './forecast-text.ts';
import { labelBook } from './label-book.ts';
import { planText } from './plan-text.ts';

describe('a household of which nothing is known', () => {
  const facts = fold([]);
  const question = { on: day('2026-11-25'), seed: 1, scenarios: 10 };

  it.each([
    ['plan', () => planText(plan(facts, question), labelBook(facts))],
    ['forecast', () => forecastText(forecast(facts, question), labelBook(facts), false)],
  ])('is not told that it is safe: %s', (_, text) => {
    const told = text().join(' ');
    expect(told).toContain('flylarder record group');
    expect(told).not.toMatch(/safe|sure|%/);
  });
});
