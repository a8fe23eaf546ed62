/** The shapes of the answers about work on one cup, at every door. */
import { z } from 'zod';
import { workStep } from './mix-answer.ts';

export const cupEndingAnswer = z.object({
  reason: z.string(),
  /** What may be used again after washing. */
  reuse: z.array(z.enum(['cup', 'lid'])),
  steps: z.array(workStep),
});

export const moistureAnswer = z.object({
  verdict: z.enum(['wet', 'good', 'dry']),
  /** Share of the medium's weight that is gone; null when it was only touched. */
  lostShare: z.number().min(0).nullable(),
  rescue: z.array(z.object({ key: z.string(), text: z.string() })),
});

export type CupEndingAnswer = z.infer<typeof cupEndingAnswer>;
export type MoistureAnswer = z.infer<typeof moistureAnswer>;
