import * as fc from 'fast-check';
import { describe, expect, it } from 'vitest';
import { publishedDensities } from '../reference/ingredient-densities.ts';
import { publishedMeasures } from '../reference/measures.ts';
import { publishedPreservatives } from '../reference/preservatives.ts';
import {
  amountForDose,
  asSpoons,
  checkRecipe,
  convert,
  cupsFromStock,
  doseOfAmount,
  type KitchenTables,
  type Recipe,
  recipeFromLines,
  recipeMassG,
  roundToScale,
  scaleToCups,
  waterRatio,
} from './index.ts';

const tables: KitchenTables = {
  measures: publishedMeasures,
  densities: publishedDensities,
  preservatives: publishedPreservatives,
};
const mix: Recipe = {
  recipe: 'mix',
  name: 'Mix',
  ingredients: [
    { ingredient: 'oat-flour', massG: 150 },
    { ingredient: 'sugar', massG: 50 },
  ],
  waterMl: 300,
};

describe('bad input is refused with its reason', () => {
  const where = (result: { ok: boolean; problems?: { where: string; found: string }[] }) =>
    result.ok ? 'accepted' : result.problems?.map((p) => `${p.where}: ${p.found}`).join('; ');
  it('a negative amount', () => expect(where(convert({ amount: -1, from: 'g', to: 'kg' }, tables))).toBe('amount: -1'));
  it('an unknown measure', () =>
    expect(where(convert({ amount: 1, from: 'handful', to: 'g' }, tables))).toBe('from: "handful"'));
  it('volume of an ingredient without a density', () =>
    expect(where(convert({ amount: 1, from: 'us-cup', to: 'g', ingredient: 'agar' }, tables))).toContain('agar'));
  it('but its weight is fine', () =>
    expect(convert({ amount: 1, from: 'g', to: 'kg', ingredient: 'agar' }, tables).ok).toBe(true));
  it('a recipe with a negative mass, an ingredient twice, or nothing', () => {
    const bad = { ...mix, ingredients: [...mix.ingredients, { ingredient: 'sugar', massG: -2 }] };
    expect(where(checkRecipe(bad))).toBe('recipe mix, sugar, massG: -2; recipe mix, sugar: the ingredient twice');
    expect(where(checkRecipe({ ...mix, ingredients: [], waterMl: 0 }))).toContain('nothing in it');
  });
  it('lines that cannot be weighed, each with its number', () => {
    const lines = [
      { ingredient: 'agar', amount: 1, measure: 'us-tsp' },
      { ingredient: 'sugar', amount: Number.NaN, measure: 'g' },
    ];
    expect(where(recipeFromLines('r', 'R', lines, tables))).toMatch(/^line 1, ingredient: agar.*line 2, amount: NaN/);
  });
  it('no cups, a loss of everything, a volume of nothing, a stock solution of 120 %', () => {
    expect(where(scaleToCups(mix, 0, { mediumMassG: 100, lossShare: 0 }))).toBe('cups: 0');
    expect(where(scaleToCups(mix, 1, { mediumMassG: 100, lossShare: 1 }))).toBe('lossShare: 1');
    const dose = { preservative: 'methylparaben', percent: 0.1, finishedVolumeMl: 0, stockPercent: 120 };
    expect(where(amountForDose(dose, tables))).toBe('finishedVolumeMl: 0; stockPercent: 120');
  });
});

describe('conversion', () => {
  const measures = publishedMeasures.map((m) => m.measure);
  it('there and back is the same amount, by weight and by volume', () => {
    fc.assert(
      fc.property(
        fc.constantFrom(...measures),
        fc.constantFrom(...measures),
        fc.double({ min: 0.01, max: 1e4, noNaN: true }),
        (from, to, amount) => {
          const there = convert({ amount, from, to, ingredient: 'sugar' }, tables);
          const back =
            there.ok && convert({ amount: there.value.amount, from: to, to: from, ingredient: 'sugar' }, tables);
          return back !== false && back.ok && Math.abs(back.value.amount / amount - 1) < 1e-9;
        },
      ),
    );
  });
  it('says the range of a powder and shows the sum', () => {
    const cup = convert({ amount: 2, from: 'us-cup', to: 'g', ingredient: 'potato-flakes' }, tables);
    expect(cup.ok && [cup.value.low, cup.value.high].map(Math.round)).toEqual([120, 172]);
    expect(cup.ok && cup.value.source).toBe('usda-sr28');
    expect(cup.ok && cup.value.arithmetic).toBe('2 x 236.5882365 ml x 0.2536 g/ml / 1 g = 120');
  });
});

