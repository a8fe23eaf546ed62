/** The need that is left today: a group that was fed already wants no more, and its flies are out of the cups. */
import { dayNumber } from '../foundation/index.ts';
import type { StrainProblem } from '../planner/index.ts';
import { fedOn } from './held-out.ts';
import type { HouseholdModel } from './household-model.ts';
import type { CupHistory } from './cup-history.ts';

type Need = Pick<StrainProblem, 'wantedFlies' | 'groups' | 'needDraws'>;

/** A feeding counts when the log says where its flies came from: which cups, or a harvest of the day. */
export function withoutFedToday(need: Need, model: HouseholdModel, strain: string, cups: readonly CupHistory[]): Need {
  const harvested = cups.some(({ culture }) => culture.harvests.some((h) => dayNumber(h.on) === model.today));
  const fed = new Set(
    fedOn(model, strain, model.today)
      .filter(({ fromCultures }) => harvested || fromCultures.length > 0)
      .map(({ group }) => group),
  );
  if (fed.size === 0) return need;
  const done = (need.groups ?? []).filter(({ group }) => fed.has(group));
  const less = <T extends Float64Array | Float32Array>(flies: T, by: (g: (typeof done)[number]) => number): T => {
    const copy = flies.slice() as T;
    copy[0] = Math.max(0, (flies[0] as number) - done.reduce((sum, group) => sum + by(group), 0));
    return copy;
  };
  const none = <T extends Float64Array | Float32Array>(flies: T): T => {
    const copy = flies.slice() as T;
    copy[0] = 0;
    return copy;
  };
  return {
    wantedFlies: less(need.wantedFlies, ({ flies }) => flies[0] ?? 0),
    groups: (need.groups ?? []).map((group) =>
      fed.has(group.group)
        ? { ...group, flies: none(group.flies), ...(group.draws && { draws: group.draws.map(none) }) }
        : group,
    ),
    ...(need.needDraws && {
      needDraws: need.needDraws.map((flies, s) =>
        less(flies, ({ draws, flies: mean }) => draws?.[s]?.[0] ?? mean[0] ?? 0),
      ),
    }),
  };
}
