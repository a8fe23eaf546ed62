/**
 * What this room has to say, as a key and its figures: the sentences live with the texts of each language,
 * in app/. Figures are plain: shares are 0 to 1, days whole.
 */
export const sayingKeys = [
  'mix-same-mutation',
  'mix-same-mutation-do',
  'mix-fliers',
  'mix-keep-apart',
  'mix-throw-out',
  'mix-unknown',
  'mix-find-out',
  'mix-two-species',
  'mix-sort-by-eye',
  'rescue-empty',
  'rescue-empty-why',
  'rescue-virgins',
  'rescue-virgins-why',
  'rescue-check',
  'rescue-check-why',
  'unmix-pairs',
  'unmix-pairs-why',
  'unmix-sons',
  'unmix-sons-why',
  'unmix-look',
  'unmix-look-why',
  'line-refresh',
  'line-more-founders',
  'line-fine',
  'backup-enough',
  'backup-elsewhere',
  'quarantine-apart',
  'quarantine-look',
  'quarantine-done',
  'part-by-date',
  'part-clear',
  'part-by-eye',
  'wings-unknown',
  'wings-unknown-rear',
  'wings-cool',
  'wings-look-again',
  'wings-stranger',
] as const;
export type SayingKey = (typeof sayingKeys)[number];

export interface Saying {
  key: SayingKey;
  values: Readonly<Record<string, string | number>>;
}

export function saying(key: SayingKey, values: Saying['values'] = {}): Saying {
  return { key, values };
}
