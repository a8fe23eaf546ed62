/**
 * Flies with longer wings in a flightless line: heat and some food lengthen the wings of mutants that are
 * still mutants. Before culling, cool and look again.
 */
import { type DayNumber, type Said, said } from '../foundation/index.ts';

/** A known effect on the wings of one mutant; see data/wing-temperature.csv. */
export interface WingEffect {
  symbol: string;
  unit: string;
  low: number | null;
  high: number | null;
  /** Share that looks winged under the condition; null where no source gives it. */
  wingedLookingShare: number | null;
  effect: string;
  source: string;
}

export interface WingCheckInput {
  /** Symbol of the line's mutation, or `unknown`. */
  symbol: string;
  /** Temperature in which these flies grew up, C. */
  rearedC: number;
  methylparabenPercent: number | null;
  onDay: DayNumber;
  /** Days of a generation in the cool, e.g. at 22 C. */
  coolGenerationDays: number;
  effects: readonly WingEffect[];
}

export interface WingCheck {
  verdict: 'condition explains it' | 'not explained' | 'not known for this mutation';
  effects: WingEffect[];
  /** Share of winged-looking flies to expect; null where no source gives one. */
  expectedShare: number | null;
  /** The day to look again at flies reared in the cool; null when there is no reason to wait. */
  lookAgainOn: DayNumber | null;
  todo: Said[];
}

export function wingCheck(input: WingCheckInput): WingCheck {
  const ofMutant = input.effects.filter((effect) => effect.symbol === input.symbol);
  const held = ofMutant.filter((effect) => holds(effect, input));
  const lengthening = held.filter((effect) => effect.wingedLookingShare !== 0);
  if (ofMutant.length === 0)
    return {
      verdict: 'not known for this mutation',
      effects: [],
      expectedShare: null,
      lookAgainOn: input.onDay + Math.ceil(input.coolGenerationDays),
      todo: [
        said`No source says how warmth changes this strain. Take winged flies out and keep them apart.`,
        said`Rear a cup from flightless ones at ${{ degreesC: 20, whole: true, bare: true }} to ${{ degreesC: 24, whole: true }} and look again at its offspring.`,
      ],
    };
  return lengthening.length > 0 ? explained(input, lengthening) : notExplained(held);
}

function holds({ unit, low, high }: WingEffect, { rearedC, methylparabenPercent }: WingCheckInput): boolean {
  const value = unit === 'C' ? rearedC : methylparabenPercent;
  return (
    value !== null &&
    value >= (low ?? Number.NEGATIVE_INFINITY) &&
    (high === null || value < high || (low !== null && value === high))
  );
}

function explained({ onDay, coolGenerationDays }: WingCheckInput, effects: WingEffect[]): WingCheck {
  return {
    verdict: 'condition explains it',
    effects,
    expectedShare: effects.length === 1 ? (effects[0]?.wingedLookingShare ?? null) : null,
    lookAgainOn: onDay + Math.ceil(coolGenerationDays),
    todo: [
      said`Do not cull yet: cool the cups to ${{ degreesC: 20, whole: true, bare: true }} to ${{ degreesC: 24, whole: true }}.`,
      said`Look again at flies that grew up in the cool. Wings as before: it was the warmth or the food. Still winged: treat it as a stranger in the line.`,
    ],
  };
}

function notExplained(effects: WingEffect[]): WingCheck {
  return {
    verdict: 'not explained',
    effects,
    expectedShare: effects.some((effect) => effect.wingedLookingShare === 0) ? 0 : null,
    lookAgainOn: null,
    todo: [said`At this temperature the mutant keeps its wings short: treat a winged fly as a stranger in the line.`],
  };
}
