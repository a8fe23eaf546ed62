/** Degrees as a logger writes them, and as degrees Celsius. */

export const temperatureUnits = ['C', 'F', 'K'] as const;
export type TemperatureUnit = (typeof temperatureUnits)[number];

const withUnit = /^([-+]?\d*\.?\d+(?:e[-+]?\d+)?)\s*(?:°|º|deg\.?|degrees)?\s*([CFK])?$/i;

/** The number in a cell such as `22,5`, `22.5 °C` or `−3`; null when there is none. */
export function degreesIn(text: string, decimalComma: boolean): number | null {
  if (text === '') return null;
  const plain = decimalComma ? text.replace(',', '.') : text;
  const value = Number(plain);
  if (Number.isFinite(value)) return value;
  const match = withUnit.exec(plain.replace('\u2212', '-'));
  return match ? Number(match[1]) : null;
}

/** The unit written in the cell itself, or null. */
export function unitIn(text: string): TemperatureUnit | null {
  return (/\d\s*(?:°|º|deg\.?)?\s*([CFK])$/i.exec(text)?.[1]?.toUpperCase() as TemperatureUnit | undefined) ?? null;
}

export function toCelsius(value: number, unit: TemperatureUnit): number {
  if (unit === 'C') return value;
  return unit === 'F' ? ((value - 32) * 5) / 9 : value - 273.15;
}
