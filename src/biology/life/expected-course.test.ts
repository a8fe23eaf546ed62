import { describe, expect, test } from 'vitest';
import { strainLife } from '../../reference/index.ts';
import type { CultureCourse, StrainLife } from '../culture.ts';
import { cultureCourse } from './course.ts';
import { expectedCourse, manyFounders } from './expected-course.ts';
import { paceTable } from './pace.ts';

const melanogaster = strainLife('melanogaster') as StrainLife;
const pace = paceTable(melanogaster, new Float64Array(24 * 40).fill(24));
const cup = { founderAgeDays: 4, mediumMassG: 180, surfaceCm2: 85 };
const rule = { everyDays: 1, share: 0.5, fromAgeDays: 12 };
const total = ({ emerged }: CultureCourse) => emerged.reduce((sum, flies) => sum + flies, 0);
const courseOf = (founders: number) => cultureCourse(melanogaster, pace, 0, { ...cup, founders }, rule, 29);
const expectedOf = (founders: number) => expectedCourse(melanogaster, pace, 0, { ...cup, founders }, rule, 29);

/** Mean over all numbers of females that a throw of `founders` coins gives, and over longer and shorter lives. */
function byEverySex(founders: number): number {
  const lives = Math.sqrt(0.5 / founders);
  let mean = 0;
  let ways = 1;
  for (let females = 0; females <= founders; females += 1) {
    const chance = ways / 2 ** founders;
    const laying = 2 * females;
    mean += (chance / 2) * (total(courseOf(laying * (1 - lives))) + total(courseOf(laying * (1 + lives))));
    ways *= (founders - females) / (females + 1);
  }
  return mean;
}

describe('few founders: the mean over chance lies below the course of the mean', () => {
  test.each([2, 4, 8, 20])(
    '%i founders: as by every number of females and two lengths of life, to a hundredth',
    (founders) => {
      const exact = byEverySex(founders);
      expect(Math.abs(total(expectedOf(founders)) / exact - 1)).toBeLessThan(0.01);
      expect(exact).toBeLessThan(0.985 * total(courseOf(founders)));
    },
  );

  test('at many founders both are the same; just below they differ by less than half a per cent', () => {
    expect(expectedOf(manyFounders)).toEqual(courseOf(manyFounders));
    const below = total(expectedOf(manyFounders - 1)) / total(courseOf(manyFounders - 1));
    expect(below).toBeLessThan(1);
    expect(below).toBeGreaterThan(0.995);
  });

  test('founders and medium are counted as they are, mass is a mean of the masses, none of no flies', () => {
    const [expected, plain] = [expectedOf(6), courseOf(6)];
    expect(expected.foundersAlive[5]).toBeCloseTo(plain.foundersAlive[5] as number, 2);
    expect(expected.mediumLeft[0]).toBe(1);
    expect(expected.emergedMassMg[0]).toBeNaN();
    const few = courseOf(0.1).emergedMassMg[20] as number;
    const many = courseOf(20).emergedMassMg[20] as number;
    expect(expected.emergedMassMg[20]).toBeLessThan(few);
    expect(expected.emergedMassMg[20]).toBeGreaterThan(many);
    expect(total(expectedCourse(melanogaster, pace, 0, { ...cup, founders: 0 }, rule, 29))).toBe(0);
  });
});
