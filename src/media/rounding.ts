/**
 * Rounding to what a kitchen can measure: the step of a scale, or whole and part spoons and cups of one
 * country. What rounding changed is said, so that a spoon too coarse for a preservative is seen.
 */
import { ok, type Result } from '../foundation/index.ts';
import { amountOf, positiveAmount } from './amount.ts';
import type { KitchenTables } from './kitchen-tables.ts';
import { convert, measureNamed } from './measures.ts';

export interface RoundedMass {
  massG: number;
  /** Rounded over exact, less 1; 0 when nothing was asked for. */
  errorShare: number;
}

export interface SpoonPart {
  measure: string;
  /** In quarters of a cup, halves of a tablespoon, quarters of a teaspoon, as spoon sets come. */
  count: number;
}

export interface SpoonAmount {
  parts: SpoonPart[];
  massG: number;
  errorShare: number;
}

/** To the nearest step of the scale, but never an asked-for ingredient to nothing. */
export function roundToScale(massG: number, scaleStepG: number): RoundedMass {
  if (!positiveAmount(scaleStepG, 'scaleStepG').ok) {
    throw new RangeError(`roundToScale: scaleStepG ${scaleStepG} is not above 0`);
  }
  if (massG === 0) return { massG: 0, errorShare: 0 };
  const steps = Math.max(1, Math.round(massG / scaleStepG));
  const decimals = Math.max(0, Math.ceil(-Math.log10(scaleStepG)));
  const rounded = Number((steps * scaleStepG).toFixed(decimals + 2));
  return { massG: rounded, errorShare: rounded / massG - 1 };
}

/** A mass as cups, tablespoons and teaspoons of `system` (`us`, `metric` or `au`). */
export function asSpoons(
  ingredient: string,
  massG: number,
  system: 'us' | 'metric' | 'au',
  tables: KitchenTables,
): Result<SpoonAmount> {
  const mass = amountOf(massG, 'massG');
  if (!mass.ok) return mass;
  const volume = convert({ amount: massG, from: 'g', to: 'ml', ingredient }, tables);
  if (!volume.ok) return volume;
  const steps = [
    { measure: `${system}-cup`, step: 0.25 },
    { measure: `${system}-tbsp`, step: 0.5 },
    { measure: `${system}-tsp`, step: 0.25 },
  ];
  let leftMl = volume.value.amount;
  const parts: SpoonPart[] = [];
  for (const [i, { measure, step }] of steps.entries()) {
    const content = measureNamed(measure, 'measure', tables);
    if (!content.ok) return content;
    const stepMl = content.value.amount * step;
    const isLast = i === steps.length - 1;
    const taken = isLast
      ? lastSteps(leftMl / stepMl, parts.length === 0 && massG > 0)
      : Math.floor(leftMl / stepMl + 1e-6);
    if (taken > 0) parts.push({ measure, count: taken * step });
    leftMl -= taken * stepMl;
  }
  const roundedG = massG - leftMl * (massG / (volume.value.amount || 1));
  return ok({ parts, massG: roundedG, errorShare: massG === 0 ? 0 : roundedG / massG - 1 });
}

function lastSteps(steps: number, isAtLeastOne: boolean): number {
  const rounded = Math.max(0, Math.round(steps));
  return isAtLeastOne ? Math.max(1, rounded) : rounded;
}
