/** Days that will be short because nothing can come in time: which, by how much, what ends it, who can wait. */
import { type Day, dayFromNumber, type Said, said, saidTogether } from '../../foundation/index.ts';
import type { NeedGroup, PlannedJob, ShortSpell } from '../../planner/index.ts';
import type { Situation } from '../planning-problem.ts';

/** One warning for each spell of days that stay likelier to fall short than was asked. */
export function shortAhead(at: Situation, spells: ShortSpell[], planned: PlannedJob[]): Said[] {
  return spells.map((spell) => spellSaid(at, spell, planned));
}

function spellSaid(at: Situation, spell: ShortSpell, planned: PlannedJob[]): Said {
  const { strain, fromDay, untilDay, chance, missingFlies, wantedFlies } = spell;
  const dateOf = dated(at);
  const name = at.model.strains.get(strain)?.facts.name ?? strain;
  const when =
    fromDay === untilDay ? said`on ${dateOf(fromDay)}` : said`from ${dateOf(fromDay)} to ${dateOf(untilDay)}`;
  return saidTogether(
    said`${name} may fall short ${when}: on the worst day with a chance of ${Math.round(100 * chance)} %, by about ${Math.round(missingFlies)} of the ${Math.round(wantedFlies)} flies wanted.`,
    ...orderSaid(at, spell, planned),
    ...stretchSaid(at, spell),
  );
}

/** What can be ordered, and from when on it helps. */
function orderSaid(at: Situation, { strain, fromDay, untilDay }: ShortSpell, planned: PlannedJob[]): Said[] {
  const { leadDays, deliveryDays } = at.problem.purchase;
  const arrival = deliveryDays.findIndex((may, day) => may === 1 && day >= leadDays);
  if (arrival < 0) return [];
  const dateOf = dated(at);
  const late = arrival > fromDay ? [said`No parcel ordered now comes before ${dateOf(arrival)}.`] : [];
  const order = planned.find(
    (job) => job.kind === 'order' && job.strain === strain && job.boughtKind === 'producing' && job.day <= untilDay,
  );
  if (!order) return late;
  return [
    ...late,
    said`With the order in the plan (cups: ${order.cups ?? 0}, to order by ${dateOf(order.day)}) it is as safe as asked again from ${dateOf(untilDay + 1)}.`,
  ];
}

/** Who can wait and who can't, of those that are fed in the spell. */
function stretchSaid(at: Situation, { strain, fromDay, untilDay }: ShortSpell): Said[] {
  const groups = at.problem.strains.find((one) => one.strain === strain)?.groups ?? [];
  const fed = groups.filter(({ flies }) => flies.subarray(fromDay, untilDay + 1).some((wanted) => wanted > 0));
  const names = new Map(at.model.facts.groups.map(({ group, name }) => [group, name]));
  const nameOf = ({ group }: NeedGroup) => names.get(group) ?? group;
  const patient = fed.filter(({ waitDays }) => waitDays > 0);
  const urgent = fed.filter(({ waitDays }) => waitDays === 0);
  const later = patient.map((one) => said`${nameOf(one)} (${one.waitDays})`);
  return [
    ...(urgent.length > 0 ? [said`Cannot wait and come first: ${{ list: urgent.map(nameOf) }}.`] : []),
    ...(later.length > 0 ? [said`Can be fed later, by as many days: ${{ list: later }}.`] : []),
    said`What is still missing has to be other prey, or flies from another keeper.`,
  ];
}

function dated({ model }: Situation): (day: number) => { day: Day } {
  return (day) => ({ day: dayFromNumber(model.today + day) });
}
