/** Groups whose week brings less calcium than phosphorus, said once for each, with the vet's word last. */
import type { DustingRule, Range } from '../../animals/index.ts';
import { said, saidTogether } from '../../foundation/index.ts';
import type { Facts, GroupFacts } from '../../logbook/index.ts';
import type { AnimalsAnswer } from './animal-answers.ts';
import { kindOf } from './animal-kinds.ts';
import { qualityOf } from './food.ts';
import type { AnimalWarning } from './warnings.ts';

const vet = said`Your vet decides what is right: too much of a vitamin harms as well.`;

/** Animals with bones; of a kind that nobody named only where a schedule was written. */
export function calciumWarnings(
  facts: Facts,
  week: AnimalsAnswer['week'],
  household: readonly DustingRule[],
  flyMassMg: ReadonlyMap<string, Range>,
): AnimalWarning[] {
  return facts.groups.flatMap((group) => {
    const hasSchedule = (group.dusting ?? household).length > 0;
    const food = qualityOf(
      week.filter((one) => one.group === group.group),
      flyMassMg,
    );
    if (food?.verdict !== 'too little calcium' || !hasBones(group, hasSchedule)) return [];
    const ratio = Math.round(10 * (food.calciumToPhosphorus ?? 0)) / 10;
    const text = hasSchedule
      ? said`by the schedule the week brings less calcium than phosphorus (${ratio} to 1).`
      : said`bare flies bring less calcium than phosphorus (${ratio} to 1). If you dust them, write the schedule down.`;
    return [{ group: group.group, kind: 'calcium', text: saidTogether(said`${group.name}: ${text}`, vet) }];
  });
}

function hasBones({ animal }: GroupFacts, hasSchedule: boolean): boolean {
  const taxon = kindOf(animal)?.taxon;
  return taxon === undefined ? hasSchedule : taxon === 'amphibian' || taxon === 'reptile';
}
