/** Counts, group by group, rations that were missed: groups of equal patience share a lack alike. */
import type { PreparedStrain } from '../forecast/prepared-household.ts';
import { marksWithin, tolerance } from './short-days.ts';

export interface GroupTally {
  counts: GroupCount[];
  beginWorld(): void;
  missed(t: number, missedByClass: Float64Array): void;
  endWorld(): void;
}

export interface GroupCount {
  group: string;
  waitDays: number;
  /** Worlds in which a ration of the group was missed for good on the day: `[day]`. */
  shortWorlds: Float64Array;
  shortDays: number;
  /** Worlds without a missed ration up to each mark. */
  marks: { days: number; worlds: number }[];
}

/** @param judgedFrom rations of days before it are not counted. */
export function makeGroupTally(prepared: PreparedStrain, days: number, judgedFrom: number): GroupTally {
  const groups = prepared.strain.groups ?? [];
  const classOf = groups.map(({ waitDays }) => prepared.classes.findIndex((c) => c.waitDays === Math.max(0, waitDays)));
  const counts = groups.map(({ group, waitDays }) => ({
    group,
    waitDays,
    shortWorlds: new Float64Array(days),
    shortDays: 0,
    marks: marksWithin(days).map((mark) => ({ days: mark, worlds: 0 })),
  }));
  const firstShort = groups.map(() => days);
  return {
    counts,
    beginWorld: () => firstShort.fill(days),
    missed(t, missedByClass) {
      counts.forEach((count, g) => {
        const ration = t - Math.max(0, count.waitDays);
        const isFed = ration >= 0 && (groups[g]?.flies[ration] ?? 0) > 0;
        if (!isFed || ration < judgedFrom || (missedByClass[classOf[g] as number] as number) <= tolerance) return;
        count.shortDays++;
        count.shortWorlds[t] = (count.shortWorlds[t] as number) + 1;
        firstShort[g] = Math.min(firstShort[g] as number, t);
      });
    },
    endWorld() {
      counts.forEach(({ marks }, g) => {
        for (const mark of marks) if ((firstShort[g] as number) >= mark.days) mark.worlds++;
      });
    },
  };
}
