/** Feeding days as words. */
import type { Weekday } from '../../../foundation/index.ts';
import { weekdayKeys, weekdayName } from '../../days/calendar.ts';
import { t } from '../../text/text.svelte.ts';

export function feedingDays(weekdays: readonly Weekday[], locale: string): string {
  if (weekdays.length === weekdayKeys.length) return t('animals.everyDay');
  const names = weekdayKeys.filter((each) => weekdays.includes(each)).map((each) => weekdayName(each, locale, 'short'));
  return names.join(', ');
}
