/** What the questions to the models have in common. */
import type { Telling } from '../../app/index.ts';

/** What every reckoning is asked with. */
export interface Asked extends Telling {
  on: string;
  seed: number;
  scenarios?: number;
  weeks?: number;
}
