/** What a plan promises: chances of no shortfall by span, the size of one, and each group's own. */
import { dayFromNumber } from '../../foundation/index.ts';
import type { PlanResult } from '../../planner/index.ts';
import type { PlanAnswer } from '../answers.ts';
import type { Situation } from '../planning-problem.ts';

export function serviceOf(
  { model }: Situation,
  result: PlanResult,
): Pick<PlanAnswer, 'noShortfall' | 'shortfall' | 'groups'> {
  const names = new Map(model.facts.groups.map(({ group, name }) => [group, name]));
  return {
    noShortfall: result.noShortfall.map(inWeeks),
    shortfall: { meanMissingShare: result.meanMissingShare, runDays: result.shortfallRunDays },
    groups: result.groups.map(({ group, strain, waitDays, worstDay, shortDays, noShortfall }) => ({
      group,
      name: names.get(group) ?? group,
      strain,
      canWaitDays: waitDays,
      worstDayServiceLevel: worstDay?.service ?? 1,
      worstDay: worstDay ? dayFromNumber(model.today + worstDay.day) : null,
      expectedShortfallDays: shortDays,
      noShortfall: noShortfall.map(inWeeks),
    })),
  };
}

function inWeeks({ days, chance }: { days: number; chance: number }): { weeks: number; chance: number } {
  return { weeks: days / 7, chance };
}
