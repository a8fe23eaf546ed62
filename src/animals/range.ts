/** An amount that is not known to a point: its low end, its middle and its high end. */
export interface Range {
  low: number;
  middle: number;
  high: number;
}

/** The range from `low` to `high`; its middle is the geometric mean (the mean when `low` is 0). */
export function rangeOf(low: number, high: number): Range {
  if (!(low >= 0 && high >= low && Number.isFinite(high)))
    throw new RangeError(`rangeOf: ${low} to ${high} is not a range from 0 up`);
  return { low, middle: low > 0 ? Math.sqrt(low * high) : (low + high) / 2, high };
}

/** Each end times each: both are taken as certain to lie within, not as independent. */
export function times(a: Range, b: Range): Range {
  return { low: a.low * b.low, middle: a.middle * b.middle, high: a.high * b.high };
}

/** Low by high and high by low. Throws RangeError when `b` reaches 0. */
export function dividedBy(a: Range, b: Range): Range {
  if (!(b.low > 0)) throw new RangeError(`dividedBy: the divisor begins at ${b.low}`);
  return { low: a.low / b.high, middle: a.middle / b.middle, high: a.high / b.low };
}

export function plus(a: Range, b: Range): Range {
  return { low: a.low + b.low, middle: a.middle + b.middle, high: a.high + b.high };
}
