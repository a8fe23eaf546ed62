/** What a fly of the household now weighs: from pots that were both counted and weighed, else from the books. */
import { type Range, rangeOf } from '../../animals/index.ts';
import { flyMassMg } from '../../biology/index.ts';
import { type Day, daysBetween } from '../../foundation/index.ts';
import type { Facts } from '../../logbook/index.ts';
import { strainLife } from '../../reference/index.ts';

/** Weighings older than this say little of the flies that come now. */
const freshDays = 60;
/** A mean from own pots is trusted to a tenth either way: counts and small scales err so. */
const ownDoubt = 0.1;
/** Crowding of a full cup, in multiples of the medium's capacity. */
const fullCup = 2;

/** Range in mg; the books' range runs from a full cup's flies to uncrowded ones. Null for an unknown strain. */
export function flyMassNow(facts: Facts, strain: string, on: Day, temperatureC: number): Range | null {
  const own = ownMeanMg(facts, strain, on);
  if (own !== null) return rangeOf(own * (1 - ownDoubt), own * (1 + ownDoubt));
  const known = facts.strains.find((one) => one.strain === strain);
  const life = strainLife(known?.base ?? strain);
  if (!life) return null;
  const factor = known?.massFactor ?? 1;
  return rangeOf(
    factor * flyMassMg(life, 'mixed', temperatureC, fullCup),
    factor * flyMassMg(life, 'mixed', temperatureC, 0),
  );
}

function ownMeanMg(facts: Facts, strain: string, on: Day): number | null {
  let flies = 0;
  let mg = 0;
  for (const culture of facts.cultures) {
    if (culture.strain !== strain) continue;
    for (const harvest of culture.harvests) {
      const age = daysBetween(harvest.on, on);
      if (harvest.flies === null || harvest.weightMg === null || age < 0 || age > freshDays) continue;
      flies += harvest.flies;
      mg += harvest.weightMg;
    }
  }
  return flies > 0 && mg > 0 ? mg / flies : null;
}
