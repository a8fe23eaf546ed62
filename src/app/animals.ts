/** The household's animals: need over time by strain and group, the week's feedings, food and weights. */
import { type DustingRule, type Range, rangeOf, wantedFlies } from '../animals/index.ts';
import { dayNumber } from '../foundation/index.ts';
import type { Facts } from '../logbook/index.ts';
import type { AnimalsAnswer } from './animals/animal-answers.ts';
import { flyMassNow } from './animals/fly-mass-now.ts';
import { groupNeed } from './animals/group-need.ts';
import { weekOfFeedings, weekQuality } from './animals/week.ts';
import { feedingGroups } from './need.ts';
import type { Question } from './question.ts';

export interface AnimalsQuestion extends Pick<Question, 'on' | 'weeks'> {
  /** The keeper's or the vet's schedule; a supplement named calcium counts as calcium carbonate. */
  dusting?: readonly DustingRule[];
}

const usualWeeks = 13;
/** Rearing temperature that the flies' mass is taken at where no pot was weighed: an ordinary room. */
const rearingC = 23;

export function animals(facts: Facts, { on, weeks = usualWeeks, dusting = [] }: AnimalsQuestion): AnimalsAnswer {
  const days = 7 * weeks;
  const masses = new Map<string, Range>(
    facts.strains.map(({ strain }) => [strain, flyMassNow(facts, strain, on, rearingC) ?? rangeOf(0, 0)]),
  );
  const needs = wantedFlies({ groups: feedingGroups(facts), fromDay: dayNumber(on), days });
  const groups = facts.groups.map((group) => groupNeed(facts, group, on, days, masses));
  const week = weekOfFeedings(facts, on, dusting);
  const quality = weekQuality(week, masses);
  return {
    on,
    days,
    strains: [...needs].map(([strain, { flies, sd }]) => ({
      strain,
      wantedFliesByDay: [...flies],
      sdByDay: [...sd],
      flyMassMg: masses.get(strain) ?? rangeOf(0, 0),
    })),
    groups,
    week,
    quality,
    cautions: cautionsFor(groups, quality),
  };
}

function cautionsFor(groups: AnimalsAnswer['groups'], quality: AnimalsAnswer['quality']): string[] {
  const cautions = groups.flatMap(({ name, weight, slackDays, count, lastFedOn }) => [
    ...(weight && ['too little', 'watch'].includes(weight.verdict) ? [`${name}: ${weight.why}`] : []),
    ...(count > 0 && lastFedOn !== null && slackDays < 0
      ? [`${name} was last fed on ${lastFedOn}, longer ago than it can wait.`]
      : []),
  ]);
  if (quality?.verdict === 'too little calcium')
    cautions.push(
      'The week brings less calcium than phosphorus: dust the flies by the schedule that you or your vet set. Too much of a vitamin harms as well.',
    );
  return cautions;
}
