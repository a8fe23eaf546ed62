/** How much warmer the cups of a place are than its room: the keeper's number, moved by readings in cups. */
import { type CupOffset, cupOffset } from '../../climate/index.ts';
import type { Day } from '../../foundation/index.ts';
import type { PlaceFacts } from '../../logbook/index.ts';

/** @param until pairs read later than this day say nothing yet. */
export function cupWarmth(place: PlaceFacts, until: Day): CupOffset {
  const pairs = (place.cupPairs ?? []).filter(({ on }) => on <= until);
  return cupOffset(pairs, place.cupOffsetC);
}
