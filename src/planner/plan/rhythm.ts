/** The weekdays on which sessions are mostly held. */
import type { PreparedHousehold } from '../forecast/prepared-household.ts';

export interface Rhythm {
  /** 1 on work days of the rhythm. */
  sessionDays: Uint8Array;
  /** First of them after day t; the number of days when there is none. */
  nextSession: Int32Array;
}

/** @param days modulo 7, 0 = today's weekday; every work day when left out. */
export function makeRhythm({ problem, totalDays }: PreparedHousehold, days?: number[]): Rhythm {
  const sessionDays = Uint8Array.from({ length: totalDays }, (_, t) =>
    problem.workDays[t] && (!days || days.includes(t % 7)) ? 1 : 0,
  );
  const nextSession = new Int32Array(totalDays);
  let upcoming = totalDays;
  for (let t = totalDays - 1; t >= 0; t--) {
    nextSession[t] = upcoming;
    if (sessionDays[t]) upcoming = t;
  }
  return { sessionDays, nextSession };
}

/** Days modulo 7 on which work is possible in at least half of the weeks. */
export function workDaysOfWeek({ problem, totalDays }: PreparedHousehold): number[] {
  return [0, 1, 2, 3, 4, 5, 6].filter((weekday) => {
    let marked = 0;
    let weeks = 0;
    for (let t = weekday; t < totalDays; t += 7) {
      weeks++;
      marked += problem.workDays[t] ?? 0;
    }
    return marked * 2 >= weeks;
  });
}

/** Rhythms worth trying: one day a week, and two that lie three or four days apart. */
export function rhythmsOf(household: PreparedHousehold): number[][] {
  const free = workDaysOfWeek(household);
  if (free.length < 2) return [];
  const pairs = free.flatMap((a) => free.filter((b) => b > a && [3, 4].includes(b - a)).map((b) => [a, b]));
  return [...free.map((day) => [day]), ...(free.length > 2 ? pairs : [])];
}
