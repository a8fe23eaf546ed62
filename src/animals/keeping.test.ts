import { describe, expect, it } from 'vitest';
import { day, dayNumber, randomStream, weekdays } from '../foundation/index.ts';
import { publishedFlyCompositions } from '../reference/index.ts';
import { type FeedingSeen, learnedAppetite, type LeftOverWord, leftOverShares } from './appetite.ts';
import { dustingPlan } from './dusting-plan.ts';
import { dustLeftShare, dustMgFor, type FlyNutrients, foodQuality } from './food-quality.ts';
import { atWarmth, gainGPerDay, growthCurve, massAtG } from './growth.ts';
import { countByDay, expectedHatch, type HatchInput } from './hatch.ts';
import { preyFor } from './prey.ts';
import { type Stage, stagePeriods, stagePlan, type StagesInput } from './stages.ts';
import { stretch } from './stretch.ts';
import { wantedFlies } from './wanted-flies.ts';
import { fliesInPot, mixedFlyMass } from './weigh-flies.ts';
import { weightCheck } from './weighing.ts';

describe('growth', () => {
  const curve = growthCurve(0.2, 2, 300);
  it('begins and ends as asked', () => {
    expect(massAtG(curve, 0)).toBeCloseTo(0.2, 12);
    expect(massAtG(curve, 300)).toBeCloseTo(0.95 * 2, 12);
    expect(massAtG(curve, 1e6)).toBeCloseTo(2, 9);
  });
  it('its gain is the slope of its mass', () => {
    const slope = (massAtG(curve, 100.001) - massAtG(curve, 99.999)) / 0.002;
    expect(gainGPerDay(curve, 100)).toBeCloseTo(slope, 8);
  });
  it('gains most at 1/e of the grown mass (Gompertz)', () => {
    const days = Array.from({ length: 300 }, (_, d) => d);
    const best = days.reduce((a, b) => (gainGPerDay(curve, b) > gainGPerDay(curve, a) ? b : a));
    expect(massAtG(curve, best) / 2).toBeCloseTo(1 / Math.E, 2);
  });
  it('runs twice as fast ten degrees warmer at Q10 2', () =>
    expect(massAtG(atWarmth(curve, 2, 10), 50)).toBeCloseTo(massAtG(curve, 100), 12));
  it('refuses shrinking', () => {
    expect(() => growthCurve(2, 1, 10)).toThrow(/no growth/);
    expect(() => growthCurve(1, 2, 0)).toThrow(/days 0/);
    expect(() => growthCurve(1, 2, 10, 0.4)).toThrow(/share 0.4/);
  });
});

const monday = dayNumber(day('2026-11-23'));
const stage = (name: string, more: Partial<Stage> = {}): Stage => ({
  stage: name,
  daysLow: 8,
  daysHigh: 14,
  survival: 0.9,
  fliesPerFeeding: 3,
  strain: 'mel',
  feedingWeekdays: [...weekdays],
  ...more,
});
const nymphs = (more: Partial<StagesInput> = {}): StagesInput => ({
  stages: [
    stage('L1'),
    stage('L2'),
    stage('L3', { strain: 'hydei', fliesPerFeeding: 4 }),
    stage('larger', { fliesPerFeeding: 0, daysLow: null, daysHigh: null }),
  ],
  onDay: monday,
  daysInStage: 0,
  count: 100,
  degreesWarmer: 0,
  q10: 2,
  moultPause: null,
  ...more,
});

