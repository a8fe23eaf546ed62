/** Sayings about lines as sentences of a language. */
import type { Language } from '../../../paper/index.ts';
import type { AnySaying, HouseholdSayingKey, LineTexts } from './catalogue.ts';
import { de } from './de.ts';
import { en } from './en.ts';

const texts: Record<Language, LineTexts> = { en, de };

export interface LineVoice {
  say(saying: AnySaying): string;
  sayHere(key: HouseholdSayingKey, values?: AnySaying['values']): string;
  assume(assumption: keyof LineTexts['assumptions']): string;
}

export function lineVoice(language: Language = 'en'): LineVoice {
  const { sentences, assumptions } = texts[language];
  return {
    say: ({ key, values }) => sentences[key](values),
    sayHere: (key, values = {}) => sentences[key](values),
    assume: (assumption) => assumptions[assumption],
  };
}
