/**
 * What a cup's pace and yield are made of: the household's mean, its recipe, its place and, for yield,
 * its generation, as the columns of a linear model. A recipe or place that all cups share cannot be
 * told from the household and gets no column.
 */
import type { CupEvidence } from './evidence.ts';
import type { FullPrior } from './priors.ts';

export interface Design {
  /** Cups x columns, row by row. Column 0 is the household. */
  rows: Float64Array;
  columns: number;
  /** Prior sd of each column's coefficient, mean 0. */
  priorSd: Float64Array;
  /** Where the recipes', places' and the generation's columns are. */
  recipes: Map<string, number>;
  places: Map<string, number>;
  generation: number | null;
}

interface Sds {
  household: number;
  recipe: number;
  place: number;
  /** Null: this quantity does not change with generation. */
  generation: number | null;
}

export function paceDesign(cups: readonly CupEvidence[], prior: FullPrior): Design {
  const { householdPaceSd: household, recipePaceSd: recipe, placePaceSd: place } = prior;
  return design(cups, { household, recipe, place, generation: null });
}

export function yieldDesign(cups: readonly CupEvidence[], prior: FullPrior): Design {
  const { householdYieldSd: household, recipeYieldSd: recipe, placeYieldSd: place } = prior;
  return design(cups, { household, recipe, place, generation: prior.generationYieldSd });
}

function design(cups: readonly CupEvidence[], sds: Sds): Design {
  const recipes = levels(cups.map((c) => c.recipe ?? ''));
  const places = levels(cups.map((c) => c.place));
  const middle = middleGeneration(cups);
  const priorSd = [sds.household];
  const column = (sd: number): number => priorSd.push(sd) - 1;
  const recipeColumns = new Map(recipes.map((key) => [key, column(sds.recipe)]));
  const placeColumns = new Map(places.map((key) => [key, column(sds.place)]));
  const generation = sds.generation !== null && middle !== null ? column(sds.generation) : null;
  const rows = new Float64Array(cups.length * priorSd.length);
  cups.forEach((cup, i) => {
    const at = i * priorSd.length;
    rows[at] = 1;
    for (const c of [recipeColumns.get(cup.recipe ?? ''), placeColumns.get(cup.place)]) {
      if (c !== undefined) rows[at + c] = 1;
    }
    if (generation !== null) rows[at + generation] = (cup.generation ?? (middle as number)) - (middle as number);
  });
  return {
    rows,
    columns: priorSd.length,
    priorSd: Float64Array.from(priorSd),
    recipes: recipeColumns,
    places: placeColumns,
    generation,
  };
}

/** Sorted keys when there are at least two, else none. */
function levels(keys: string[]): string[] {
  const distinct = [...new Set(keys)].sort();
  return distinct.length > 1 ? distinct : [];
}

/** Mean generation of the cups that have one, or null when there are not two different ones. */
function middleGeneration(cups: readonly CupEvidence[]): number | null {
  const known = cups.flatMap((c) => (c.generation === null ? [] : [c.generation]));
  if (new Set(known).size < 2) return null;
  return known.reduce((a, b) => a + b, 0) / known.length;
}

/** Row `i` times the coefficients. */
export function fitted(design: Design, i: number, coefficients: Float64Array): number {
  let sum = 0;
  const at = i * design.columns;
  for (let c = 0; c < design.columns; c++) sum += (design.rows[at + c] as number) * (coefficients[c] as number);
  return sum;
}
