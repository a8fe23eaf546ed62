/**
 * What a cup's pace and yield are made of: the household's mean, its recipe, its place and, for yield,
 * its generation and the number of its founders, as the columns of a linear model. A recipe or place
 * that all cups share cannot be told from the household and gets no column.
 */
import type { CupEvidence } from './evidence.ts';
import type { FullPrior } from './priors.ts';

export interface Design {
  /** Cups x columns, row by row. Column 0 is the household. */
  rows: Float64Array;
  columns: number;
  /** Prior sd of each column's coefficient, mean 0. */
  priorSd: Float64Array;
  /** Where the recipes' and places' columns are. */
  recipes: Map<string, number>;
  places: Map<string, number>;
  /** Columns of the slopes, by name; those that the log can tell something about. */
  slopes: Map<SlopeName, number>;
}

/** `generation`: log yield per generation. `founders`: log yield when the founders are doubled. */
export type SlopeName = 'generation' | 'founders';

interface Slope {
  name: SlopeName;
  sd: number;
  of: (cup: CupEvidence) => number | null;
}

interface Parts {
  household: number;
  recipe: number;
  place: number;
  slopes: Slope[];
}

export function paceDesign(cups: readonly CupEvidence[], prior: FullPrior): Design {
  const { householdPaceSd: household, recipePaceSd: recipe, placePaceSd: place } = prior;
  return design(cups, { household, recipe, place, slopes: [] });
}

export function yieldDesign(cups: readonly CupEvidence[], prior: FullPrior): Design {
  const { householdYieldSd: household, recipeYieldSd: recipe, placeYieldSd: place } = prior;
  const slopes: Slope[] = [
    { name: 'generation', sd: prior.generationYieldSd, of: (cup) => cup.generation },
    { name: 'founders', sd: prior.foundersYieldSd, of: (cup) => (cup.founders ? Math.log2(cup.founders) : null) },
  ];
  return design(cups, { household, recipe, place, slopes });
}

function design(cups: readonly CupEvidence[], parts: Parts): Design {
  const priorSd = [parts.household];
  const entries: ((cup: CupEvidence) => number)[] = [() => 1];
  const column = (sd: number, entry: (cup: CupEvidence) => number): number => {
    entries.push(entry);
    return priorSd.push(sd) - 1;
  };
  const levelColumns = (keyOf: (cup: CupEvidence) => string, sd: number) =>
    new Map(levels(cups.map(keyOf)).map((key) => [key, column(sd, (cup) => (keyOf(cup) === key ? 1 : 0))]));
  const recipes = levelColumns(recipeOf, parts.recipe);
  const places = levelColumns(placeOf, parts.place);
  const slopes = new Map<SlopeName, number>();
  for (const slope of parts.slopes) {
    const middle = middleOf(cups.map(slope.of));
    if (middle !== null)
      slopes.set(
        slope.name,
        column(slope.sd, (cup) => (slope.of(cup) ?? middle) - middle),
      );
  }
  const rows = Float64Array.from(cups.flatMap((cup) => entries.map((entry) => entry(cup))));
  return { rows, columns: priorSd.length, priorSd: Float64Array.from(priorSd), recipes, places, slopes };
}

/** A cup without a recipe belongs to the recipe ''. */
export function recipeOf(cup: CupEvidence): string {
  return cup.recipe ?? '';
}

export function placeOf(cup: CupEvidence): string {
  return cup.place;
}

/** Sorted keys when there are at least two, else none. */
function levels(keys: string[]): string[] {
  const distinct = [...new Set(keys)].sort();
  return distinct.length > 1 ? distinct : [];
}

/** Mean of the known values, or null when no two of them differ. */
function middleOf(values: (number | null)[]): number | null {
  const known = values.filter((v) => v !== null);
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
