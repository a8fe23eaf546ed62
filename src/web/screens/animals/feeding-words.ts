/** Feeding days, kinds of animal and small amounts as words. */
import type { Weekday } from '../../../foundation/index.ts';
import { weekdayKeys, weekdayName } from '../../days/calendar.ts';
import { t, tMaybe } from '../../text/text.svelte.ts';

export function feedingDays(weekdays: readonly Weekday[], locale: string): string {
  if (weekdays.length === weekdayKeys.length) return t('animals.everyDay');
  const names = weekdayKeys.filter((each) => weekdays.includes(each)).map((each) => weekdayName(each, locale, 'short'));
  return names.join(', ');
}

/** The kind's plain name; null for none, its key for one without a name. */
export function kindName(animal: string | null): string | null {
  if (animal === null) return null;
  return tMaybe(`kindName.${animal}`) ?? tMaybe(`animal.${animal}`) ?? animal;
}

/** Flies or milligrams for one animal: two digits that matter. */
export function oneAnimal(amount: number, locale: string): string {
  return amount.toLocaleString(locale, { maximumSignificantDigits: 2 });
}

/** Flies that a series of days wants in its first seven. */
export function weekOf(fliesByDay: readonly number[]): number {
  return fliesByDay.slice(0, 7).reduce((sum, flies) => sum + flies, 0);
}
