/** The shape of what the log has taught, at every door. */
import { z } from 'zod';
import { isoDay } from './answers.ts';
import { offCourseAnswer } from './off-course-answer.ts';

const factor = z.object({ p05: z.number(), p50: z.number(), p95: z.number() });

export const doubtfulNote = z.object({
  /** The entry to look at; null where the note was not written as one. */
  entryId: z.string().nullable(),
  on: isoDay,
  ageDays: z.number(),
  found: z.string(),
  expected: z.string(),
  /** 1 = cannot be, and is left out; less = counts for little. */
  chanceWrong: z.number(),
});

export const lessonAnswer = z.object({
  topic: z.string(),
  text: z.string(),
  why: z.string(),
  value: z.number(),
  low: z.number(),
  high: z.number(),
  cups: z.int(),
  comparison: z
    .object({ first: z.string(), second: z.string(), chanceMore: z.number(), cupsUntilClear: z.int().nullable() })
    .optional(),
});

export const learnedStrain = z.object({
  strain: z.string(),
  /** Cups that the log remembers. */
  cups: z.int(),
  /** Factors against the books: 0.9 of pace is a tenth slower. */
  pace: factor,
  yields: factor,
  /** Chance that a cup fails before its time. */
  failure: z.object({ mean: z.number(), p05: z.number(), p95: z.number() }),
  /** Whether the log can be read with this model, and what speaks against it. */
  fit: z.object({
    notes: z.int(),
    doubted: z.int(),
    fits: z.boolean(),
    misfits: z.array(z.object({ what: z.string(), chance: z.number(), text: z.string() })),
  }),
  /** One sentence with its figures each, and what it rests on. */
  lessons: z.array(lessonAnswer),
  /** Living cups outside their band, and cups with notes that contradict the rest. */
  strays: z.array(
    z.object({
      id: z.string(),
      label: z.string(),
      offCourse: offCourseAnswer.nullable(),
      doubtful: z.array(doubtfulNote),
    }),
  ),
});
export const learnedAnswer = z.array(learnedStrain);

export type Learned = z.infer<typeof learnedStrain>;
