/**
 * The published figures that the kitchen's arithmetic needs, as plain arguments: whoever calls passes
 * the tables that were read and checked elsewhere.
 */

export type MeasureSystem = 'us' | 'metric' | 'australian' | 'imperial' | 'us-label';

/** A household measure: its content in millilitres, or its mass in grams. */
export interface Measure {
  measure: string;
  name: string;
  system: MeasureSystem;
  quantity: 'ml' | 'g';
  amount: number;
}

export const ingredientKinds = ['dry', 'liquid', 'water', 'live-yeast', 'preservative'] as const;
export type IngredientKind = (typeof ingredientKinds)[number];

/** Bulk density as a spoon or cup holds it, with the range over sources or, with one source, 10 %. */
export interface IngredientDensity {
  ingredient: string;
  name: string;
  kind: IngredientKind;
  gPerMl: number;
  lowGPerMl: number;
  highGPerMl: number;
  source: string;
}

/** Percent of the finished medium: w/v is grams, v/v millilitres, in 100 ml. */
export interface PreservativeRange {
  preservative: string;
  name: string;
  basis: 'w/v' | 'v/v';
  usualLowPercent: number;
  usualHighPercent: number;
  warnAbovePercent: number;
  /** Dose at which harm was measured, and which harm; null where none is published. */
  harmPercent: number | null;
  harm: string;
  source: string;
}

export interface KitchenTables {
  measures: readonly Measure[];
  densities: readonly IngredientDensity[];
  preservatives: readonly PreservativeRange[];
}
