/** How each language puts sentences into words; English is what the rooms say. */
import type { Words } from '../../foundation/index.ts';
import type { Language } from '../../paper/index.ts';
import { dayWords } from './day-words.ts';
import { de } from './de.ts';

const english: Words = { locale: 'en-GB', of: (text) => text, day: (day) => dayWords(day) };
const german: Words = { locale: 'de-DE', of: (text) => de[text] ?? text, day: (day) => dayWords(day, 'de') };

export function wordsOf(language: Language = 'en'): Words {
  return language === 'de' ? german : english;
}
