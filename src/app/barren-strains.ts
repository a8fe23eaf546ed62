/** Strains that do not multiply where their cups stand: for them no plan can be made, and it is said. */
import { type Said, said } from '../foundation/index.ts';
import { hourlyAt, usualPlace } from './household-model.ts';
import type { Situation } from './planning-problem.ts';

/** One sentence for each strain that is wanted and gives back fewer flies than a cup is started with. */
export function barrenStrains({ model, problem }: Situation): Said[] {
  return problem.strains
    .filter(({ wantedFlies }) => wantedFlies.some((flies) => flies > 0))
    .filter(({ curves, foundersPerCup }) => fliesOf(curves[0]?.emergedByAge) < foundersPerCup)
    .map(({ strain }) => {
      const place = usualPlace(model, strain);
      const name = model.strains.get(strain)?.facts.name ?? strain;
      const where = model.places.get(place)?.name ?? place;
      const hourly = hourlyAt(model, place).subarray(24 * (model.today - model.firstDay));
      const meanC = hourly.subarray(0, 24 * 30).reduce((sum, c) => sum + c, 0) / Math.min(hourly.length, 24 * 30);
      return said`${name} does not multiply at ${where} (about ${{ degreesC: meanC }}): a cup gives back fewer flies than it is started with, so nothing is planned for it. Correct the temperature, or find a place at ${{ degreesC: 18, whole: true, bare: true }} to ${{ degreesC: 26, whole: true }}.`;
    });
}

function fliesOf(emergedByAge: Float32Array | undefined): number {
  return emergedByAge?.reduce((sum, flies) => sum + flies, 0) ?? 0;
}
