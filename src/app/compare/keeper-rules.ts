/** The rules that a keeper set and that bind a plan, each with the household as it would be without it. */
import {
  dayFromNumber,
  type Said,
  said,
  type Weekday,
  weekdayOf,
  weekdaySaid,
  weekdays,
} from '../../foundation/index.ts';
import type { PlanningProblem } from '../../planner/index.ts';
import type { Situation } from '../planning-problem.ts';

export interface KeeperRule {
  rule: Said;
  without: PlanningProblem;
}

/** Larger than any session or shelf. */
const noLimit = 100_000;

export function keeperRules(at: Situation): KeeperRule[] {
  const { problem } = at;
  const { quarantineDays } = problem.purchase;
  const rules = freeWeekdays(at).map((weekday) => ({
    rule: said`No fly work on ${weekdaySaid[weekday]}`,
    without: { ...problem, workDays: withWeekday(at, weekday) },
  }));
  const { maxCupsPerSession, shelfCups } = problem;
  rules.push({
    rule: said`At most ${maxCupsPerSession} cups a session`,
    without: { ...problem, maxCupsPerSession: noLimit },
  });
  rules.push({ rule: said`At most ${shelfCups} cups on the shelf`, without: { ...problem, shelfCups: noLimit } });
  if (quarantineDays > 0) {
    rules.push({
      rule: said`${quarantineDays} days of quarantine for bought cups`,
      without: { ...problem, purchase: { ...problem.purchase, quarantineDays: 0 } },
    });
  }
  const { backup } = at.model.facts.household;
  if ((backup?.cupsPerStrain ?? 0) > 0) {
    rules.push({
      rule: said`${backup?.cupsPerStrain ?? 0} cups of each strain in reserve`,
      without: withStrains(problem, (strain) => ({ ...strain, backupCups: 0 })),
    });
  }
  if (hasAbsenceAhead(at)) {
    rules.push({ rule: said`The days away`, without: { ...problem, workDays: withoutAbsences(at) } });
  }
  return rules;
}

function withStrains(
  problem: PlanningProblem,
  changed: (strain: PlanningProblem['strains'][number]) => PlanningProblem['strains'][number],
): PlanningProblem {
  return { ...problem, strains: problem.strains.map(changed) };
}

function freeWeekdays({ model }: Situation): Weekday[] {
  return weekdays.filter((weekday) => !model.facts.household.workWeekdays.includes(weekday));
}

/** The weekday becomes a work day, except while everyone is away. */
function withWeekday(at: Situation, weekday: Weekday): Uint8Array {
  return at.problem.workDays.map((works, i) => (works || (weekdayAt(at, i) === weekday && !isAway(at, i)) ? 1 : 0));
}

function withoutAbsences(at: Situation): Uint8Array {
  const { workWeekdays } = at.model.facts.household;
  return at.problem.workDays.map((_, i) => (workWeekdays.includes(weekdayAt(at, i)) ? 1 : 0));
}

function hasAbsenceAhead(at: Situation): boolean {
  return at.problem.workDays.some((_, i) => i < at.problem.days && isAway(at, i));
}

function weekdayAt({ model }: Situation, i: number): Weekday {
  return weekdayOf(dayFromNumber(model.today + i));
}

function isAway({ model }: Situation, i: number): boolean {
  const day = dayFromNumber(model.today + i);
  return model.facts.absences.some((a) => a.from <= day && day <= a.until);
}
