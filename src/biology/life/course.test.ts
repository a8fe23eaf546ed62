import fc from 'fast-check';
import { describe, expect, test } from 'vitest';
import { strainLife } from '../../reference/index.ts';
import type { CultureConditions, CultureCourse, HarvestRule, StrainLife } from '../culture.ts';
import { cultureDates } from '../yield/dates.ts';
import { cultureCourse } from './course.ts';
import { paceTable } from './pace.ts';

const melanogaster = strainLife('melanogaster') as StrainLife;
const hydei = strainLife('hydei') as StrainLife;
const cup: CultureConditions = { founders: 50, founderAgeDays: 4, mediumMassG: 180, surfaceCm2: 85 };
const daily: HarvestRule = { everyDays: 1, share: 0.5, fromAgeDays: null };
const constant = (temperatureC: number, days = 100) => new Float64Array(24 * days).fill(temperatureC);
const total = (series: Float64Array) => series.reduce((sum, value) => sum + value, 0);
const emergedBySpent = (strain: StrainLife, temperatureC: number, conditions = cup, harvest = daily) => {
  const pace = paceTable(strain, constant(temperatureC));
  const course = cultureCourse(strain, pace, 0, conditions, harvest, 80);
  const dates = cultureDates(strain, pace, 0, course);
  return { flies: total(course.emerged.subarray(0, Math.floor(dates.spent))), dates, course };
};

describe('an ordinary cup is what keepers have (common practice, no source)', () => {
  test.each([22, 23, 24, 25])('melanogaster at %i C', (temperatureC) => {
    const { flies, dates, course } = emergedBySpent(melanogaster, temperatureC);
    expect(flies).toBeGreaterThan(500);
    expect(flies).toBeLessThan(1500);
    expect(dates.firstAdults).toBeGreaterThan(8.9);
    expect(dates.firstAdults).toBeLessThan(14);
    expect(dates.spent).toBeGreaterThanOrEqual(27);
    expect(dates.spent).toBeLessThanOrEqual(36);
    // At its best for about a week: days with at least 70 % of the best day's flies.
    const best = Math.max(...course.emerged);
    const atBest = course.emerged.filter((flies) => flies > 0.7 * best).length;
    expect(atBest).toBeGreaterThanOrEqual(5);
    expect(atBest).toBeLessThanOrEqual(11);
  });

  test('hydei runs about half as long again, with fewer flies', () => {
    const { flies, dates } = emergedBySpent(hydei, 23, { ...cup, founderAgeDays: 12 });
    expect(flies).toBeGreaterThan(250);
    expect(flies).toBeLessThan(650);
    expect(dates.firstAdults).toBeGreaterThan(18);
    expect(dates.firstAdults).toBeLessThan(23);
    expect(dates.spent).toBeGreaterThan(42);
    expect(dates.spent).toBeLessThan(50);
  });

  test('half of the founders are gone by day 10 to 14', () => {
    const none: HarvestRule = { everyDays: 1, share: 0, fromAgeDays: null };
    const { course } = emergedBySpent(melanogaster, 24, cup, none);
    const half = course.foundersAlive.findIndex((alive) => alive < 25);
    expect(half).toBeGreaterThanOrEqual(9);
    expect(half).toBeLessThanOrEqual(14);
  });

  test('hydei founders that are too young lay late', () => {
    const first = (founderAgeDays: number) => emergedBySpent(hydei, 23, { ...cup, founderAgeDays }).dates.firstAdults;
    expect(first(2) - first(12)).toBeGreaterThan(3);
  });

  test('young founders from a peak give more than old ones from a spent cup', () => {
    const few = { ...cup, founders: 15 };
    const young = emergedBySpent(melanogaster, 23, { ...few, founderAgeDays: 4 }).flies;
    const old = emergedBySpent(melanogaster, 23, { ...few, founderAgeDays: 40 }).flies;
    expect(old).toBeLessThan(0.9 * young);
  });
});

