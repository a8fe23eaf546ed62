/** The shapes of plans set side by side, and of the price of each rule, at every door. */
import { z } from 'zod';
import { isoDay } from '../answers.ts';
import { change } from './change.ts';

const count = z.number().min(0);
const share = z.number().min(0).max(1);

/** A difference of two plans in the same simulated worlds: mean over worlds, with its standard error. */
const difference = z.object({ mean: z.number(), standardError: count });

export const planColumn = z.object({
  /** Null for the household as it is. */
  change: change.nullable(),
  /** What is different, and what comes of it: one sentence each. */
  title: z.string(),
  verdict: z.string(),
  culturesPlanned: count,
  boughtCultures: count,
  sessionsPlanned: count,
  /** In the household's own weights of cup, session and bought cup. */
  cost: count,
  /** Starting, mixing and washing: common practice, no source. */
  workMinutes: count,
  worstDay: isoDay.nullable(),
  worstDayServiceLevel: share,
  /** Whether the worst day is as safe as was asked, within two standard errors. */
  holds: z.boolean(),
  expectedShortfallDays: count,
  lowerBoundCultures: count,
  /** Against the household as it is; null for that one. */
  against: z.object({ cups: difference, sessions: difference, cost: difference }).nullable(),
});

export const compareAnswer = z.object({
  on: isoDay,
  seed: z.int(),
  scenarios: z.int(),
  weeks: z.int(),
  currency: z.string(),
  columns: z.array(planColumn),
});

export const rulePrice = z.object({
  rule: z.string(),
  /** What the rule costs, in one sentence. */
  verdict: z.string(),
  /** Cups and cost saved in a quarter (13 weeks) without the rule. */
  cupsPerQuarter: difference,
  costPerQuarter: difference,
  /** False when the difference is within two standard errors of nothing. */
  clear: z.boolean(),
});

export const rulePricesAnswer = z.object({
  on: isoDay,
  seed: z.int(),
  weeks: z.int(),
  currency: z.string(),
  rules: z.array(rulePrice),
  /** The best plan with another rhythm, beside the best; null when there is no other rhythm. */
  secondBest: planColumn.nullable(),
  best: planColumn,
});

export type PlanColumn = z.infer<typeof planColumn>;
export type CompareAnswer = z.infer<typeof compareAnswer>;
export type RulePricesAnswer = z.infer<typeof rulePricesAnswer>;
export type Difference = z.infer<typeof difference>;