describe('stages', () => {
  it('dates add up with their ranges', () => {
    const plan = stagePlan(nymphs());
    expect(plan.map(({ begins }) => begins.middle - monday)).toEqual([0, 11, 22, 33]);
    expect(plan[2]?.begins).toEqual({ earliest: monday + 16, middle: monday + 22, latest: monday + 28 });
    expect(plan[3]?.count).toBeCloseTo(72.9, 9);
  });
  it('come sooner in the warm, and when part of the first is over', () => {
    const warm = stagePlan(nymphs({ degreesWarmer: 10 }))[1]?.begins;
    expect([warm?.earliest, warm?.latest]).toEqual([monday + 4, monday + 7]);
    expect(stagePlan(nymphs({ daysInStage: 10 }))[1]?.begins).toEqual({
      earliest: monday,
      middle: monday + 2,
      latest: monday + 4,
    });
  });
  it('turn into need: melanogaster, then hydei, then none', () => {
    const groups = [{ group: 'nymphs', periods: stagePeriods(nymphs()) }];
    const needs = wantedFlies({ groups, fromDay: monday, days: 40 });
    expect(needs.get('mel')?.flies[10]).toBeCloseTo(300, 9);
    expect(needs.get('mel')?.flies[11]).toBeCloseTo(270, 9);
    expect(needs.get('mel')?.flies[22]).toBe(0);
    expect(needs.get('hydei')?.flies[22]).toBeCloseTo(324, 9);
    expect(needs.get('hydei')?.flies[33]).toBe(0);
  });
  it('pause around a moult', () => {
    const input = nymphs({ moultPause: { before: 2, after: 1 } });
    const needs = wantedFlies({ groups: [{ group: 'g', periods: stagePeriods(input) }], fromDay: monday, days: 20 });
    expect([8, 9, 12, 13].map((i) => Math.round(needs.get('mel')?.flies[i] ?? -1))).toEqual([300, 0, 0, 270]);
    expect(stagePlan(input)[1]?.moult).toEqual({ from: monday + 9, until: monday + 12 });
  });
  it('need a length where a stage follows', () =>
    expect(() => stagePlan(nymphs({ stages: [stage('L1', { daysLow: null }), stage('L2')] }))).toThrow(
      /L1 has no length/,
    ));
});

describe('prey by size', () => {
  const flies = [
    { fly: 'hydei', lengthMm: 3.2 },
    { fly: 'melanogaster', lengthMm: 2.3 },
  ];
  const by = (lengthMm: number, outgrowsAtMm: number | null = 15) =>
    preyFor({ by: 'body length', lengthMm, flies, outgrowsAtMm });
  it('half a body long at most, the largest that fits', () => {
    expect(by(4)).toMatchObject({ fly: null, verdict: 'too small for adult flies' });
    expect(by(5).fly).toBe('melanogaster');
    expect(by(7).fly).toBe('hydei');
    expect(by(16).verdict).toBe('larger prey beside flies');
    expect(by(16, null).verdict).toBe('flies');
  });
  it('no wider than the gap between the eyes', () =>
    expect(preyFor({ by: 'gap between the eyes', lengthMm: 3, flies, outgrowsAtMm: null }).fly).toBe('melanogaster'));
  it('refuses no length', () => expect(() => by(0)).toThrow(/lengthMm 0/));
});

describe('hatches', () => {
  const ootheca: HatchInput = {
    laidOn: monday,
    incubationDaysLow: 35,
    incubationDaysHigh: 50,
    youngLow: 40,
    youngHigh: 200,
    survivalLow: 1,
    survivalHigh: 1,
  };
  it('become the uncertain arrival that the forecast knows', () =>
    expect(expectedHatch(ootheca, monday)).toEqual({
      earliest: monday + 35,
      latest: monday + 50,
      countLow: 40,
      countHigh: 200,
    }));
  it('days past without a hatch are ruled out', () => {
    expect(expectedHatch(ootheca, monday + 40)?.earliest).toBe(monday + 40);
    expect(expectedHatch(ootheca, monday + 51)).toBeNull();
  });
  it('refuses ranges that run backwards', () => {
    expect(() => expectedHatch({ ...ootheca, youngHigh: 10 }, monday)).toThrow(/young 40 to 10/);
    expect(() => expectedHatch({ ...ootheca, survivalHigh: 1.2 }, monday)).toThrow(/survivalHigh 1.2/);
  });
  it('counts deaths and sales, never below none', () =>
    expect([
      ...countByDay(
        10,
        [
          { onDay: 101, change: -4 },
          { onDay: 102, change: -9 },
          { onDay: 103, change: 2 },
        ],
        100,
        4,
      ),
    ]).toEqual([10, 6, 0, 2]));
});

