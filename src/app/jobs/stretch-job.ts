/** When the cups hold fewer flies than today's feedings take: who comes first and who can wait, in one job a strain. */
import { type HungryGroup, stretch, type StretchShare } from '../../animals/index.ts';
import { addDays, type Day, dayNumber, type Said, said, saidTogether } from '../../foundation/index.ts';
import type { Facts } from '../../logbook/index.ts';
import { overdueDays } from '../animals/overdue.ts';
import { feedingPeriodOn, wasFed } from './feed-jobs.ts';
import type { SaidJob } from './said-job.ts';

/** Null when there are flies enough, or nobody is left to be fed today. */
export function stretchJob(facts: Facts, strain: string, on: Day, availableFlies: number): SaidJob | null {
  const hungry = hungryToday(facts, strain, on);
  const wanted = hungry.reduce((sum, { flies }) => sum + flies, 0);
  if (wanted === 0 || availableFlies >= wanted) return null;
  const { shares, missingFlies } = stretch(hungry, availableFlies);
  const names = new Map(facts.groups.map(({ group, name }) => [group, name]));
  const sentences = shares.map((one) => shareSaid(names.get(one.group) ?? one.group, one, on));
  const missing =
    missingFlies > 0 ? [said`About ${Math.round(missingFlies)} are missing for those that cannot wait.`] : [];
  return {
    id: `${on}:stretch:${strain}`,
    date: on,
    kind: 'stretch',
    strain,
    flies: Math.round(availableFlies),
    why: saidTogether(
      Math.round(availableFlies) === 0
        ? said`No flies for the ${Math.round(wanted)} wanted: ${{ list: sentences, by: '; ' }}.`
        : said`About ${Math.round(availableFlies)} flies for ${Math.round(wanted)} wanted: ${{ list: sentences, by: '; ' }}.`,
      ...missing,
      ...(Math.round(availableFlies) === 0
        ? [said`Buy flies to feed from a shop or another keeper until a cup gives some.`]
        : []),
    ),
    firmness: 'firm',
  };
}

function hungryToday(facts: Facts, strain: string, on: Day): HungryGroup[] {
  const today = dayNumber(on);
  return facts.groups.flatMap((group) => {
    const period = feedingPeriodOn(group, today);
    if (!period || period.strain !== strain || period.arrival || wasFed(facts, group.group, today)) return [];
    const flies = period.count * period.fliesPerFeeding;
    const { canWaitDays } = period;
    return flies > 0 ? [{ group: group.group, flies, canWaitDays, overdueDays: overdueDays(facts, group, on) }] : [];
  });
}

function shareSaid(name: string, { verdict, flies, slackDays }: StretchShare, on: Day): Said {
  if (verdict === 'fed') return said`${name} first, all of their ${Math.round(flies)}`;
  if (verdict === 'goes short') return said`${name} first, ${Math.round(flies)} of their flies`;
  const until = { day: addDays(on, slackDays) };
  return flies > 0.5
    ? said`${name} ${Math.round(flies)} now, the rest by ${until}`
    : said`${name} can wait until ${until}`;
}
