/** When a place is too warm or too cold for cups, and what to do about it. */
import { addDays, type Day, type Said, said, saidTogether } from '../../foundation/index.ts';
import type { Facts, PlaceFacts } from '../../logbook/index.ts';
import { cupWarmth } from './cup-warmth.ts';
import type { PlaceTemperatureAnswer } from './temperature-answers.ts';

/** Above 28 C keepers move cups: common practice. The lower one is chosen, no source. */
export const usualLimitsC = { low: 5, high: 28 };
/** Near this most males are sterile: value from memory, as in data/strain-life.csv. */
const sterileC = 30;

export function limitsOf(place: PlaceFacts): { low: number; high: number } {
  return place.limitsC ?? usualLimitsC;
}

export type PlaceAlarm = Omit<PlaceTemperatureAnswer['alarms'][number], 'text'> & { text: Said };

/** Alarms from the readings of today and yesterday, the latest first. */
export function placeAlarms(place: PlaceFacts, on: Day): PlaceAlarm[] {
  const limits = limitsOf(place);
  const offsetC = cupWarmth(place, on).meanC;
  return place.readings
    .filter((reading) => reading.on <= on && reading.on >= addDays(on, -1))
    .toReversed()
    .flatMap((reading) => {
      const high = (reading.maxC ?? reading.meanC) + offsetC;
      const low = (reading.minC ?? reading.meanC) + offsetC;
      return [
        ...(high > limits.high ? [alarm(place, reading.on, 'warm', high, limits.high)] : []),
        ...(low < limits.low ? [alarm(place, reading.on, 'cold', low, limits.low)] : []),
      ];
    });
}

/** Alarms of all places where a living cup stands. */
export function householdAlarms(facts: Facts, on: Day): Said[] {
  const used = new Set(facts.cultures.filter((c) => !c.ended).map((c) => c.places.at(-1)?.place));
  const places = facts.places.filter((place) => used.has(place.place));
  return places.flatMap((place) => placeAlarms(place, on)).map(({ text }) => text);
}

function alarm(place: PlaceFacts, date: Day, kind: 'warm' | 'cold', cupsC: number, limitC: number): PlaceAlarm {
  const when = said`${place.name}, ${{ day: date }}`;
  const text = kind === 'warm' ? tooWarm(when, cupsC, limitC) : tooCold(when, cupsC, limitC);
  const sterile = kind === 'warm' && cupsC >= sterileC;
  return {
    date,
    kind,
    cupsC: tenth(cupsC),
    limitC,
    sterile,
    frost: kind === 'cold' && cupsC <= 0,
    text,
  };
}

function tooWarm(when: Said, highC: number, limitC: number): Said {
  const more =
    highC >= sterileC
      ? [
          said`Near ${{ degreesC: 30 }} males turn sterile and cups fail: start none there, and give males some days at ${{ degreesC: 25, whole: true }}.`,
        ]
      : [];
  return saidTogether(
    said`${when}: ${{ degreesC: highC }} in the cups, above ${{ degreesC: limitC, bare: true }}. Move them lower, into shade or to a cooler room; keep the medium from drying.`,
    ...more,
  );
}

function tooCold(when: Said, lowC: number, limitC: number): Said {
  const more = lowC <= 0 ? [said`Frost kills eggs, larvae and flies: expect losses and look at the cups.`] : [];
  return saidTogether(
    said`${when}: ${{ degreesC: lowC }} in the cups, below ${{ degreesC: limitC, bare: true }}. Development stands still; bring them where it is ${{ degreesC: 18, whole: true, bare: true }} to ${{ degreesC: 25, whole: true }}.`,
    ...more,
  );
}

function tenth(celsius: number): number {
  return Math.round(celsius * 10) / 10;
}
