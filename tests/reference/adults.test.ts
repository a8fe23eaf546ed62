/** Adult life, laying, growth, mass and density against open data; sources are in the tables' rows. */
import { describe, expect, test } from 'vitest';
import {
  adultSurvival,
  cultureCourse,
  eggsPerFemaleDay,
  flyMassMg,
  growthRate,
  paceTable,
  rateOfIncrease,
  type StrainLife,
} from '../../src/biology/index.ts';
import {
  type PublishedRow,
  publishedRows,
  source,
  sourceLine,
  strainKeys,
  strainLife,
  strainValues,
} from '../../src/reference/index.ts';

const melanogaster = strainLife('melanogaster') as StrainLife;
const number = (row: PublishedRow | undefined, column: string) => row?.[column] as number;

describe('adult life span', () => {
  // Huang et al. 2020, 70,209 flies of 177 to 186 inbred lines (source key dgrp2020). The Gompertz
  // parameters were fitted to these flies; the means and the survivors are counted, not fitted.
  const both = publishedRows('adult-lifespan').filter((row) => row.sex === 'both');

  test.each(both)('mean at $temperatureC C within 3 % of the counted mean', (row) => {
    let mean = 0;
    for (let age = 0.25; age < 300; age += 0.5)
      mean += 0.5 * adultSurvival(melanogaster, number(row, 'temperatureC'), age, true);
    expect(Math.abs(mean / number(row, 'meanDays') - 1)).toBeLessThan(0.03);
  });

  test.each(both)('survivors at 14, 28 and 42 days at $temperatureC C within .09 of the counted shares', (row) => {
    for (const age of [14, 28, 42]) {
      const alive = adultSurvival(melanogaster, number(row, 'temperatureC'), age, true);
      expect(Math.abs(alive - number(row, `alive${age}`)), `day ${age}`).toBeLessThan(0.09);
    }
  });

  test('males at 25 C live between the shortest and longest of the five groups of 125 males', () => {
    // Partridge and Farquhar 1981: 38.7 days with eight virgins a day, 64.8 with one mated female.
    const means = publishedRows('adult-lifespan')
      .filter((row) => row.source === 'partridge1981')
      .map((row) => number(row, 'meanDays'));
    expect(means).toHaveLength(5);
    let mean = 0;
    for (let age = 0.25; age < 300; age += 0.5) mean += 0.5 * adultSurvival(melanogaster, 25, age, true);
    expect(mean).toBeGreaterThan(Math.min(...means));
    expect(mean).toBeLessThan(Math.max(...means));
  });
});

describe('laying', () => {
  test('the plateau and its decline lie within a third of the counted means, standard and low-yeast food', () => {
    // EGKingLab, 3,657 counts (source key king2020); the curve's parameters were fitted to these, so this
    // guards the transcription, and that no age bin is far off.
    const fresh = { ...melanogaster.laying, cupShare: 1 };
    for (const row of publishedRows('eggs-by-age').filter((r) => r.diet !== 'high sugar' && r.source === 'king2020')) {
      const middle = (number(row, 'fromDay') + number(row, 'toDay') + 1) / 2;
      const ratio = eggsPerFemaleDay(fresh, middle) / number(row, 'eggsPerFemaleDay');
      if (number(row, 'eggsPerFemaleDay') > 5)
        expect(Math.abs(Math.log(ratio)), JSON.stringify(row)).toBeLessThan(0.33);
    }
  });

  test('the first 14 days: 33 eggs a day of unselected females lie between a cup and the best food', () => {
    // Sokal and Rohlf, Biometry: 25 females, mean 33.37, sd 8.94.
    const row = publishedRows('eggs-by-age').find((r) => r.source === 'sokalrohlf1995');
    const mean = (cupShare: number) => {
      const laying = { ...melanogaster.laying, cupShare };
      return Array.from({ length: 14 }, (_, day) => eggsPerFemaleDay(laying, day + 0.5)).reduce((a, b) => a + b) / 14;
    };
    expect(mean(melanogaster.laying.cupShare)).toBeLessThan(number(row, 'eggsPerFemaleDay'));
    expect(mean(1)).toBeGreaterThan(number(row, 'eggsPerFemaleDay'));
  });
});

