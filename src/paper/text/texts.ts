/** The texts of a language. */
import type { Catalogue, Language } from './catalogue.ts';
import { de } from './de.ts';
import { en } from './en.ts';

const catalogues: Record<Language, Catalogue> = { en, de };

export function texts(language: Language): Catalogue {
  return catalogues[language];
}
