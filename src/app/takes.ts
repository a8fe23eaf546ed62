/**
 * Flies taken out of cups up to yesterday: what the log says, and planned feeding that nobody wrote
 * down. Keepers feed daily and write weekly, so a feeding day without a note is presumed done from the
 * oldest cups that hold flies, and marked as presumed so that learning gives it its uncertainty.
 */
import { fliesByWeight } from '../biology/index.ts';
import { type DayNumber, dayNumber } from '../foundation/index.ts';
import type { Facts, FeedingFact } from '../logbook/index.ts';
import type { CupHistory } from './cup-history.ts';
import type { HouseholdModel, StrainModel } from './household-model.ts';
import { needOf } from './need.ts';
import { presumeFeedings } from './presumed-feeding.ts';

/** A fly's mass when the course has none that day, mg. */
const usualFlyMassMg = 0.95;

/** Adds to each cup of the strain (oldest first) the takes before today. */
export function addTakes(model: HouseholdModel, strain: StrainModel, cups: CupHistory[]): void {
  if (cups.length === 0) return;
  const byId = new Map(cups.map((c) => [c.culture.culture, c]));
  addRecorded(model.facts, byId);
  if (!model.facts.household.presumeFeeding) return;
  const from = Math.min(...cups.map((c) => c.start));
  const need = needOf(model.facts, from, model.today - from).get(strain.facts.strain);
  if (need) presumeFeedings(strain, cups, { from, today: model.today, wanted: need.flies });
}

function addRecorded(facts: Facts, byId: Map<string, CupHistory>): void {
  const fedFromHarvest = new Set<DayNumber>();
  for (const cup of byId.values()) {
    for (const h of cup.culture.harvests) {
      const day = dayNumber(h.on);
      const feeding = h.purpose === 'feeding';
      if (feeding) fedFromHarvest.add(day);
      const flies =
        h.flies ?? (h.weightMg === null ? null : Math.round(fliesByWeight(h.weightMg, flyMassMg(cup, day))));
      cup.takes.push({ day, flies, taps: h.taps, emptied: h.emptied, presumed: false, feeding, entryId: h.entryId });
    }
  }
  for (const fed of facts.feedings) {
    // The same flies are often written twice: out of the cup, and into the animals.
    if (!fedFromHarvest.has(dayNumber(fed.on))) addFeeding(byId, fed);
  }
}

/** A feeding from several cups at once takes equal shares of them. */
function addFeeding(byId: Map<string, CupHistory>, { entryId, on, flies, fromCultures }: FeedingFact): void {
  for (const id of fromCultures) {
    byId.get(id)?.takes.push({
      day: dayNumber(on),
      flies: flies / fromCultures.length,
      taps: null,
      emptied: false,
      presumed: false,
      feeding: true,
      entryId,
    });
  }
}

function flyMassMg(cup: CupHistory, day: DayNumber): number {
  const mass = cup.nominal.course.emergedMassMg[day - cup.start];
  return mass !== undefined && mass > 0 ? mass : usualFlyMassMg;
}
