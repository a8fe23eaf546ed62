/** A quantity that never falls, tabulated at 0, 1, 2 ..., straight between: read forwards and backwards. */

/** The value at `x`; that of the first entry below 0 and of the last past the end. */
export function risingAt(table: ArrayLike<number>, x: number): number {
  const last = table.length - 1;
  if (last < 0) throw new RangeError('risingAt: the table is empty');
  if (x <= 0) return table[0] as number;
  if (x >= last) return table[last] as number;
  const at = Math.floor(x);
  const low = table[at] as number;
  return low + (x - at) * ((table[at + 1] as number) - low);
}

/** The least `x` at which the table reaches `value`; its last index where it never does. */
export function risingReaches(table: ArrayLike<number>, value: number): number {
  let low = 0;
  let high = table.length - 1;
  if (high < 0) throw new RangeError('risingReaches: the table is empty');
  if ((table[0] as number) >= value) return 0;
  if ((table[high] as number) < value) return high;
  while (high - low > 1) {
    const middle = (low + high) >> 1;
    if ((table[middle] as number) >= value) high = middle;
    else low = middle;
  }
  const before = table[low] as number;
  return low + (value - before) / ((table[high] as number) - before);
}