describe('too few flies', () => {
  const groups = [
    { group: 'frogs', flies: 60, canWaitDays: 3, daysSinceFed: 1 },
    { group: 'hatchlings', flies: 40, canWaitDays: 0, daysSinceFed: 1 },
    { group: 'spiders', flies: 20, canWaitDays: 5, daysSinceFed: 1 },
  ];
  const verdicts = (available: number) =>
    stretch(groups, available).shares.map(({ group, flies, verdict }) => [group, flies, verdict]);
  it('those who cannot wait come first, then the least slack', () =>
    expect(verdicts(70)).toEqual([
      ['hatchlings', 40, 'fed'],
      ['frogs', 30, 'part of a feeding'],
      ['spiders', 0, 'can wait'],
    ]));
  it('says what is missing when even they go short', () => {
    expect(verdicts(30)[0]).toEqual(['hatchlings', 30, 'goes short']);
    expect(stretch(groups, 30).missingFlies).toBe(10);
    expect(stretch(groups, 500).missingFlies).toBe(0);
    expect(stretch(groups, 500).shares.every(({ share }) => share === 1)).toBe(true);
  });
  it('a group whose last day of waiting is over is one that cannot wait', () => {
    const due = [{ group: 'newts', flies: 10, canWaitDays: 2, daysSinceFed: 2 }];
    expect(stretch(due, 4)).toMatchObject({ missingFlies: 6, shares: [{ verdict: 'goes short', slackDays: 0 }] });
  });
  it('never gives more than there is', () => {
    for (const available of [0, 7, 39, 41, 99, 101, 119, 121]) {
      const given = stretch(groups, available).shares.reduce((sum, { flies }) => sum + flies, 0);
      expect(given).toBeCloseTo(Math.min(120, available), 9);
    }
    expect(() => stretch(groups, -1)).toThrow(/available -1/);
  });
});

describe('food quality', () => {
  const analysis = publishedFlyCompositions.find((one) => one.analysis === 'bernard-allen');
  const flies = analysis as FlyNutrients;
  const carbonate = { supplement: 'calcium carbonate', calciumShare: 40.078 / 100.086, phosphorusShare: 0 };
  it('flies alone have a tenth as much calcium as phosphorus (Bernard and Allen 1997: 0.10 to 1.05 %)', () => {
    const week = foodQuality([{ flyMg: 95, dust: [] }], flies);
    expect(week.calciumToPhosphorus).toBeCloseTo(0.1 / 1.05, 12);
    expect(week.verdict).toBe('too little calcium');
    expect(week.proteinMg / week.dryMg).toBeCloseTo(0.701, 12);
  });
  it('0.67, 1.04 and 1.40 mg of calcium carbonate on 100 flies for 1, 1.5 and 2 to 1, by molar mass', () => {
    const mg = [1, 1.5, 2].map((target) => dustMgFor(95, target, flies, carbonate));
    [0.67, 1.04, 1.4].forEach((expected, i) => expect(mg[i]).toBeCloseTo(expected, 2));
    const dusted = foodQuality([{ flyMg: 95, dust: [{ supplement: carbonate, mg: mg[1] as number }] }], flies);
    expect(dusted.calciumToPhosphorus).toBeCloseTo(1.5, 9);
    expect(dusted.verdict).toBe('enough calcium');
  });
  it('a powder that brings phosphorus too may never get there', () => {
    expect(dustMgFor(95, 2, flies, { supplement: 'bone meal', calciumShare: 0.3, phosphorusShare: 0.15 })).toBe(
      Number.POSITIVE_INFINITY,
    );
    expect(dustMgFor(95, 0.05, flies, carbonate)).toBe(0);
    expect(foodQuality([], flies).verdict).toBe('nothing fed');
  });
  it('groomed off by halves', () => {
    expect(dustLeftShare(4, 2)).toBeCloseTo(0.25, 12);
    expect(() => dustLeftShare(-1, 2)).toThrow(/hours -1/);
    expect(() => dustMgFor(-1, 1, flies, carbonate)).toThrow(/flyMg -1/);
  });
});

