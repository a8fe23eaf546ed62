/**
 * Sentences with their figures, before they are put into a language. A room says what it found in English
 * where it finds it; a door asks for the sentence in the language of whoever asked.
 */
import type { Day } from './day.ts';

/** A sentence: its English text with `{0}`, `{1}` where its values stand. Plain data. */
export interface Said {
  readonly said: string;
  readonly values: readonly SaidValue[];
}

export type SaidValue =
  | string
  | number
  | Said
  | { readonly day: Day }
  | SaidDegrees
  | { readonly degreesApartC: number }
  | { readonly list: readonly SaidValue[]; readonly by?: string };

/** A temperature, told in the reader's degrees with at most one decimal; `whole` rounds, `bare` leaves the unit out. */
export interface SaidDegrees {
  readonly degreesC: number;
  readonly whole?: boolean;
  readonly bare?: boolean;
}

export const degreeUnits = ['C', 'F'] as const;
export type DegreeUnit = (typeof degreeUnits)[number];

/** What a language needs to put a sentence into words. */
export interface Words {
  /** BCP 47, for numbers. */
  locale: string;
  /** The language's form of an English text; the text itself where the language has none. */
  of(text: string): string;
  day(day: Day): string;
  /** The degrees its reader knows. */
  degrees: DegreeUnit;
}

/**
 * The tag that sentences are written with. Numbers are written out with at most two
 * decimals, small ones with two digits: round before.
 * @example said`${label} gives ${5} flies` // => { said: '{0} gives {1} flies', values: [label, 5] }
 */
export function said(texts: TemplateStringsArray, ...values: SaidValue[]): Said {
  return { said: texts.reduce((whole, text, i) => `${whole}{${i - 1}}${text}`), values };
}

/** Sentences one after the other. */
export function saidTogether(...sentences: readonly Said[]): Said {
  return { said: sentences.map((_, i) => `{${i}}`).join(' '), values: sentences };
}

export function isSaid(value: unknown): value is Said {
  return typeof value === 'object' && value !== null && 'said' in value && 'values' in value;
}

/** The sentence in a language. */
export function sentence({ said: text, values }: Said, words: Words): string {
  return words.of(text).replace(/\{(\d+)\}/g, (whole, i: string) => {
    const value = values[Number(i)];
    return value === undefined ? whole : valueText(value, words);
  });
}

/** Making a format takes far longer than writing with it, and an answer of thousands of cups has many numbers. */
const formats = new Map<string, Record<'usual' | 'small', Intl.NumberFormat>>();

function numberText(value: number, locale: string): string {
  const known = formats.get(locale) ?? formatsOf(locale);
  formats.set(locale, known);
  return known[Math.abs(value) < 0.1 ? 'small' : 'usual'].format(value);
}

function formatsOf(locale: string) {
  return {
    usual: new Intl.NumberFormat(locale, { maximumFractionDigits: 2 }),
    small: new Intl.NumberFormat(locale, { maximumSignificantDigits: 2 }),
  };
}

function valueText(value: SaidValue, words: Words): string {
  if (typeof value === 'string') return value;
  if (typeof value === 'number') return numberText(value, words.locale);
  if ('day' in value) return words.day(value.day);
  if ('degreesC' in value) return degreesText(value, words);
  if ('degreesApartC' in value) return apartText(value.degreesApartC, words);
  if ('list' in value) return value.list.map((each) => valueText(each, words)).join(value.by ?? ', ');
  return sentence(value, words);
}

function degreesText({ degreesC, whole = false, bare = false }: SaidDegrees, words: Words): string {
  const degrees = words.degrees === 'F' ? degreesC * 1.8 + 32 : degreesC;
  const written = numberText(whole ? Math.round(degrees) : tenth(degrees), words.locale);
  return bare ? written : `${written} °${words.degrees}`;
}

/** A difference: one degree Celsius is 1.8 degrees Fahrenheit. */
function apartText(celsius: number, words: Words): string {
  return `${numberText(tenth(words.degrees === 'F' ? celsius * 1.8 : celsius), words.locale)} °${words.degrees}`;
}

function tenth(value: number): number {
  return Math.round(value * 10) / 10;
}

/** An answer in which every sentence has become text. */
export type Told<T> = T extends Said
  ? string
  : T extends string | number
    ? T
    : T extends readonly (infer E)[]
      ? Told<E>[]
      : T extends object
        ? { [K in keyof T]: Told<T[K]> }
        : T;

/** Puts every sentence of an answer, plain data, into a language. */
export function told<T>(answer: T, words: Words): Told<T> {
  return (isSaid(answer) ? sentence(answer, words) : toldParts(answer, words)) as Told<T>;
}

function toldParts(answer: unknown, words: Words): unknown {
  if (Array.isArray(answer)) return answer.map((each) => told<unknown>(each, words));
  if (typeof answer !== 'object' || answer === null) return answer;
  return Object.fromEntries(Object.entries(answer).map(([key, value]) => [key, told<unknown>(value, words)]));
}
