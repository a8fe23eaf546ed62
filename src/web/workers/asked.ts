/** What the questions to the models have in common. */
import type { Language } from '../text/text.svelte.ts';

/** What every reckoning is asked with. */
export interface Asked {
  on: string;
  seed: number;
  scenarios?: number;
  weeks?: number;
  language?: Language;
}
