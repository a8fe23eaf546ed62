/** Refuses what no keeper of fly-eaters can mean: weightless or huge animals, frozen or boiled ones, crowds. */
import { failed, ok, type Problem, type Result } from '../foundation/index.ts';

export interface AnimalNumbers {
  massG: number;
  temperatureC: number;
  count: number;
}

interface Limit {
  low: number;
  high: number;
  unit: string;
  reason: string;
}

/** Outside these nothing published supports an answer, or flies are no food. */
export const animalLimits: Record<keyof AnimalNumbers, Limit> = {
  massG: {
    low: 0.0005,
    high: 200,
    unit: 'g',
    reason: 'lighter animals take no adult flies, heavier ones cannot live on them',
  },
  temperatureC: {
    low: 5,
    high: 40,
    unit: 'C',
    reason: 'outside it the equations do not hold, and the animal is in danger',
  },
  count: { low: 0, high: 100_000, unit: 'animals', reason: 'check for a slip of the keyboard' },
};

/** Every number that is out of its limits is a problem with the reason. */
export function checkAnimal(numbers: Partial<AnimalNumbers>): Result<Partial<AnimalNumbers>> {
  const problems: Problem[] = [];
  for (const field of ['massG', 'temperatureC', 'count'] as const) {
    const value = numbers[field];
    if (value === undefined) continue;
    const { low, high, unit, reason } = animalLimits[field];
    if (!(value >= low && value <= high))
      problems.push({ where: field, found: `${value}`, expected: `${low} to ${high} ${unit}: ${reason}` });
  }
  return problems.length > 0 ? failed(...problems) : ok(numbers);
}