describe('dusting plan', () => {
  const week = Array.from({ length: 7 }, (_, i) => monday + i);
  it('spreads each supplement over its week, one at a time while there is room', () => {
    const plan = dustingPlan(week, [
      { supplement: 'vitamins', timesPerWeek: 2 },
      { supplement: 'calcium', timesPerWeek: 5 },
    ]);
    expect(plan.filter(({ supplements }) => supplements.includes('vitamins'))).toHaveLength(2);
    expect(plan.every(({ supplements }) => supplements.length === 1)).toBe(true);
    const two = dustingPlan(week, [
      { supplement: 'vitamins', timesPerWeek: 1 },
      { supplement: 'calcium', timesPerWeek: 1 },
    ]);
    expect(two.filter(({ supplements }) => supplements.length === 1)).toHaveLength(2);
  });
  it('doubles up when the week has no bare feeding left', () => {
    const plan = dustingPlan(
      [monday, monday + 3],
      [
        { supplement: 'calcium', timesPerWeek: 7 },
        { supplement: 'vitamins', timesPerWeek: 1 },
      ],
    );
    expect(plan.map(({ supplements }) => supplements.length).sort((a, b) => a - b)).toEqual([1, 2]);
  });
  it('counts weeks from Monday', () => {
    const plan = dustingPlan([monday - 1, monday], [{ supplement: 'vitamins', timesPerWeek: 1 }]);
    expect(plan.map(({ supplements }) => supplements.length)).toEqual([1, 1]);
    expect(() => dustingPlan(week, [{ supplement: 'x', timesPerWeek: -1 }])).toThrow(/timesPerWeek of x/);
  });
});

describe('flies by weight', () => {
  const mixed = mixedFlyMass({ meanMg: 1.172, sdMg: 0.132 }, { meanMg: 0.773, sdMg: 0.075 });
  it('a gram of both sexes is about 1,030 flies (fresh masses at 25 C, DGRP lines)', () =>
    expect(1000 / mixed.meanMg).toBeCloseTo(1028, 0));
  it('its spread is that of simulated pots', () => {
    const stream = randomStream(4, 'pots');
    const truth = 400;
    const belief = { ...mixed, meanSdMg: 0.05 };
    let sum = 0;
    let squares = 0;
    const pots = 4000;
    for (let i = 0; i < pots; i++) {
      const bias = 0.05 * stream.normal();
      let mg = 0;
      for (let k = 0; k < truth; k++)
        mg += bias + (stream.uniform() < 0.5 ? 1.172 + 0.132 * stream.normal() : 0.773 + 0.075 * stream.normal());
      const { flies } = fliesInPot(50_000 + mg + 10 * stream.normal(), 50_000 + 10 * stream.normal() - 100, 10, belief);
      const counted = flies - 100 / mixed.meanMg;
      sum += counted;
      squares += counted ** 2;
    }
    const mean = sum / pots;
    const sd = Math.sqrt(squares / pots - mean * mean);
    const stated = fliesInPot(50_000 + truth * mixed.meanMg, 50_000, 10, belief);
    expect(Math.abs(mean - truth)).toBeLessThan((5 * sd) / Math.sqrt(pots));
    // The sd of a sample sd of normal draws is sd / sqrt(2 n).
    expect(Math.abs(stated.sd - sd)).toBeLessThan((5 * sd) / Math.sqrt(2 * pots));
    expect(stated.mainDoubt).toBe('the mean mass of a fly');
    expect(stated.band.p50).toBeCloseTo(truth, 9);
  });
  it('few flies on a coarse scale: the scale is the doubt', () => {
    const few = fliesInPot(1010, 1000, 10, { ...mixed, meanSdMg: 0.05 });
    expect(few.mainDoubt).toBe('the scale');
    // Two readings of 10 mg each: sqrt(200) mg over 0.97 mg a fly, and next to nothing from ten flies.
    expect(few.sd).toBeCloseTo(Math.sqrt(200) / mixed.meanMg, 0);
    expect(few.band.p05).toBe(0);
  });
  it('refuses pots that gain', () => {
    expect(() => fliesInPot(10, 20, 1, { ...mixed, meanSdMg: 0 })).toThrow(/not above 20/);
    expect(() => fliesInPot(20, 10, 1, { meanMg: 0, sdMg: 0, meanSdMg: 0 })).toThrow(/not above 0/);
  });
});

