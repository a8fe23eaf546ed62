/** When the cups hold fewer flies than today's feedings take: who comes first and who can wait, in one job a strain. */
import { type HungryGroup, stretch, type StretchShare } from '../../animals/index.ts';
import { type Day, dayNumber } from '../../foundation/index.ts';
import type { Facts } from '../../logbook/index.ts';
import { overdueDays } from '../animals/overdue.ts';
import type { Job } from '../answers.ts';
import { dayWordsFrom } from '../day-words.ts';
import { feedingPeriodOn, wasFed } from './feed-jobs.ts';

/** Null when there are flies enough, or nobody is left to be fed today. */
export function stretchJob(facts: Facts, strain: string, on: Day, availableFlies: number): Job | null {
  const hungry = hungryToday(facts, strain, on);
  const wanted = hungry.reduce((sum, { flies }) => sum + flies, 0);
  if (wanted === 0 || availableFlies >= wanted) return null;
  const { shares, missingFlies } = stretch(hungry, availableFlies);
  const names = new Map(facts.groups.map(({ group, name }) => [group, name]));
  const sentences = shares.map((one) => sentence(names.get(one.group) ?? one.group, one, dayWordsFrom(dayNumber(on))));
  const missing = missingFlies > 0 ? ` About ${Math.round(missingFlies)} are missing for those that cannot wait.` : '';
  return {
    id: `${on}:stretch:${strain}`,
    date: on,
    kind: 'stretch',
    strain,
    flies: Math.round(availableFlies),
    why: `About ${Math.round(availableFlies)} flies for ${Math.round(wanted)} wanted: ${sentences.join('; ')}.${missing}`,
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

function sentence(
  name: string,
  { verdict, flies, slackDays }: StretchShare,
  dayWords: (offset: number) => string,
): string {
  if (verdict === 'fed') return `${name} first, all of their ${Math.round(flies)}`;
  if (verdict === 'goes short') return `${name} first, ${Math.round(flies)} of their flies`;
  const until = dayWords(slackDays);
  return flies > 0.5 ? `${name} ${Math.round(flies)} now, the rest by ${until}` : `${name} can wait until ${until}`;
}
