/** What the questions to the models have in common. */

/** What every reckoning is asked with. */
export interface Asked {
  on: string;
  seed: number;
  scenarios?: number;
  weeks?: number;
  language?: Language;
}
