/**
 * The language in use and `t`, which every screen takes its words from. English is built in; German is
 * fetched when it is chosen.
 */
import { type MessageKey, en } from './en.ts';
import type { Problem } from '../../foundation/index.ts';
import { type Message, type MessageParams, messageText } from './message.ts';
import { recognised } from './recognised.ts';

export const languages = ['en', 'de'] as const;
export type Language = (typeof languages)[number];

interface InUse {
  language: Language;
  catalogue: Record<MessageKey, Message>;
  /** What checks say, by their English patterns. */
  problems: Record<string, string>;
}

const inUse = $state<InUse>({ language: 'en', catalogue: en, problems: {} });

export function t(key: MessageKey, params: MessageParams = {}): string {
  return messageText(inUse.catalogue[key], params, locale());
}

/** The text of a key that is put together from data, such as a stage's name; null when there is none. */
export function tMaybe(key: string, params: MessageParams = {}): string | null {
  return key in inUse.catalogue ? t(key as MessageKey, params) : null;
}

/** What a check found wrong, as a sentence. */
export function problemWords({ where, found, expected }: Problem): string {
  const place = where.split(', ').map((part) => tMaybe(`kind.${part}`) ?? checkWords(part));
  return t('part.problem', { where: place.join(', '), found: checkWords(found), expected: checkWords(expected) });
}

/** What a check says, which speaks English, in the language in use. */
export function checkWords(text: string): string {
  return recognised(text, inUse.problems) ?? text;
}

export function language(): Language {
  return inUse.language;
}

/** The full locale: the browser's own when it speaks the chosen language (so en-US dates stay en-US). */
export function locale(): string {
  const own = navigator.languages.find((tag) => tag.toLowerCase().startsWith(inUse.language));
  return own ?? inUse.language;
}

export async function useLanguage(language: Language): Promise<void> {
  const [catalogue, problems] =
    language === 'de'
      ? await Promise.all([import('./de.ts'), import('./de-problems.ts')]).then(
          ([{ de }, { deProblems }]) => [de, deProblems] as const,
        )
      : [en, {}];
  inUse.language = language;
  inUse.catalogue = catalogue;
  inUse.problems = problems;
  document.documentElement.lang = language;
}

export function preferredLanguage(): Language {
  const tag = navigator.languages[0] ?? 'en';
  return languages.find((each) => tag.toLowerCase().startsWith(each)) ?? 'en';
}