describe('scaling', () => {
  it('adds what is lost on the way: 10 cups of 90 g at 10 % loss are 1,000 g', () => {
    const scaled = scaleToCups(mix, 10, { mediumMassG: 90, lossShare: 0.1 });
    expect(scaled.ok && scaled.value.mixedMassG).toBeCloseTo(1000, 9);
    expect(scaled.ok && recipeMassG(scaled.value.recipe)).toBeCloseTo(1000, 9);
    expect(scaled.ok && scaled.value.recipe.waterMl).toBeCloseTo(600, 9);
  });
  it('to what is on hand: 400 g of flour make 13 cups of 100 g, sugar for 15', () => {
    // Of 500 g, flour is 150 and sugar 50: 30 g and 10 g in a cup of 100 g.
    const stock = [
      { ingredient: 'oat-flour', massG: 400 },
      { ingredient: 'sugar', massG: 150 },
    ];
    const onHand = cupsFromStock(mix, stock, { mediumMassG: 100, lossShare: 0 });
    expect(onHand.ok && onHand.value.cups).toBe(13);
    expect(onHand.ok && onHand.value.limitedBy).toBe('oat-flour');
    expect(onHand.ok && onHand.value.byIngredient.map((i) => Math.round(i.leftG))).toEqual([10, 20]);
  });
  it('what the stock does not name is not there', () => {
    const onHand = cupsFromStock(mix, [{ ingredient: 'oat-flour', massG: 400 }], { mediumMassG: 100, lossShare: 0 });
    expect(onHand.ok && [onHand.value.cups, onHand.value.limitedBy]).toEqual([0, 'sugar']);
  });
  it('water to dry: 300 on 200 g is 1.5 by weight', () => {
    const ratio = waterRatio(mix, tables);
    expect(ratio.ok && ratio.value.byMass).toBeCloseTo(1.5, 12);
    // 150 g at 104 g a cup and 50 g at 200 g a cup are 1.692 cups, 400.4 ml.
    expect(ratio.ok && ratio.value.byVolume).toBeCloseTo(300 / 400.4, 3);
  });
});

describe('doses', () => {
  it('exactly the limit is not above it', () => {
    const dose = (percent: number) =>
      amountForDose({ preservative: 'methylparaben', percent, finishedVolumeMl: 700 }, tables);
    const verdicts = [0.05, 0.07, 0.2, 0.201, 0.76].map((percent) => {
      const result = dose(percent);
      return result.ok ? result.value.verdict : 'refused';
    });
    expect(verdicts).toEqual(['below-usual', 'usual', 'usual', 'high', 'harmful']);
  });
  it('a dose that is warned of is still given, with the sum', () => {
    const dose = amountForDose({ preservative: 'propionic-acid', percent: 2, finishedVolumeMl: 1000 }, tables);
    expect(dose.ok && dose.value.amount).toBe(20);
    expect(dose.ok && dose.value.arithmetic).toBe('2 % of 1000 ml = 20 ml');
    expect(dose.ok && dose.value.warnings[0]).toContain('larvae die');
  });
  it('from a stock solution: 14 ml of 10 % in 1,000 ml', () => {
    const dose = doseOfAmount(
      { preservative: 'methylparaben', amount: 14, finishedVolumeMl: 1000, stockPercent: 10 },
      tables,
    );
    expect(dose.ok && dose.value.percent).toBeCloseTo(0.14, 12);
    expect(dose.ok && dose.value.arithmetic).toBe('14 ml x 10 % = 1.4 g / 1000 ml = 0.14 %; from a 10 % stock: 14 ml');
  });
});

describe('rounding', () => {
  it('to the step of the scale, never to nothing', () => {
    expect(roundToScale(12.4, 1)).toMatchObject({ massG: 12 });
    expect(roundToScale(1.234, 0.1).massG).toBe(1.2);
    const small = roundToScale(0.3, 1);
    expect(small.massG).toBe(1);
    expect(small.errorShare).toBeCloseTo(2.333, 3);
  });
  it('to cups and spoons as they come', () => {
    const sugar = asSpoons('sugar', 287.5, 'us', tables);
    // 200 g a cup, 12.5 g a tablespoon: a cup and a quarter, three tablespoons.
    expect(sugar.ok && sugar.value.parts).toEqual([
      { measure: 'us-cup', count: 1.25 },
      { measure: 'us-tbsp', count: 3 },
    ]);
    expect(sugar.ok && sugar.value.errorShare).toBeCloseTo(0, 9);
  });
  it('a pinch becomes a quarter teaspoon and says how far off that is', () => {
    const yeast = asSpoons('active-dry-yeast', 0.1, 'metric', tables);
    expect(yeast.ok && yeast.value.parts).toEqual([{ measure: 'metric-tsp', count: 0.25 }]);
    expect(yeast.ok && yeast.value.errorShare).toBeGreaterThan(5);
  });
  it('within half the smallest spoon, always', () => {
    fc.assert(
      fc.property(fc.double({ min: 1.25, max: 3000, noNaN: true }), (massG) => {
        const spoons = asSpoons('sugar', massG, 'au', tables);
        return spoons.ok && Math.abs(spoons.value.massG - massG) <= 0.5 * 1.25 * 0.846;
      }),
    );
  });
});
