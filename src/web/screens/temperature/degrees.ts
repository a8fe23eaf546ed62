/** Degrees as the keeper reads them: in their own unit, written the way of their language. */
import { preferences, toShownDegrees } from '../../state/preferences.svelte.ts';
import { locale } from '../../text/text.svelte.ts';

/** `21.3 °C`, never cut in two at a line's end. */
export function degrees(celsius: number, digits = 1): string {
  return `${written(toShownDegrees(celsius), digits)}\u00a0°${preferences.degrees}`;
}

/** A number that the keeper set, with no more digits than it has. */
export function setDegrees(celsius: number): string {
  const shown = toShownDegrees(celsius).toLocaleString(locale(), { maximumFractionDigits: 1 });
  return `${shown}\u00a0°${preferences.degrees}`;
}

/** The number alone, for a table whose head has the unit. */
export function degreesNumber(celsius: number): string {
  return written(toShownDegrees(celsius), 1);
}

/** A difference, `1.5 °C`: 1.8 times as many degrees Fahrenheit. */
export function degreesApart(celsius: number): string {
  return `${written(celsius * perDegree(), 1)}\u00a0°${preferences.degrees}`;
}

export function perDegree(): number {
  return preferences.degrees === 'F' ? 1.8 : 1;
}

/** Round degrees of the keeper's unit for the side of a picture. */
export function degreeTicks(lowestC: number, highestC: number): { celsius: number; text: string }[] {
  const [low, high] = [toShownDegrees(lowestC), toShownDegrees(highestC)];
  const step = [1, 2, 5, 10, 20].find((each) => (high - low) / each <= 5) ?? 50;
  const first = Math.ceil(low / step) * step;
  const shown = Array.from({ length: Math.floor((high - first) / step) + 1 }, (_, i) => first + i * step);
  return shown.map((value) => ({
    celsius: preferences.degrees === 'F' ? (value - 32) / 1.8 : value,
    text: `${value}°`,
  }));
}

function written(value: number, digits: number): string {
  return value.toLocaleString(locale(), { minimumFractionDigits: digits, maximumFractionDigits: digits });
}
