/** How often something may be tried by one address, or by all together, before it has to wait. */

export interface AttemptLimit {
  /** Counts a try; false when there were too many within the window. */
  mayTry(who: string): boolean;
}

const mostAddresses = 10_000;

/**
 * @param most tries of one address within the window.
 * @param mostOfAll tries of all addresses together.
 * @param nowMs the clock.
 */
export function attemptLimit(most: number, mostOfAll: number, windowMs: number, nowMs: () => number): AttemptLimit {
  let beganAt = nowMs();
  let all = 0;
  const byAddress = new Map<string, number>();
  return {
    mayTry(who) {
      if (nowMs() - beganAt >= windowMs) {
        beganAt = nowMs();
        all = 0;
        byAddress.clear();
      }
      const mine = (byAddress.get(who) ?? 0) + 1;
      all++;
      if (byAddress.size < mostAddresses || byAddress.has(who)) byAddress.set(who, mine);
      return mine <= most && all <= mostOfAll;
    },
  };
}
