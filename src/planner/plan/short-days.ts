/** What counts as a short day, and the spans for which the chance of none is told. */

/** Flies by which a ration may be missed before a day is called short: less than one fly. */
export const tolerance = 0.5;
/** 13 and 52 weeks. */
const markedDays = [91, 364];

/** 13 weeks and 52 where the horizon is longer, and the horizon itself. */
export function marksWithin(days: number): number[] {
  return [...markedDays.filter((mark) => mark < days), days];
}
