/** How long after emergence females are safely virgin: longer in the cool. */

/** Known windows: the shorter, safe end of each source's range. */
export interface VirginWindowPoint {
  temperatureC: number;
  hoursLow: number;
}

/**
 * Hours within which newly emerged females have not mated, at 10 to 29 C: the logarithm runs straight
 * between the points given, and on beyond the warmest; below the coldest its value holds, which is the
 * safe side. Throws RangeError outside 10 to 29 C or with fewer than two points.
 * @example 8 h at 25 C and 16 h at 18 C give 11.3 h at 21.5 C
 */
export function virginWindowHours(points: readonly VirginWindowPoint[], temperatureC: number): number {
  if (!(temperatureC >= 10 && temperatureC <= 29))
    throw new RangeError(`virginWindowHours: temperatureC ${temperatureC} is not from 10 to 29`);
  const sorted = [...points].sort((a, b) => a.temperatureC - b.temperatureC);
  const [coldest] = sorted;
  if (!coldest || sorted.length < 2) throw new RangeError('virginWindowHours: fewer than two points');
  if (temperatureC <= coldest.temperatureC) return coldest.hoursLow;
  const above = sorted.findIndex((point) => point.temperatureC >= temperatureC);
  const upper = above === -1 ? sorted.length - 1 : above;
  const [a, b] = [sorted[upper - 1], sorted[upper]] as [VirginWindowPoint, VirginWindowPoint];
  const share = (temperatureC - a.temperatureC) / (b.temperatureC - a.temperatureC);
  return a.hoursLow * (b.hoursLow / a.hoursLow) ** share;
}
