/** The shape of what changed since an earlier plan, at every door. */
import { z } from 'zod';
import { isoDay } from '../answers.ts';

export const planChangesAnswer = z.object({
  on: isoDay,
  /** The day of the earlier plan, made from the log as it stood that evening. */
  since: isoDay,
  /** Firm jobs on days that both plans speak of, where they differ. */
  jobs: z.array(
    z.object({
      change: z.enum(['new', 'dropped', 'more', 'fewer', 'earlier', 'later']),
      kind: z.enum(['start', 'buy', 'receive']),
      strain: z.string(),
      /** Of bought cups. */
      boughtStage: z.enum(['producing', 'young']).optional(),
      date: isoDay,
      cups: z.number(),
      /** What it was before; null for a new job. */
      before: z.object({ date: isoDay, cups: z.number() }).nullable(),
      text: z.string(),
    }),
  ),
  /** What the log has taught or told since, in plain sentences; empty when nothing moved. */
  reasons: z.array(z.string()),
});

export type PlanChangesAnswer = z.infer<typeof planChangesAnswer>;
