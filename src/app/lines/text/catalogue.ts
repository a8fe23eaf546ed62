/** What a language's sentences about lines consist of; a missing sentence does not compile. */
import type { Assumption, SayingKey } from '../../../strains/index.ts';

/** Sentences that only the household's own facts call for. */
export const householdSayingKeys = [
  'two-species-here',
  'winged-warmth',
  'winged-food',
  'winged-stranger',
  'winged-isolate',
  'mites-near',
  'mould-near',
  'near-throw-out',
  'near-look',
  'spread-split',
  'spread-hangs',
] as const;
export type HouseholdSayingKey = (typeof householdSayingKeys)[number];

export interface AnySaying {
  key: SayingKey | HouseholdSayingKey;
  values: Readonly<Record<string, string | number>>;
}

export type Sentence = (values: AnySaying['values']) => string;

export interface LineTexts {
  sentences: Record<SayingKey | HouseholdSayingKey, Sentence>;
  assumptions: Record<Assumption | 'one wild male', string>;
}

/** Whole per cents, but never a false 100 or 0. */
export function percentOf(share: string | number | undefined): string {
  const value = Number(share);
  const text = (100 * value).toFixed(value > 0.99 && value < 1 ? 2 : 0);
  if (value < 1 && Number(text) >= 100) return '> 99.99 %';
  return value > 0 && Number(text) === 0 ? '< 1 %' : `${text} %`;
}
