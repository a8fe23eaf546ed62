/** The language of a page for pairing and signing in: what its browser asks for, English otherwise. */
import type { Context } from 'hono';
import { accepts } from 'hono/accepts';
import { de } from './de.ts';
import { en, type PageText } from './en.ts';

const texts = { en, de };
const locales = { en: 'en-GB', de: 'de-DE' };
const languages = Object.keys(texts) as (keyof typeof texts)[];

export function pageLanguage(context: Context): keyof typeof texts {
  const match = (asked: readonly { type: string; q: number }[]) =>
    [...asked].sort((a, b) => b.q - a.q).flatMap(({ type }) => languageOf(type) ?? [])[0] ?? 'en';
  const chosen = accepts(context, { header: 'Accept-Language', supports: languages, default: 'en', match });
  return languageOf(chosen) ?? 'en';
}

/** `de-AT` is German. */
function languageOf(tag: string): keyof typeof texts | undefined {
  return languages.find((each) => tag.toLowerCase().split('-')[0] === each);
}

/** The day of an instant, as that language writes it. */
export function pageDay(context: Context, instant: string | Date): string {
  const format = new Intl.DateTimeFormat(locales[pageLanguage(context)], { dateStyle: 'medium', timeZone: 'UTC' });
  return format.format(new Date(instant));
}

export function pageText(context: Context): PageText {
  return texts[pageLanguage(context)];
}
