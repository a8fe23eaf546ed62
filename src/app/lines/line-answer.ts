/** The shape of what is said about a household's lines; every door gives it alike. */
import { z } from 'zod';
import { isoDay } from '../answers.ts';

const share = z.number().min(0).max(1);

const lineCup = z.object({
  culture: z.string(),
  label: z.string(),
  ended: z.boolean(),
  /** 0 for a cup whose parents nobody wrote down; `row` is its place in the drawing within the generation. */
  generation: z.int().min(0),
  row: z.int().min(0),
  effectiveFounders: z.number().min(0),
  /** Variation lost since the oldest ancestors written down; also the mean inbreeding. */
  lossShare: share,
});

export const lineWarning = z.object({
  kind: z.enum(['mixed strains', 'two species', 'winged flies', 'mites', 'mould']),
  culture: z.string(),
  label: z.string(),
  on: isoDay,
  why: z.string(),
  todo: z.array(z.string()),
  /** What the cup becomes under each thing that may be true: winged share by generation, the next first. */
  outlooks: z.array(z.object({ assumption: z.string(), wingedShare: z.array(share) })),
  steps: z.array(z.object({ date: isoDay, generation: z.int(), act: z.string(), why: z.string() })),
  /** Share that looks winged at its temperature and is still mutant, where a source gives one. */
  wingedLookingShare: share.nullable().optional(),
  /** When flies reared in the cool should be looked at, before anything is culled. */
  lookAgainOn: isoDay.nullable().optional(),
  /** Cups one contact away. */
  contacts: z.array(z.object({ culture: z.string(), label: z.string(), kinds: z.array(z.string()), since: isoDay })),
});

export const linesAnswer = z.object({
  on: isoDay,
  strains: z.array(
    z.object({
      strain: z.string(),
      mutation: z.string(),
      cups: z.array(lineCup),
      edges: z.array(z.object({ from: z.string(), to: z.string() })),
      /** Of the living cup of the latest generation; null when none lives. */
      advice: z
        .object({
          culture: z.string(),
          verdict: z.enum(['fine', 'more founders', 'refresh']),
          why: z.string(),
        })
        .nullable(),
      /** Whether one shelf, one batch of medium or one day's work could cost the whole line. */
      spread: z.object({
        livingCups: z.int(),
        places: z.int(),
        batches: z.int(),
        startingDays: z.int(),
        verdict: z.enum(['split', 'one mishap takes all']),
        why: z.string(),
      }),
      /** The two living cups least related, the best parents of a joint cup. */
      joinCups: z.array(z.string()).nullable(),
    }),
  ),
  warnings: z.array(lineWarning),
  quarantine: z.array(
    z.object({
      culture: z.string(),
      label: z.string(),
      until: isoDay,
      steps: z.array(z.object({ date: isoDay, act: z.string() })),
    }),
  ),
});

export const mixingAnswer = z.object({
  verdict: z.enum(['breeds true', 'fliers', 'depends', 'two species']),
  outlooks: z.array(z.object({ assumption: z.string(), wingedShare: z.array(share) })),
  why: z.string(),
  todo: z.array(z.string()),
});

export const cleanLineAnswer = z.object({
  /** Chance of clean after each look, in order. */
  afterLook: z.array(share),
  wingedShareBelow: share.nullable(),
});

export type LinesAnswer = z.infer<typeof linesAnswer>;
export type LineWarning = z.infer<typeof lineWarning>;
export type MixingAnswer = z.infer<typeof mixingAnswer>;
