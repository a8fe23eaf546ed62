/** The shape of "what was forecast, and what came", at every door. */
import { z } from 'zod';
import { isoDay } from '../answers.ts';

const band = z.object({ p05: z.number(), p50: z.number(), p95: z.number() });
const share = z.number().min(0).max(1);

export const hindcastNote = z.object({
  /** The day on which the forecast was made, with what the logbook said by then. */
  madeOn: isoDay,
  seenOn: isoDay,
  strain: z.string(),
  culture: z.string(),
  label: z.string(),
  /** Flies counted or emptied out, a word for them, or the first sight of a stage (in days of age). */
  kind: z.enum(['count', 'emptied', 'word', 'larvae', 'pupae', 'adults']),
  /** What was noted: flies, or the last age at which a stage was not there and the first at which it was. */
  cameLow: z.number().nullable(),
  cameHigh: z.number().nullable(),
  forecast: band,
  books: band,
  /** Place of the note in its forecast, 0 to 1. */
  rank: share,
  inside50: z.boolean(),
  inside90: z.boolean(),
  /** Counts only: flies; lower is better. */
  crps: z.number().nullable(),
  booksCrps: z.number().nullable(),
});

const scores = z.object({
  notes: z.int(),
  counts: z.int(),
  inside50: share.nullable(),
  inside90: share.nullable(),
  crps: z.number().nullable(),
  booksCrps: z.number().nullable(),
  logScore: z.number().nullable(),
  booksLogScore: z.number().nullable(),
});

export const hindcastAnswer = z.object({
  on: isoDay,
  seed: z.int(),
  weeks: z.int(),
  /** Notes up to so many days after the forecast are held against it. */
  leadDays: z.int(),
  /** `recorded`: what had been written by then; `happened`: what had happened by then, of a log written later. */
  knownBy: z.enum(['recorded', 'happened']),
  /** What is compared and why. */
  why: z.string(),
  notes: z.array(hindcastNote),
  byWeek: z.array(scores.extend({ madeOn: isoDay })),
  total: scores,
  /** Harvests that left flies behind say only that there were at least so many: how many said more than the band. */
  harvests: z.object({ taken: z.int(), beyondTheBand: z.int() }),
});

export type HindcastAnswer = z.infer<typeof hindcastAnswer>;
export type HindcastNote = HindcastAnswer['notes'][number];
