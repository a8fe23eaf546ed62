/** The cup that is looked at: an ordinary one, or one of the household's as it was made. */
import type { CultureFacts, Facts } from '../../../logbook/index.ts';

export type Species = 'melanogaster' | 'hydei';

export interface CupAsked {
  strain: Species;
  temperatureC: number;
  founders: number;
  mediumMassG: number;
  surfaceCm2: number;
  harvestEveryDays: number;
}

export const ordinaryCup: CupAsked = {
  strain: 'melanogaster',
  temperatureC: 23,
  founders: 50,
  mediumMassG: 150,
  surfaceCm2: 85,
  harvestEveryDays: 1,
};

/** The latest readings of its place that stand for the warmth of a cup, days. */
const recentReadings = 14;

/** `culture` as it was made, at the mean of what was last read in its place. */
export function cupOf(culture: CultureFacts, facts: Facts | null): CupAsked {
  const base = facts?.strains.find((each) => each.strain === culture.strain)?.base ?? culture.strain;
  const warmthC = warmthOf(culture, facts);
  return {
    strain: base.startsWith('hydei') ? 'hydei' : 'melanogaster',
    temperatureC: warmthC === null ? ordinaryCup.temperatureC : Math.round(2 * warmthC) / 2,
    founders: Math.max(2, culture.founders),
    mediumMassG: culture.mediumMassG,
    surfaceCm2: culture.surfaceCm2,
    harvestEveryDays: ordinaryCup.harvestEveryDays,
  };
}

function warmthOf(culture: CultureFacts, facts: Facts | null): number | null {
  const place = facts?.places.find((each) => each.place === culture.places.at(-1)?.place);
  if (!place) return null;
  const recent = place.readings.slice(-recentReadings);
  if (recent.length > 0) return recent.reduce((sum, { meanC }) => sum + meanC, 0) / recent.length + place.cupOffsetC;
  return 'allYearC' in place.expected ? place.expected.allYearC + place.cupOffsetC : null;
}
