/**
 * Household measures: between weight and the spoons and cups of a country. A spoon of a powder is no
 * fixed weight, so every conversion between the two carries the range over published gram weights.
 */
import { failed, ok, type Result } from '../foundation/index.ts';
import { amountOf, problemsOf } from './amount.ts';
import type { IngredientDensity, KitchenTables, Measure } from './kitchen-tables.ts';

export interface ConversionRequest {
  amount: number;
  /** Keys of measures, e.g. `us-tbsp` and `g`. */
  from: string;
  to: string;
  /** Needed when one measure is a volume and the other a mass. */
  ingredient?: string;
}

export interface Conversion {
  amount: number;
  /** The same amount by the lightest and the heaviest published filling; equal when exact. */
  low: number;
  high: number;
  /** The sum as a person would write it. */
  arithmetic: string;
  source: string | null;
}

/**
 * `request.amount` of one measure in another. Refused, with the reason, for a negative amount, an
 * unknown measure, and a step between volume and mass for an ingredient without a density.
 * @example convert({ amount: 2, from: 'us-tbsp', to: 'us-floz' }, tables) // => amount 1
 */
export function convert(request: ConversionRequest, tables: KitchenTables): Result<Conversion> {
  const amount = amountOf(request.amount, 'amount');
  const from = measureNamed(request.from, 'from', tables);
  const to = measureNamed(request.to, 'to', tables);
  if (!amount.ok || !from.ok || !to.ok) return failed(...problemsOf(amount, from, to));
  const inUnit = amount.value * from.value.amount;
  if (from.value.quantity === to.value.quantity) return ok(exactly(request, inUnit, from.value, to.value));
  const density = densityNamed(request.ingredient, tables);
  return density.ok ? ok(byDensity(request, inUnit, from.value, to.value, density.value)) : density;
}

/** Grams of an amount by any measure. */
export function toGrams(
  line: { ingredient: string; amount: number; measure: string },
  tables: KitchenTables,
): Result<Conversion> {
  return convert({ amount: line.amount, from: line.measure, to: 'g', ingredient: line.ingredient }, tables);
}

/** The density of an ingredient, or why there is none. */
export function densityNamed(ingredient: string | undefined, tables: KitchenTables): Result<IngredientDensity> {
  const density = tables.densities.find((d) => d.ingredient === ingredient);
  if (density) return ok(density);
  const found = ingredient ? `${ingredient}, for which no gram weight is known` : 'no ingredient';
  return failed({ where: 'ingredient', found, expected: 'a weight in g, or an ingredient of the table of densities' });
}

export function measureNamed(key: string, where: string, tables: KitchenTables): Result<Measure> {
  const measure = tables.measures.find((m) => m.measure === key);
  const expected = `one of ${tables.measures.map((m) => m.measure).join(', ')}`;
  return measure ? ok(measure) : failed({ where, found: `"${key}"`, expected });
}

function exactly(request: ConversionRequest, inUnit: number, from: Measure, to: Measure): Conversion {
  const amount = inUnit / to.amount;
  const arithmetic = `${request.amount} x ${from.amount} ${from.quantity} / ${to.amount} ${to.quantity} = ${short(amount)}`;
  return { amount, low: amount, high: amount, arithmetic, source: null };
}

function byDensity(
  request: ConversionRequest,
  inUnit: number,
  from: Measure,
  to: Measure,
  density: IngredientDensity,
): Conversion {
  const isToMass = to.quantity === 'g';
  const at = (gPerMl: number) => (isToMass ? inUnit * gPerMl : inUnit / gPerMl) / to.amount;
  const ends = [at(density.lowGPerMl), at(density.highGPerMl)];
  const amount = at(density.gPerMl);
  const step = `${isToMass ? 'x' : '/'} ${short(density.gPerMl)} g/ml`;
  return {
    amount,
    low: Math.min(...ends),
    high: Math.max(...ends),
    arithmetic: `${request.amount} x ${from.amount} ${from.quantity} ${step} / ${to.amount} ${to.quantity} = ${short(amount)}`,
    source: density.source,
  };
}

/** Four significant digits, without an exponent for kitchen amounts. */
export function short(value: number): string {
  return String(Number(value.toPrecision(4)));
}