describe('growth of an uncrowded population (Euler-Lotka)', () => {
  // Published worked examples. Both tables are values from memory; that they are right is seen from their
  // sums, which are the net reproductions that the two sources print.
  test('of rice weevils at 29 C is the .76 a week of Birch 1948 (Journal of Animal Ecology 17, 15)', () => {
    const ages = Array.from({ length: 15 }, (_, i) => 4.5 + i);
    const daughters = [17.4, 19.09, 12.15, 10, 9.875, 10.78, 9.25, 9.57, 6.49, 4.94, 1.125, 0.9, 0.8, 1, 0.19];
    expect(daughters.reduce((a, b) => a + b)).toBeCloseTo(113.56, 6);
    expect(Math.abs(rateOfIncrease(ages, daughters) - 0.76)).toBeLessThan(0.005);
  });

  test('of an annual life table is the .776 of Gotelli, A Primer of Ecology', () => {
    const survivors = [500, 400, 200, 50, 0];
    const births = [0, 2, 3, 1, 0];
    const daughters = births.map((born, age) => (born * (survivors[age] as number)) / 500);
    expect(daughters.reduce((a, b) => a + b)).toBeCloseTo(2.9, 10);
    expect(rateOfIncrease([0, 1, 2, 3, 4], daughters)).toBeCloseTo(0.776, 3);
  });

  test('is the root of the closed form for a constant birth and death rate after a fixed wait', () => {
    // With daughters b a day from birth on, deaths d, and a gamma wait of mean 1/r, shape k:
    // (1 + x / (k r))^-k b / (x + d) = 1. Compared at the root that growthRate gives.
    const k = 1 / melanogaster.developmentCv ** 2;
    const strain: StrainLife = {
      ...melanogaster,
      adult: { ...melanogaster.adult, gompertz: { temperatureC: [25], a: [0.05], b: [1e-6] } },
      laying: { ...melanogaster.laying, firstEggsDays: -40, halfAgeDays: 1e6 },
    };
    const x = growthRate(strain, 25).perDay;
    const rate = strain.developmentRate(25);
    const survivors = 0.5 * 0.87 * Math.exp(-strain.crowding.baseDeaths);
    const daughters = survivors * strain.laying.peakEggsPerDay;
    expect(((1 + x / (k * rate)) ** -k * daughters) / (x + 0.05)).toBeCloseTo(1, 2);
  });

  test('is the growth of the engine itself when medium and room never run out', () => {
    const vast: StrainLife = {
      ...melanogaster,
      adult: { ...melanogaster.adult, cupDeathPerDay: 0 },
      laying: { ...melanogaster.laying, cupShare: 1, halfAdultsPerCm2: 1e40 },
      crowding: { ...melanogaster.crowding, larvaePerCm2: 1e40 },
      medium: { fliesPerG: 1e40, lifeDays: { at: [0], value: [1e9] } },
    };
    const pace = paceTable(vast, new Float64Array(24 * 90).fill(25));
    const rule = { everyDays: 1, share: 0, fromAgeDays: 0 };
    const cup = { founders: 50, founderAgeDays: 5, mediumMassG: 100, surfaceCm2: 85 };
    const { eggsLaid } = cultureCourse(vast, pace, 0, cup, rule, 85, 4);
    const slope = Math.log((eggsLaid[84] as number) / (eggsLaid[64] as number)) / 20;
    const { perDay } = growthRate(vast, 25);
    expect(Math.abs(slope / perDay - 1)).toBeLessThan(0.02);
    // Value from memory: published rates near 25 C lie between .2 and .4 a day; no figure of a source was in reach.
    expect(perDay).toBeGreaterThan(0.2);
    expect(perDay).toBeLessThan(0.4);
    console.log(`r at 25 C: ${perDay.toFixed(3)} a day (engine ${slope.toFixed(3)})`);
  });
});

