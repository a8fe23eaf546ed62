/** The cups that something can be noted of: those that live now, or that lived on an earlier day. */
import type { Day } from '../../foundation/index.ts';
import type { CultureFacts } from '../../logbook/index.ts';

/** @param on the day of which is told; from a day that is over, cups that have ended since count as well. */
export function cupsOn<Cup extends Pick<CultureFacts, 'on' | 'ended'>>(
  cultures: readonly Cup[],
  on: Day,
  today: Day,
): Cup[] {
  if (on >= today) return cultures.filter((cup) => cup.ended === null);
  return cultures.filter((cup) => cup.on <= on && (cup.ended === null || cup.ended.on >= on));
}
