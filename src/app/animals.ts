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
  /** In place of the household's schedule; a supplement named calcium counts as calcium carbonate. */
  dusting?: readonly DustingRule[];
}

const usualWeeks = 13;
/** Rearing temperature that the flies' mass is taken at where no pot was weighed: an ordinary room. */
const rearingC = 23;

export function animals(
  facts: Facts,
  { on, weeks = usualWeeks, dusting = facts.household.dusting }: AnimalsQuestion,
): AnimalsAnswer {
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
    cautions: [...cautionsFor(groups), ...(dusting.length > 0 ? calciumCaution(quality) : [])],
  };
}

function cautionsFor(groups: AnimalsAnswer['groups']): string[] {
  return groups.flatMap(({ name, weight, slackDays, count, lastFedOn }) => [
    ...(weight && ['too little', 'watch'].includes(weight.verdict) ? [`${name}: ${weight.why}`] : []),
    ...(count > 0 && lastFedOn !== null && slackDays < 0
      ? [`${name}: last fed on ${lastFedOn}, longer ago than they can wait.`]
      : []),
  ]);
}

/** Only where a schedule was written: without one nobody knows what is dusted, and the ratio itself is shown. */
function calciumCaution(quality: AnimalsAnswer['quality']): string[] {
  if (quality?.verdict !== 'too little calcium') return [];
  return [
    'By the schedule the week brings less calcium than phosphorus. Your vet decides what is right: too much of a vitamin harms as well.',
  ];
}
