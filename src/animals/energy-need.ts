/**
 * An animal's daily need reckoned from its metabolism: rate at rest by every equation that covers it, times
 * activity, plus growth, over what a milligram of fly gives. A check beside practice, not a ration.
 */
import { failed, ok, type Result } from '../foundation/index.ts';
import { checkAnimal } from './animal-check.ts';
import { covers, type EnergyEquation, metabolicRateW } from './metabolic-rate.ts';
import { dividedBy, plus, type Range, rangeOf, times } from './range.ts';

export interface EnergyNeedInput {
  massG: number;
  temperatureC: number;
  /** Equations of the animal's taxon. */
  equations: readonly EnergyEquation[];
  /** Daily energy over the rate at rest; field equations have it in them. */
  activity: { low: number; high: number };
  /** Body mass gained a day, g; 0 for a grown animal. */
  growthGPerDay: number;
  /** Food energy for a gram gained; `growthJoulePerG` when left out. */
  growthCost?: Range;
  /** Share of the diet that is flies, above 0 to 1. */
  flyShare: number;
  /** Usable energy of flies, J per mg. */
  joulePerMg: Range;
}

export interface EnergyNeed {
  /** J a day by each equation, field or at rest, before activity and growth. */
  byEquation: { equation: string; kind: 'resting' | 'field'; joulePerDay: number }[];
  /** All that the animal needs a day. */
  joulePerDay: Range;
  /** Fresh flies a day, for the flies' share of the diet. */
  flyMgPerDay: Range;
}

/** Usual multiples of the rate at rest; values from memory, for animals that sit and wait. */
export const usualActivity = { low: 1.5, high: 2 };

/**
 * Energy laid down in a gram of new body (4.5 kJ) over the share of food energy that gets there (0.5 to 0.75);
 * both from memory.
 */
export const growthJoulePerG: Range = rangeOf(4500 / 0.75, 4500 / 0.5);

/** The same where a share of prey mass becomes body: mantises 0.40 to 0.58 (hurd-1991). */
export function growthCostOfPrey(share: { low: number; high: number }, joulePerMg: Range): Range {
  return times(rangeOf(1000 / share.high, 1000 / share.low), joulePerMg);
}

const secondsPerDay = 86_400;

/** Problems: numbers out of their limits, or no equation that covers the animal. */
export function energyNeed(input: EnergyNeedInput): Result<EnergyNeed> {
  const { massG, temperatureC, equations, activity, growthGPerDay, flyShare, joulePerMg } = input;
  const { growthCost = growthJoulePerG } = input;
  if (!(flyShare > 0 && flyShare <= 1)) throw new RangeError(`energyNeed: flyShare ${flyShare} is not above 0 to 1`);
  if (!(growthGPerDay >= 0)) throw new RangeError(`energyNeed: growthGPerDay ${growthGPerDay} is not 0 or more`);
  const checked = checkAnimal({ massG, temperatureC });
  if (!checked.ok) return checked;
  const fitting = equations.filter((equation) => covers(equation, massG, temperatureC));
  if (fitting.length === 0)
    return failed({
      where: 'equations',
      found: `none for ${massG} g at ${temperatureC} C`,
      expected: 'an animal for which an equation is published',
    });
  const byEquation = fitting.map((equation) => ({
    equation: equation.equation,
    kind: equation.kind,
    joulePerDay: metabolicRateW(equation, massG, temperatureC) * secondsPerDay,
  }));
  const bounds = byEquation.flatMap(({ kind, joulePerDay }) =>
    kind === 'field' ? [joulePerDay] : [joulePerDay * activity.low, joulePerDay * activity.high],
  );
  const growth = times(rangeOf(growthGPerDay, growthGPerDay), growthCost);
  const joulePerDay = plus(rangeOf(Math.min(...bounds), Math.max(...bounds)), growth);
  return ok({
    byEquation,
    joulePerDay,
    flyMgPerDay: dividedBy(times(joulePerDay, rangeOf(flyShare, flyShare)), joulePerMg),
  });
}
