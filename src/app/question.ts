/** What every forecast, plan and day's list is asked with; the same question gets the same answer. */
import type { Day } from '../foundation/index.ts';
import type { Language } from '../paper/index.ts';

export interface Question {
  /** The day that counts as today. */
  on: Day;
  seed: number;
  /** Worlds to simulate; each use case has its default. */
  scenarios?: number;
  /** Weeks ahead; each use case has its default. */
  weeks?: number;
  /** The language of its sentences; English where none is given. */
  language?: Language;
}
