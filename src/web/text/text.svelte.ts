/**
 * The language in use and `t`, which every screen takes its words from. English is built in; German is
 * fetched when it is chosen.
 */
import { type MessageKey, en } from './en.ts';
import { type Message, type MessageParams, messageText } from './message.ts';

export const languages = ['en', 'de'] as const;
export type Language = (typeof languages)[number];

const inUse = $state<{ language: Language; catalogue: Record<MessageKey, Message> }>({ language: 'en', catalogue: en });

export function t(key: MessageKey, params: MessageParams = {}): string {
  return messageText(inUse.catalogue[key], params, locale());
}

/** The text of a key that is put together from data, such as a stage's name; null when there is none. */
export function tMaybe(key: string, params: MessageParams = {}): string | null {
  return key in inUse.catalogue ? t(key as MessageKey, params) : null;
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
  const catalogue = language === 'de' ? (await import('./de.ts')).de : en;
  inUse.language = language;
  inUse.catalogue = catalogue;
  document.documentElement.lang = language;
}

export function preferredLanguage(): Language {
  const tag = navigator.languages[0] ?? 'en';
  return languages.find((each) => tag.toLowerCase().startsWith(each)) ?? 'en';
}
