/** How humid the room was where a cup stood, as far as anyone measured it. */
import { type DayNumber, dayNumber } from '../foundation/index.ts';
import type { CultureFacts, PlaceFacts } from '../logbook/index.ts';

/** A reading stands for the days about it: a room's air changes with the weather and the heating. */
const standsForDays = 14;

export interface PlacesAndDay {
  places: Map<string, PlaceFacts>;
  today: DayNumber;
}

/**
 * Mean relative humidity, per cent, of what was read in a culture's places between a fortnight before it was
 * started and a fortnight after its end or today; null where nothing was read: then nothing is assumed.
 */
export function humidityOf(
  { places, today }: PlacesAndDay,
  culture: Pick<CultureFacts, 'startedOn' | 'places' | 'ended'>,
): number | null {
  const from = dayNumber(culture.startedOn) - standsForDays;
  const until = Math.min(today, culture.ended ? dayNumber(culture.ended.on) + standsForDays : today);
  const stays = new Set(culture.places.map(({ place }) => place));
  const read = [...stays].flatMap((place) => places.get(place)?.humidity ?? []);
  const near = read.filter(({ on }) => dayNumber(on) >= from && dayNumber(on) <= until);
  return near.length === 0 ? null : near.reduce((sum, { percent }) => sum + percent, 0) / near.length;
}
