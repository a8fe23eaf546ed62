/** What the keeper should know of the animals at once: weight, waiting, moults and hatches that nobody wrote. */
import { type Day, dayFromNumber, dayNumber, type Said, said } from '../../foundation/index.ts';
import type { Facts, GroupFacts } from '../../logbook/index.ts';
import { kindOf, nearKinds } from './animal-kinds.ts';
import { feedingNow, patienceOf } from './feeding-now.ts';
import { periodOn } from './group-periods.ts';
import { overdueDays } from './overdue.ts';
import { weightOf } from './weights.ts';

export interface AnimalWarning {
  group: string;
  kind: 'kind' | 'weight' | 'waiting' | 'stage' | 'hatch' | 'calcium';
  text: Said;
}

/** In plain sentences, each beginning with the group's name. @param facts as written. */
export function animalWarnings(facts: Facts, on: Day): AnimalWarning[] {
  return facts.groups.flatMap((group) => {
    const warn = (kind: AnimalWarning['kind'], text: Said | null) =>
      text === null ? [] : [{ group: group.group, kind, text: said`${group.name}: ${text}` }];
    return [
      ...warn('kind', kindWarning(group, on)),
      ...warn('weight', weightWarning(facts, group, on)),
      ...warn('waiting', waitingWarning(facts, group, on)),
      ...warn('stage', stageWarning(facts, group, on)),
      ...warn('hatch', hatchWarning(group, on)),
    ];
  });
}

/** A name that the books do not have, where one of theirs was likely meant. */
function kindWarning(group: GroupFacts, on: Day): Said | null {
  const period = periodOn(group, dayNumber(on));
  const animal = period?.animal ?? group.animal;
  if (!period || period.count === 0 || animal === null || kindOf(animal) !== null) return null;
  const near = nearKinds(animal);
  return near.length === 0
    ? null
    : said`the books have no kind “${animal}”, so nothing is known of its growth and the ration stays as written. Perhaps ${{ list: near }} is meant: change the group's kind.`;
}

function weightWarning(facts: Facts, group: GroupFacts, on: Day): Said | null {
  if ((periodOn(group, dayNumber(on))?.count ?? 0) === 0) return null;
  const check = weightOf(facts, group, on);
  return check && (check.verdict === 'too little' || check.verdict === 'watch') ? check.why : null;
}

function waitingWarning(facts: Facts, group: GroupFacts, on: Day): Said | null {
  const period = periodOn(group, dayNumber(on));
  const lastFedOn = facts.feedings.findLast((one) => one.group === group.group && one.on <= on)?.on;
  if (!period || period.count === 0 || lastFedOn === undefined) return null;
  const slack = patienceOf(period) - overdueDays(facts, group, on);
  return slack < 0 ? said`last fed on ${{ day: lastFedOn }}, longer ago than they can wait.` : null;
}

function stageWarning(facts: Facts, { group }: GroupFacts, on: Day): Said | null {
  const ration = feedingNow(facts, on).rations.get(group);
  const due = ration?.stages.findLast(({ books }) => books.latest < dayNumber(on));
  if (!ration?.written || ration.written.count === 0 || !due) return null;
  return said`by the books they have moved on to their next stage by ${{ day: dayFromNumber(due.books.latest) }}: look, and write it down.`;
}

function hatchWarning({ periods }: GroupFacts, on: Day): Said | null {
  const late = periods.findLast(({ from }) => from <= on);
  if (!late?.arrival || late.arrival.latest >= on) return null;
  return said`expected by ${{ day: late.arrival.latest }}: write down how many came, or that none will.`;
}
