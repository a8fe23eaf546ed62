/**
 * A quantity given at a few points and joined by straight lines: the form in which most published
 * and practical values by temperature come. Flat beyond its ends.
 */
export interface Curve {
  /** Rising. */
  at: number[];
  value: number[];
}

/** The curve's value at `x`; the first or last value beyond its ends. */
export function valueAt(curve: Curve, x: number): number {
  const { at, value } = curve;
  const last = at.length - 1;
  if (x <= (at[0] as number)) return value[0] as number;
  if (x >= (at[last] as number)) return value[last] as number;
  let i = 0;
  while (x > (at[i + 1] as number)) i += 1;
  const left = at[i] as number;
  const share = (x - left) / ((at[i + 1] as number) - left);
  return (value[i] as number) * (1 - share) + (value[i + 1] as number) * share;
}

/** A curve that has the same value everywhere. */
export function constantCurve(value: number): Curve {
  return { at: [0], value: [value] };
}