describe('weighing the animals', () => {
  const every = (days: number, masses: number[]) => masses.map((massG, i) => ({ onDay: monday + i * days, massG }));
  const growing = { changePerDay: 0.01 };
  it('a line by hand: ln mass rises 0.01 a day', () => {
    const check = weightCheck(every(10, [1, 1.1052, 1.2214, 1.3499]), growing);
    expect(check.changePerDay).toBeCloseTo(0.01, 5);
    expect(check.verdict).toBe('enough');
    // Known error of a slope: sigma / sqrt(sum (x - mean)^2), here days -15, -5, 5, 15.
    expect(check.standardError).toBeCloseTo(0.03 / Math.sqrt(500), 12);
  });
  it('flags early', () => {
    expect(weightCheck(every(14, [1, 1.01, 1.0, 1.01]), growing).verdict).toBe('watch');
    expect(weightCheck(every(14, [1, 0.97, 0.93, 0.91]), { changePerDay: 0 }).verdict).toBe('too little');
    expect(weightCheck(every(7, [1, 1.01, 0.88]), growing).why).toMatch(/lost 13 %.*vet/);
    expect(weightCheck(every(10, [2, 2.2, 2.5, 2.8]), { changePerDay: 0 }).verdict).toBe('too much');
    expect(weightCheck(every(14, [2, 2.01, 1.99, 2]), { changePerDay: 0 }).verdict).toBe('enough');
  });
  it('wants three days', () => {
    expect(weightCheck(every(7, [1, 1.1]), growing).verdict).toBe('too few weighings');
    expect(weightCheck(every(0, [1, 1, 1]), growing).verdict).toBe('too few weighings');
    expect(() => weightCheck(every(7, [0]), growing)).toThrow(/massG 0/);
  });
});

describe('appetite from left-overs', () => {
  const word = (share: number): LeftOverWord =>
    (Object.keys(leftOverShares) as LeftOverWord[]).find((one) => share < leftOverShares[one][1]) ?? 'swarming';
  it('holds the truth in nine of ten bands, for groups that eat other than planned', () => {
    const groups = 400;
    let within = 0;
    for (let g = 0; g < groups; g++) {
      const stream = randomStream(g, 'appetite');
      const truth = 50 * Math.exp(0.5 * stream.normal());
      const feedings: FeedingSeen[] = Array.from({ length: 12 }, () => {
        const eaten = truth * Math.exp(0.25 * stream.normal());
        return { flies: 50, leftOver: word(Math.max(0, 1 - eaten / 50)) };
      });
      const { p05, p95 } = learnedAppetite(50, feedings);
      if (truth >= p05 && truth <= p95) within++;
    }
    // Four binomial standard errors, and a little above nine in ten because slips are allowed for.
    expect(within / groups).toBeGreaterThan(0.9 - 4 * Math.sqrt(0.09 / groups));
    expect(within / groups).toBeLessThan(0.99);
  });
  it('learns that half is left, and only a floor when nothing is', () => {
    const many = (leftOver: LeftOverWord) => learnedAppetite(40, Array(15).fill({ flies: 40, leftOver }));
    expect(many('plenty').p50).toBeGreaterThan(0.3 * 40);
    expect(many('plenty').p50).toBeLessThan(0.6 * 40);
    expect(many('none').p05).toBeGreaterThan(40);
    expect(learnedAppetite(40, []).p50).toBeCloseTo(40, 6);
  });
  it('refuses nonsense', () => {
    expect(() => learnedAppetite(0, [])).toThrow(/plannedFlies 0/);
    expect(() => learnedAppetite(5, [{ flies: 0, leftOver: 'few' }])).toThrow(/flies 0/);
  });
});