describe('crowding', () => {
  test('20, 50 and 200 founders give different cups: more flies, then fewer and lighter ones', () => {
    const [twenty, fifty, many] = [20, 50, 200].map((founders) =>
      emergedBySpent(melanogaster, 24, { ...cup, founders }),
    ) as [ReturnType<typeof emergedBySpent>, ReturnType<typeof emergedBySpent>, ReturnType<typeof emergedBySpent>];
    expect(fifty.flies).toBeGreaterThan(1.05 * twenty.flies);
    expect(many.flies).toBeLessThan(fifty.flies);
    const mass = (one: typeof twenty) => {
      const { emerged, emergedMassMg } = one.course;
      return emerged.reduce((sum, n, day) => sum + (n > 1 ? n * (emergedMassMg[day] as number) : 0), 0) / one.flies;
    };
    expect(mass(many)).toBeLessThan(mass(twenty));
  });

  test('more medium and more surface give more flies', () => {
    const base = emergedBySpent(melanogaster, 24).flies;
    expect(emergedBySpent(melanogaster, 24, { ...cup, mediumMassG: 240 }).flies).toBeGreaterThan(base);
    expect(emergedBySpent(melanogaster, 24, { ...cup, surfaceCm2: 60 }).flies).toBeLessThan(base);
  });

  test('what is harvested changes what comes later: flies left in the cup lay the next generation', () => {
    const none = emergedBySpent(melanogaster, 24, cup, { everyDays: 1, share: 0, fromAgeDays: null }).course;
    const all = emergedBySpent(melanogaster, 24, cup, { everyDays: 1, share: 1, fromAgeDays: null }).course;
    expect(total(none.eggsLaid.subarray(12))).toBeGreaterThan(1.3 * total(all.eggsLaid.subarray(12)));
    const every3 = emergedBySpent(melanogaster, 24, cup, { everyDays: 3, share: 1, fromAgeDays: null }).course;
    expect(total(every3.eggsLaid)).toBeGreaterThan(total(all.eggsLaid));
  });
});

describe('heat and cold', () => {
  test('at 32 C next to nothing comes of it, at 10 C nothing within 60 days', () => {
    expect(emergedBySpent(melanogaster, 32).flies).toBeLessThan(20);
    expect(emergedBySpent(melanogaster, 10).flies).toBeLessThan(1);
  });

  test('a hot afternoon of 38 C kills the young', () => {
    const hot = constant(24);
    hot.fill(38, 24 * 6 + 12, 24 * 6 + 17);
    const pace = paceTable(melanogaster, hot);
    const course = cultureCourse(melanogaster, pace, 0, cup, daily, 12);
    const calm = cultureCourse(melanogaster, paceTable(melanogaster, constant(24)), 0, cup, daily, 12);
    expect(total(course.emerged)).toBeLessThan(0.3 * total(calm.emerged));
  });

  test('founders lay by temperature: at 18 C .45 of what they lay at 25 C', () => {
    const roomy = { ...cup, founders: 2 };
    const eggs = (temperatureC: number) =>
      cultureCourse(melanogaster, paceTable(melanogaster, constant(temperatureC)), 0, roomy, daily, 3)
        .eggsLaid[2] as number;
    // Deaths and age differ a little between the two: 5 %.
    expect(Math.abs(eggs(18) / eggs(25) / 0.45 - 1)).toBeLessThan(0.08);
    // Few males are fertile at 30 C: .6 of the eggs, a quarter of them; and more founders die there.
    expect(Math.abs(eggs(30) / eggs(25) / (0.6 * 0.25) - 1)).toBeLessThan(0.25);
  });

  test('any new temperature moves every stage', () => {
    const warm = emergedBySpent(melanogaster, 24).dates;
    const cool = emergedBySpent(melanogaster, 21).dates;
    for (const event of Object.keys(warm) as (keyof typeof warm)[]) {
      expect(cool[event], event).toBeGreaterThan(warm[event]);
    }
  });
});

describe('moisture, humidity and yeast', () => {
  const fliesWith = (more: Partial<CultureConditions>) => emergedBySpent(melanogaster, 24, { ...cup, ...more }).flies;
  const spell = (state: 'wet' | 'dry', untilAgeDays: number) => ({
    moistureSpells: [{ fromAgeDays: 3, untilAgeDays, state }],
  });

  test('wet and dry medium cost flies, and the rescued cup less than the one left alone', () => {
    const good = fliesWith({});
    for (const state of ['wet', 'dry'] as const) {
      expect(fliesWith(spell(state, 6))).toBeLessThan(good);
      expect(fliesWith(spell(state, 20))).toBeLessThan(fliesWith(spell(state, 6)));
    }
  });

  test('dry medium holds larvae up', () => {
    const first = (more: Partial<CultureConditions>) =>
      emergedBySpent(melanogaster, 24, { ...cup, ...more }).dates.firstAdults;
    expect(first(spell('dry', 10))).toBeGreaterThan(first({}) + 1);
  });

  test('very dry air costs flies, ordinary air does not; yeast in excess drowns founders', () => {
    expect(fliesWith({ humidityPercent: 20 })).toBeLessThan(0.95 * fliesWith({}));
    expect(fliesWith({ humidityPercent: 60 })).toBe(fliesWith({}));
    const founders = (liveYeast: 'good' | 'excess') =>
      emergedBySpent(melanogaster, 24, { ...cup, liveYeast }).course.foundersAlive[8] as number;
    expect(founders('excess')).toBeLessThan(founders('good'));
  });
});

