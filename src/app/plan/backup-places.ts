/** Backup cups in two places: one failure of a room must not end a strain. */
import { type Said, said } from '../../foundation/index.ts';
import { usualPlace } from '../household-model.ts';
import type { Situation } from '../planning-problem.ts';

/** What to say to a start of the strain when all its living cups stand in one place and there is another. */
export function otherPlaceSaid({ model }: Situation, strain: string): Said | null {
  const { household, places, cultures } = model.facts;
  if (!household.backup?.inTwoPlaces || places.length < 2) return null;
  const living = cultures.filter((c) => c.strain === strain && c.ended === null);
  const taken = new Set(living.map((c) => c.places.at(-1)?.place ?? usualPlace(model, strain)));
  if (taken.size > 1) return null;
  const here = [...taken][0] ?? usualPlace(model, strain);
  const other = places.find((p) => p.place !== here);
  const nameHere = places.find((p) => p.place === here)?.name ?? here;
  return other ? said`Put one of them at ${other.name}: all the others stand at ${nameHere}.` : null;
}
