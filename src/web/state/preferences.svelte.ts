/** This device's own choices: language, theme, degrees and the name that entries carry. */
import { type Language, preferredLanguage } from '../text/text.svelte.ts';

export interface Preferences {
  language: Language;
  theme: 'auto' | 'light' | 'dark';
  degrees: 'C' | 'F';
  by: string;
}

const key = 'flylarder preferences';
const usesFahrenheit = /-(US|BS|BZ|KY|PW|LR)$/i.test(navigator.language);

export const preferences: Preferences = $state({
  language: preferredLanguage(),
  theme: 'auto',
  degrees: usesFahrenheit ? 'F' : 'C',
  by: 'this device',
  ...remembered(),
});

export function keepPreferences(): void {
  localStorage.setItem(key, JSON.stringify(preferences));
  applyTheme();
}

export function applyTheme(): void {
  if (preferences.theme === 'auto') delete document.documentElement.dataset['theme'];
  else document.documentElement.dataset['theme'] = preferences.theme;
}

function remembered(): Partial<Preferences> {
  try {
    return JSON.parse(localStorage.getItem(key) ?? '{}') as Partial<Preferences>;
  } catch {
    return {};
  }
}

/** A temperature in the keeper's degrees, with its unit. */
export function degreesText(temperatureC: number, digits = 0): string {
  const value = preferences.degrees === 'F' ? temperatureC * 1.8 + 32 : temperatureC;
  return `${value.toFixed(digits)} °${preferences.degrees}`;
}

export function toShownDegrees(temperatureC: number): number {
  return preferences.degrees === 'F' ? Math.round((temperatureC * 1.8 + 32) * 10) / 10 : temperatureC;
}

export function fromShownDegrees(shown: number): number {
  return preferences.degrees === 'F' ? Math.round(((shown - 32) / 1.8) * 100) / 100 : shown;
}
