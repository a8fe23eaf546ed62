/** How each language puts sentences into words; English is what the rooms say. */
import type { DegreeUnit, Words } from '../../foundation/index.ts';
import type { Language } from '../../paper/index.ts';
import { dayWords } from './day-words.ts';
import { de } from './de.ts';

/** In what an answer is told: English and degrees Celsius where nothing is asked. */
export interface Telling {
  language?: Language;
  degrees?: DegreeUnit;
}

const spoken: Record<Language, Omit<Words, 'degrees'>> = {
  en: { locale: 'en-GB', of: (text) => text, day: (day) => dayWords(day) },
  de: { locale: 'de-DE', of: (text) => de[text] ?? text, day: (day) => dayWords(day, 'de') },
};

export function wordsOf({ language = 'en', degrees = 'C' }: Telling = {}): Words {
  return { ...spoken[language], degrees };
}