describe('mass of a fly', () => {
  // Six lines at 25 and 17 C (leiva2019): the parameters are these means; crowding is not fitted to them.
  test.each(publishedRows('fly-mass').filter((row) => row.source === 'leiva2019'))('$sex at $condition', (row) => {
    const temperatureC = Number.parseFloat(row.condition as string);
    const mass = flyMassMg(melanogaster, row.sex as 'female' | 'male', temperatureC);
    expect(Math.abs(mass / number(row, 'massMg') - 1)).toBeLessThan(0.04);
  });

  test('females of two other sources lie within 25 % of it', () => {
    // Lehmann et al. 2000 (.95 mg, 27 flies) and Canton S females (1.10 mg, 10 flies).
    for (const key of ['lehmann2000', 'cantons']) {
      const row = publishedRows('fly-mass').find((r) => r.source === key);
      expect(Math.abs(flyMassMg(melanogaster, 'female', 25) / number(row, 'massMg') - 1)).toBeLessThan(0.25);
    }
  });

  test("an ordinary cup's flies are lighter by what larval density did in vials: a fifth to a third", () => {
    // Singh and Agrawal 2022: high over low density, females .752 and males .791 of the mass.
    const rows = publishedRows('fly-mass').filter((r) => r.source === 'singhagrawal2022');
    const ratio = (sex: string) => {
      const of = (density: string) =>
        number(
          rows.find((r) => r.sex === sex && r.condition === density),
          'massMg',
        );
      return of('high larval density') / of('low larval density');
    };
    const pace = paceTable(melanogaster, new Float64Array(24 * 60).fill(25));
    const cup = { founders: 50, founderAgeDays: 4, mediumMassG: 180, surfaceCm2: 85 };
    const rule = { everyDays: 1, share: 0.5, fromAgeDays: null };
    const { emerged, emergedMassMg } = cultureCourse(melanogaster, pace, 0, cup, rule, 30);
    const sum = emerged.reduce((total, n, day) => total + (n > 0.01 ? n * (emergedMassMg[day] as number) : 0), 0);
    const inCup = sum / emerged.reduce((a, b) => a + b) / flyMassMg(melanogaster, 'mixed', 25);
    expect(inCup).toBeLessThan(1);
    expect(inCup).toBeGreaterThan(0.6);
    expect(Math.abs(inCup - (ratio('female') + ratio('male')) / 2)).toBeLessThan(0.1);
  });
});

describe('founder pairs and their adult offspring in vials', () => {
  test('yield rises with founders less than in proportion, as in D. simulans (Terry et al. 2021)', () => {
    // 1, 3, 9, 15 pairs gave 11, 48, 73, 113 adults. Laying time and medium are not in the data, so the
    // level is not checked; the bend is: pairs 9 to 15 gained 54 % where proportion would be 67 %, and
    // 3 to 15 gained 2.4-fold where proportion would be 5.
    const rows = publishedRows('founder-density');
    const seen = (pairs: number) =>
      number(
        rows.find((row) => row.founderPairs === pairs),
        'adults',
      );
    const pace = paceTable(melanogaster, new Float64Array(24 * 40).fill(25));
    const rule = { everyDays: 1, share: 1, fromAgeDays: 3 };
    const model = (pairs: number) =>
      cultureCourse(
        melanogaster,
        pace,
        0,
        { founders: 2 * pairs, founderAgeDays: 4, mediumMassG: 8, surfaceCm2: 4.9 },
        rule,
        24,
      ).emerged.reduce((a, b) => a + b);
    const bend = (of: (pairs: number) => number) => Math.log(of(15) / of(3)) / Math.log(5);
    console.log(
      `vials: ${[1, 3, 9, 15].map((pairs) => model(pairs).toFixed(0)).join(' ')}, bend ${bend(model).toFixed(2)} seen ${bend(seen).toFixed(2)}`,
    );
    expect(bend(seen)).toBeLessThan(0.6);
    expect(bend(model)).toBeLessThan(1);
    expect(bend(model)).toBeGreaterThan(0);
  });
});

describe('every value has an origin', () => {
  test.each(strainKeys())('%s', (key) => {
    for (const value of strainValues(key)) {
      const entry = source(value.source);
      expect(entry, `${value.quantity}: ${value.source}`).toBeDefined();
      if (entry) expect(sourceLine(entry).length).toBeGreaterThan(10);
      if (value.low !== null && value.high !== null) {
        expect(value.value).toBeGreaterThanOrEqual(value.low);
        expect(value.value).toBeLessThanOrEqual(value.high);
      }
      const fromNowhere = value.source === 'memory' || value.source === 'practice';
      if (fromNowhere) expect(['memory', 'practice'], value.quantity).toContain(value.standing);
    }
  });
});
