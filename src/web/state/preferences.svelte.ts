/** This device's own choices: language, theme, measures, degrees, week and the name that entries carry. */
import type { DegreeUnit, Weekday } from '../../foundation/index.ts';
import { firstWeekdayOf } from '../days/week.ts';
import { remember, remembered } from './device-memory.ts';
import { type Language, language, locale, preferredLanguage, t } from '../text/text.svelte.ts';

export const measureSystems = ['metric', 'us', 'australian'] as const;
export type Measures = (typeof measureSystems)[number];

export interface Preferences {
  language: Language;
  theme: 'auto' | 'light' | 'dark';
  degrees: DegreeUnit;
  /** Whose cups and spoons the kitchen measures in. */
  measures: Measures;
  /** The first day of a week; `auto` is the locale's own. */
  weekStart: 'auto' | 'mon' | 'sat' | 'sun';
  /** Empty until the keeper gives a name. */
  by: string;
}

const key = 'flylarder preferences';
const usesFahrenheit = /-(US|BS|BZ|KY|PW|LR)$/i.test(navigator.language);

export const preferences: Preferences = $state({
  language: preferredLanguage(),
  theme: 'auto',
  degrees: usesFahrenheit ? 'F' : 'C',
  measures: usualMeasures(navigator.language),
  weekStart: 'auto',
  by: '',
  ...chosenBefore(),
});

/** In what the sentences of answers are told on this device. */
export function telling(): { language: Language; degrees: DegreeUnit } {
  return { language: language(), degrees: preferences.degrees };
}

/** Whom entries name as their author. */
export function signature(): string {
  return preferences.by.trim() || t('settings.by.usual');
}

export function keepPreferences(): void {
  remember(key, JSON.stringify(preferences));
  applyTheme();
}

export function applyTheme(): void {
  if (preferences.theme === 'auto') delete document.documentElement.dataset['theme'];
  else document.documentElement.dataset['theme'] = preferences.theme;
}

/** The day that weeks begin with on this device. */
export function firstWeekday(): Weekday {
  return preferences.weekStart === 'auto' ? firstWeekdayOf(navigator.language) : preferences.weekStart;
}

function usualMeasures(tag: string): Measures {
  if (/-US$/i.test(tag)) return 'us';
  return /-AU$/i.test(tag) ? 'australian' : 'metric';
}

function chosenBefore(): Partial<Preferences> {
  try {
    return JSON.parse(remembered(key) ?? '{}') as Partial<Preferences>;
  } catch {
    return {};
  }
}

/** A temperature in the keeper's degrees, with its unit. */
export function degreesText(temperatureC: number, digits = 0): string {
  const value = preferences.degrees === 'F' ? temperatureC * 1.8 + 32 : temperatureC;
  const shown = value.toLocaleString(locale(), { minimumFractionDigits: digits, maximumFractionDigits: digits });
  return `${shown}\u00a0°${preferences.degrees}`;
}

export function toShownDegrees(temperatureC: number): number {
  return preferences.degrees === 'F' ? Math.round((temperatureC * 1.8 + 32) * 10) / 10 : temperatureC;
}

export function fromShownDegrees(shown: number): number {
  return preferences.degrees === 'F' ? Math.round(((shown - 32) / 1.8) * 100) / 100 : shown;
}
