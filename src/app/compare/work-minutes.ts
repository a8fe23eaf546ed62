/** About how long fly work takes: common practice, no source; good for comparing plans, not for a clock. */

/** Filling a cup and putting founders in; and at each session mixing, washing and tidying. */
const minutes = { perCup: 6, perSession: 35 };

export function workMinutes(cups: number, sessions: number): number {
  return minutes.perCup * cups + minutes.perSession * sessions;
}
