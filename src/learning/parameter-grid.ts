/** The cells of log pace and log yield on which each cup's evidence is tabulated. */
import type { FullPrior } from './priors.ts';

export interface Axis {
  size: number;
  first: number;
  step: number;
}

export interface ParameterGrid {
  pace: Axis;
  yield: Axis;
}

/** Half-width of an axis in prior standard deviations of one cup against the books. */
const reachSds = 3.4;

/** How far a household's spread of cups may exceed the prior's middle before the grid cuts it short. */
const widerSpread = 1.6;

/** A grid wide enough for the prior: 33 paces by 53 yields. */
export function parameterGrid(prior: FullPrior): ParameterGrid {
  const cups = widerSpread * prior.cupPaceSd;
  const paceSd = Math.hypot(prior.householdPaceSd, cups, prior.recipePaceSd, prior.placePaceSd);
  const yieldSd = Math.hypot(
    prior.householdYieldSd,
    widerSpread * prior.cupYieldSd,
    prior.sessionYieldSd,
    prior.recipeYieldSd,
    prior.placeYieldSd,
  );
  return { pace: centredAxis(reachSds * paceSd, 33), yield: centredAxis(reachSds * yieldSd, 53) };
}

function centredAxis(reach: number, size: number): Axis {
  return { size, first: -reach, step: (2 * reach) / (size - 1) };
}

/** The value in the middle of cell `index`. */
export function cellValue(axis: Axis, index: number): number {
  return axis.first + index * axis.step;
}

/** The cell that holds `value`; below 0 or from `size` on when it lies outside the axis. */
export function cellOf(axis: Axis, value: number): number {
  return Math.round((value - axis.first) / axis.step);
}
