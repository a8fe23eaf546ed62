/** Texts that come filled in already, put into another language by the patterns that they were made from. */

/**
 * The text in the other language, or null where no pattern fits. The pattern with the most letters of its own
 * wins; what stands in its places is looked up too, and stays as it is where nothing fits.
 * @example recognised('a day not before M1', { 'a day not before {0}': 'ein Tag nicht vor {0}' }) // => 'ein Tag nicht vor M1'
 */
export function recognised(text: string, patterns: Readonly<Record<string, string>>): string | null {
  const exact = Object.hasOwn(patterns, text) ? patterns[text] : undefined;
  if (exact !== undefined) return exact;
  let best: { own: number; words: string } | null = null;
  for (const [pattern, other] of Object.entries(patterns)) {
    const own = pattern.replaceAll(/\{\d\}/g, '').length;
    if (own === pattern.length || own <= (best?.own ?? 0)) continue;
    const values = valuesIn(text, pattern);
    if (values) best = { own, words: filled(other, values, patterns) };
  }
  return best?.words ?? null;
}

function valuesIn(text: string, pattern: string): string[] | null {
  const source = pattern
    .split(/\{\d\}/)
    .map((part) => part.replaceAll(/[.*+?^${}()|[\]\\]/g, String.raw`\$&`))
    .join('(.+?)');
  return new RegExp(`^${source}$`, 's').exec(text)?.slice(1) ?? null;
}

function filled(words: string, values: readonly string[], patterns: Readonly<Record<string, string>>): string {
  return words.replaceAll(/\{(\d)\}/g, (_, place: string) => {
    const value = values[Number(place)] ?? '';
    return Object.hasOwn(patterns, value) ? (patterns[value] ?? value) : value;
  });
}
