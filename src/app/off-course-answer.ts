/** The shape of a cup that strays, at every door. */
import { z } from 'zod';

const factor = z.object({ p05: z.number(), p50: z.number(), p95: z.number() });

export const offCourseAnswer = z.object({
  /** What was seen and what was likely. */
  what: z.string(),
  /** What it does, a sentence each: days late, warmth that would explain it, flies lost. */
  effects: z.array(z.string()),
  chance: z.number(),
  direction: z.enum(['late', 'early', 'few', 'many']),
  /** Likely causes, likeliest first; `noted`: the log speaks for it. */
  causes: z.array(z.object({ cause: z.string(), check: z.string(), noted: z.boolean() })),
  /** Flies more (below 0: fewer) than an ordinary cup gives in the coming 14 days. */
  suppliedFliesIn14Days: z.number(),
  suppliedFlies: factor,
  daysLate: factor,
  asIfWarmerByC: z.number().nullable(),
});
