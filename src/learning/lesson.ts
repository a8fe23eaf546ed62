/** One thing that the log has taught: a sentence, its figures and what it rests on. */
import type { Said } from '../foundation/index.ts';

export type LessonTopic =
  | ComparisonTopic
  | 'pace'
  | 'yield'
  | 'spread'
  | 'failure'
  | 'session failure'
  | 'counting'
  | 'taps'
  | 'life'
  | 'generation'
  | 'founders'
  | 'fit';

export interface Lesson {
  topic: LessonTopic;
  text: Said;
  /** What it rests on. */
  why: Said;
  /** A ratio to the books or to the other level (1.08 = 8 % more), a chance, or flies per tap. */
  value: number;
  /** 5 and 95 % points. */
  low: number;
  high: number;
  /** Cups that it rests on. */
  cups: number;
  /** Comparisons only. */
  comparison?: Comparison;
}

export type ComparisonTopic = 'recipe' | 'place' | 'place pace' | 'strain';

/** The two levels, the chance that the first has more, further cups until it is clear (null: too many). */
export interface Comparison {
  first: string | Said;
  second: string | Said;
  chanceMore: number;
  cupsUntilClear: number | null;
}