describe('properties', () => {
  const conditions = fc.record({
    founders: fc.integer({ min: 0, max: 400 }),
    founderAgeDays: fc.integer({ min: 0, max: 40 }),
    mediumMassG: fc.integer({ min: 5, max: 500 }),
    surfaceCm2: fc.integer({ min: 4, max: 200 }),
  });
  const rule = fc.record({
    everyDays: fc.integer({ min: 1, max: 7 }),
    share: fc.double({ min: 0, max: 1, noNaN: true }),
    fromAgeDays: fc.option(fc.integer({ min: 0, max: 30 }), { nil: null }),
  });
  const temperatures = fc.array(fc.double({ min: 5, max: 36, noNaN: true }), { minLength: 5, maxLength: 5 });
  const path = (byWeek: number[]) =>
    Float64Array.from({ length: 24 * 40 }, (_, hour) => byWeek[Math.floor(hour / 192) % 5] as number);
  const strains = fc.constantFrom(melanogaster, hydei);

  function soundness(course: CultureCourse, founders: number): void {
    let inCup = founders;
    for (let day = 0; day < course.days; day += 1) {
      for (const key of ['eggsLaid', 'larvae', 'pupae', 'adults', 'foundersAlive', 'emerged', 'harvested'] as const) {
        expect(course[key][day]).toBeGreaterThanOrEqual(0);
        expect(Number.isFinite(course[key][day])).toBe(true);
      }
      // Flies do not come from nowhere: adults at the day's end are at most those before and the day's own.
      inCup += (course.emerged[day] as number) - (course.harvested[day] as number);
      expect(course.adults[day]).toBeLessThanOrEqual(inCup + 1e-6);
      inCup = course.adults[day] as number;
      expect(course.mediumLeft[day]).toBeGreaterThanOrEqual(0);
      expect(course.mediumLeft[day]).toBeLessThanOrEqual(1);
    }
    expect(total(course.emerged)).toBeLessThanOrEqual(total(course.eggsLaid) + 1e-6);
  }

  test('no negative or unbounded count, and flies are conserved, whatever the temperatures and the cup', () => {
    fc.assert(
      fc.property(strains, conditions, rule, temperatures, (strain, given, harvest, byWeek) => {
        const pace = paceTable(strain, path(byWeek));
        soundness(cultureCourse(strain, pace, 0, given, harvest, 40), given.founders);
      }),
      { numRuns: 150 },
    );
  });

  test('warmer is earlier below the optimum', () => {
    fc.assert(
      fc.property(fc.double({ min: 16, max: 27, noNaN: true }), fc.double({ min: 0.5, max: 3 }), (cool, by) => {
        fc.pre(cool + by <= 28);
        const first = (t: number) => emergedBySpent(melanogaster, t).dates.firstAdults;
        expect(first(cool + by)).toBeLessThan(first(cool));
      }),
      { numRuns: 30 },
    );
  });

  test('no founders, no flies; the same question, the same digits', () => {
    const pace = paceTable(melanogaster, constant(24));
    expect(total(cultureCourse(melanogaster, pace, 0, { ...cup, founders: 0 }, daily, 60).emerged)).toBe(0);
    const once = cultureCourse(melanogaster, pace, 3, cup, daily, 60);
    cultureCourse(hydei, paceTable(hydei, constant(20)), 0, { ...cup, founders: 300 }, daily, 90);
    expect(cultureCourse(melanogaster, pace, 3, cup, daily, 60)).toEqual(once);
  });

  test('daily steps lie within 1 % in total of the fine steps (2 % at 20 C and for 200 founders)', () => {
    for (const [strain, temperatureC, founders, tolerance] of [
      [melanogaster, 24, 50, 0.01],
      [hydei, 24, 50, 0.01],
      [melanogaster, 20, 50, 0.02],
      [melanogaster, 24, 200, 0.02],
    ] as const) {
      const pace = paceTable(strain, constant(temperatureC));
      const rule = { ...daily, fromAgeDays: 14 };
      const flies = (steps: number) =>
        total(cultureCourse(strain, pace, 0, { ...cup, founders, founderAgeDays: 12 }, rule, 30, steps).emerged);
      expect(Math.abs(flies(1) / flies(24) - 1), `${strain.key} ${temperatureC} ${founders}`).toBeLessThan(tolerance);
    }
  });
});

describe('bad questions are refused by name', () => {
  const pace = paceTable(melanogaster, constant(24, 30));
  const asked = (more: Partial<CultureConditions>) => () =>
    cultureCourse(melanogaster, pace, 0, { ...cup, ...more }, daily, 20);
  test.each([
    ['founders', { founders: -1 }],
    ['mediumMassG', { mediumMassG: 0 }],
    ['surfaceCm2', { surfaceCm2: Number.NaN }],
    ['founderAgeDays', { founderAgeDays: -2 }],
  ])('%s', (name, more) => {
    expect(asked(more)).toThrow(name);
  });

  test('a series too short, an empty one, one with a temperature that cannot be', () => {
    expect(() => cultureCourse(melanogaster, pace, 15, cup, daily, 20)).toThrow(/days is 20/);
    expect(() => paceTable(melanogaster, new Float64Array(0))).toThrow(/0 values/);
    expect(() => paceTable(melanogaster, constant(99, 1))).toThrow(/99/);
  });
});
