/** The shape of the answer to: how near the best is the plan, and where do its cups go? */
import { z } from 'zod';
import { isoDay } from '../answers.ts';

const count = z.number().min(0);

export const gapSteps = ['parts', 'founders', 'rules', 'wholeCups', 'search', 'uncertainty'] as const;

export const planGapAnswer = z.object({
  on: isoDay,
  seed: z.int(),
  scenarios: z.int(),
  weeks: z.int(),
  /**
   * Cups of the plan of which at least half of the flies come within these weeks, mean over the worlds; a bought
   * one counts as the started ones that its price would be. All cups below are counted so.
   */
  countedCups: z.object({ mean: count, standardError: count }),
  /** No policy can do with fewer, even if it knew the household's yield and pace beforehand; mean over worlds. */
  foresightCups: z.object({ mean: count, standardError: count }),
  /** The foresight bound over the plan: 1 is a plan that nothing could better. */
  tightness: z.number().min(0),
  /**
   * Were nothing uncertain, the fewest cups under each rule and those before it, and what it adds: parts of cups on
   * any day, founders, the keeper's days and limits, whole cups; then the plan's own rule, then not knowing.
   */
  steps: z.array(z.object({ step: z.enum(gapSteps), cups: count, adds: z.number() })),
  /** Fewest whole cups that the solver found; equal to the step's bound where that is proved to be the best. */
  wholeCupsFound: count.nullable(),
  /** The same in plain sentences. */
  sentences: z.array(z.string()),
});

export type PlanGapAnswer = z.infer<typeof planGapAnswer>;
export type GapStep = PlanGapAnswer['steps'][number];
