/** Flies in a pot by its weight before and after, with their spread. */
import { fliesInPot, mixedFlyMass, type WeighedFlies } from '../animals/index.ts';
import { type Day, failed, ok, type Problem, type Result } from '../foundation/index.ts';
import type { Facts } from '../logbook/index.ts';
import { flySizeNow } from './animals/fly-size.ts';

export interface FlyPotQuestion {
  on: Day;
  strain: string;
  /** The pot with the flies, and without them. */
  fullMg: number;
  emptyMg: number;
  /** Smallest step of the scale. */
  scaleStepMg: number;
  /** Warmth in which the flies grew up, C; 23 when left out. */
  rearedC?: number;
}

/** Females are half as heavy again as males, and single flies of a sex differ by a tenth (leiva2019). */
const spreadOfFlies = mixedFlyMass({ meanMg: 1.172, sdMg: 0.132 }, { meanMg: 0.773, sdMg: 0.075 });
const relativeSpread = spreadOfFlies.sdMg / spreadOfFlies.meanMg;
/** A range that is taken to hold in nine cases of ten is 2 x 1.645 sds wide. */
const rangeInSds = 3.29;

export function flyPot(facts: Facts, question: FlyPotQuestion): Result<WeighedFlies> {
  const { on, strain, fullMg, emptyMg, scaleStepMg, rearedC = 23 } = question;
  const mass = flySizeNow(facts, strain, on, rearedC)?.nowMg;
  const problems: Problem[] = [];
  if (!mass) problems.push({ where: 'strain', found: strain, expected: 'a strain of the household or of the books' });
  if (!(emptyMg >= 0 && fullMg >= emptyMg && fullMg <= 1e7))
    problems.push({
      where: 'fullMg',
      found: `${fullMg}`,
      expected: `no less than the empty pot, ${emptyMg} mg, and under 10 kg`,
    });
  if (!(scaleStepMg > 0 && scaleStepMg <= 10_000))
    problems.push({ where: 'scaleStepMg', found: `${scaleStepMg}`, expected: 'above 0, up to 10 g' });
  if (!(rearedC >= 5 && rearedC <= 40)) problems.push({ where: 'rearedC', found: `${rearedC}`, expected: '5 to 40 C' });
  if (!mass || problems.length > 0) return failed(...problems);
  const meanMg = (mass.low + mass.high) / 2;
  const fly = { meanMg, sdMg: meanMg * relativeSpread, meanSdMg: (mass.high - mass.low) / rangeInSds };
  // A reading is rounded to a step: uniform over one, sd a step over the root of twelve.
  return ok(fliesInPot(fullMg, emptyMg, scaleStepMg / Math.sqrt(12), fly));
}
