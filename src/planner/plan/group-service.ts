/** How safely each group of animals is fed: rations that were missed once its patience was over. */
import type { PreparedHousehold } from '../forecast/prepared-household.ts';
import type { Tally } from './tally.ts';

export interface GroupService {
  group: string;
  strain: string;
  waitDays: number;
  /** Day on which a missed ration is likeliest, and its chance; null when none was ever missed. */
  worstDay: { day: number; service: number } | null;
  /** Days with a missed ration in a world's horizon, mean. */
  shortDays: number;
  /** Chance of no missed ration up to 13 weeks, 52 weeks and the horizon, as far as it goes. */
  noShortfall: { days: number; chance: number }[];
}

export function groupServices(household: PreparedHousehold, tally: Tally): GroupService[] {
  const n = Math.max(1, tally.worlds);
  return household.strains.flatMap(({ strain }, k) =>
    (tally.groups[k]?.counts ?? []).map(({ group, waitDays, shortWorlds, shortDays, marks }) => {
      const most = shortWorlds.reduce((worst, worlds, t) => (worlds > (shortWorlds[worst] as number) ? t : worst), 0);
      const short = (shortWorlds[most] ?? 0) / n;
      return {
        group,
        strain: strain.strain,
        waitDays,
        worstDay: short > 0 ? { day: most, service: 1 - short } : null,
        shortDays: shortDays / n,
        noShortfall: marks.map(({ days, worlds }) => ({ days, chance: worlds / n })),
      };
    }),
  );
}
