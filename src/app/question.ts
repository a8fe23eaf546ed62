/** What every forecast, plan and day's list is asked with; the same question gets the same answer. */
import type { Day } from '../foundation/index.ts';
import type { Telling } from './words/words.ts';

export interface Question extends Telling {
  /** The day that counts as today. */
  on: Day;
  seed: number;
  /** Worlds to simulate; each use case has its default. */
  scenarios?: number;
  /** Weeks ahead; each use case has its default. */
  weeks?: number;
}
