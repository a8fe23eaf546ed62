import { describe, expect, it } from 'vitest';
import { factsWritten } from '../../../tests/fixtures/facts-written.ts';
import { addDays, day } from '../../foundation/index.ts';
import { strainLife } from '../../reference/index.ts';
import { situation, temperature, temperatureWhatIf, today } from '../index.ts';
import { temperatureAnswer, temperatureWhatIfAnswer } from './temperature-answers.ts';

const on = day('2026-11-25');
const question = { on, seed: 1, scenarios: 50, weeks: 4 };
const facts = (drafts: object[]) => factsWritten(drafts, addDays(on, -30));
const shelf = { kind: 'place', place: 'shelf', name: 'Shelf', temperatureC: 23 };
const cellar = { kind: 'place', place: 'cellar', temperatureC: 17 };
const cup = (culture: string, daysAgo: number, place = 'shelf') => ({
  kind: 'started',
  culture,
  strain: 'melanogaster',
  place,
  founders: 50,
  on: addDays(on, -daysAgo),
});
const read = (daysAgo: number, meanC: number, more: object = {}) => ({
  kind: 'temperature',
  place: 'shelf',
  on: addDays(on, -daysAgo),
  meanC,
  ...more,
});
const steady = (meanC: number, from: number, until: number) =>
  Array.from({ length: from - until + 1 }, (_, i) => read(from - i, meanC, { minC: meanC, maxC: meanC }));

describe('the clocks of cups', () => {
  it('have the shape that the doors promise', () => {
    const answer = temperature(facts([shelf, cellar, cup('a', 5)]), question);
    expect(temperatureAnswer.parse(answer)).toEqual(answer);
  });

  it('run at the strain’s rate, and count degree-days above its threshold', () => {
    const life = strainLife('melanogaster') as NonNullable<ReturnType<typeof strainLife>>;
    const answer = temperature(facts([shelf, ...steady(22, 30, 0), cup('a', 6)]), question);
    const clock = answer.cultures[0];
    // The engine looks rates up to 0.05 C; the middle of 1000 draws of pace (sd 0.1) is known to 0.004, times 0.4.
    expect(Math.abs((clock?.developmentShare ?? 0) - 6 * life.developmentRate(22))).toBeLessThan(0.008);
    expect(clock?.degreeDays).toBeCloseTo(6 * (22 - life.developmentLimitsC.lower), 1);
    // Steady warmth: the degree-days needed are those of a day times the days until the first flies.
    const days = (Date.parse(clock?.firstAdults ?? '') - Date.parse(addDays(on, -6))) / 86_400_000;
    const perDay = 22 - life.developmentLimitsC.lower;
    expect(Math.abs((clock?.degreeDaysNeeded ?? 0) - days * perDay)).toBeLessThan(0.52 * perDay);
  });

  it('stop at flies that were seen, and give the same day as today’s own list', () => {
    const seen = { kind: 'seen', culture: 'b', present: ['adults'], on };
    const log = facts([shelf, ...steady(23, 30, 0), cup('a', 6), cup('b', 13), seen]);
    const { cultures } = temperature(log, question);
    expect(cultures.find((c) => c.id === 'b')).toMatchObject({ fliesHaveCome: true, developmentShare: 1 });
    const a = cultures.find((c) => c.id === 'a');
    const listed = today(log, question).cultures.find((c) => c.id === 'a');
    expect(listed?.nextEvents.find((e) => e.event === 'first flies')).toMatchObject(a?.firstAdultsBand ?? {});
  });

  it('say what a cool week did, and nothing when the week was as expected', () => {
    const cool = temperature(facts([shelf, ...steady(23, 30, 7), ...steady(18, 6, 0), cup('a', 10)]), question);
    expect(cool.cultures[0]?.shiftDays).toBeGreaterThan(1);
    expect(cool.cultures[0]?.shift).toMatch(/^Cool days at Shelf in the last week: 7 .* days later, on/);
    const same = temperature(facts([shelf, ...steady(23, 30, 0), cup('a', 10)]), question);
    expect(same.cultures[0]?.shift).toBeNull();
  });
});

describe('weather ahead in the forecast', () => {
  const wobbly = (byC: number) => {
    const readings = Array.from({ length: 90 }, (_, i) => read(90 - i, 23 + byC * Math.sin(i * i)));
    return facts([shelf, ...readings, cup('a', 2)]);
  };
  const width = (byC: number, range: (c: { p05: string; p95: string }) => number) => {
    const event = today(wobbly(byC), question).cultures[0]?.nextEvents.find((e) => e.event === 'first flies');
    return range(event ?? { p05: '', p95: '' });
  };
  const days = ({ p05, p95 }: { p05: string; p95: string }) => (Date.parse(p95) - Date.parse(p05)) / 86_400_000;

  it('a place with wild temperatures has a wider band of emergence than a steady one', () => {
    expect(width(6, days)).toBeGreaterThan(width(0, days));
    const draws = (byC: number) => {
      const { problem } = situation(wobbly(byC), question, 4);
      const strain = problem.strains[0];
      const paces = strain?.existing[0]?.draws.logPace ?? new Float64Array(1);
      const mean = paces.reduce((a, b) => a + b, 0) / paces.length;
      const sd = Math.sqrt(paces.reduce((sum, p) => sum + (p - mean) ** 2, 0) / paces.length);
      return { living: sd, toCome: strain?.uncertainty.paceLogSd.session ?? 0 };
    };
    const [still, wild] = [draws(0), draws(6)];
    expect(wild.living).toBeGreaterThan(1.2 * still.living);
    expect(wild.toCome).toBeGreaterThan(1.5 * still.toCome);
  });

  it('warms cups of one place together, and those of two apart', () => {
    const log = facts([shelf, cellar, cup('a', 2), cup('b', 3), cup('c', 2, 'cellar')]);
    const cups = situation(log, question, 4).problem.strains[0]?.existing ?? [];
    const paceOf = (id: string) => cups.find((c) => c.id === id)?.draws.logPace ?? new Float64Array(1);
    const correlation = (x: Float64Array, y: Float64Array) => {
      const centred = (v: Float64Array) => v.map((each) => each - v.reduce((a, b) => a + b, 0) / v.length);
      const [a, b] = [centred(x), centred(y)];
      const dot = (p: Float64Array, q: Float64Array) => p.reduce((sum, each, i) => sum + each * (q[i] as number), 0);
      return dot(a, b) / Math.sqrt(dot(a, a) * dot(b, b));
    };
    expect(correlation(paceOf('a'), paceOf('b'))).toBeGreaterThan(correlation(paceOf('a'), paceOf('c')) + 0.02);
  });
});

describe('the cups’ own warmth', () => {
  const pair = (cupC: number, daysAgo = 0) => ({
    kind: 'temperature',
    place: 'shelf',
    on: addDays(on, -daysAgo),
    cupC,
    shelfC: 22,
  });
  it('is learned from readings in cups and beside them, and hurries them', () => {
    const without = temperature(facts([shelf, cup('a', 3)]), question);
    const warm = temperature(facts([shelf, pair(25), pair(25.4, 1), pair(24.8, 2), cup('a', 3)]), question);
    expect(without.places[0]?.cupOffset).toEqual({ keeperC: 0, meanC: 0, sdC: 1, pairs: 0 });
    expect(warm.places[0]?.cupOffset.meanC).toBeGreaterThan(2.4);
    expect(warm.places[0]?.cupOffset.sdC).toBeLessThan(0.6);
    expect(warm.places[0]?.readings).toBe(0);
    expect((warm.cultures[0]?.firstAdults ?? '') < (without.cultures[0]?.firstAdults ?? '')).toBe(true);
  });
  it('counts in alarms, and says nothing before it was read', () => {
    const hot = read(0, 27, { minC: 26, maxC: 27 });
    expect(today(facts([shelf, hot, cup('a', 3)]), question).warnings).toEqual([]);
    expect(today(facts([shelf, hot, pair(25), pair(25), cup('a', 3)]), question).warnings).toHaveLength(1);
    expect(today(facts([shelf, hot, pair(25, -1), pair(25, -1), cup('a', 3)]), question).warnings).toEqual([]);
  });
});

describe('what is ahead', () => {
  it('goes where the place’s own readings point, with a band that widens', () => {
    const answer = temperature(facts([shelf, ...steady(26, 30, 0)]), question);
    const ahead = answer.places[0]?.ahead ?? [];
    expect(ahead[0]?.p50C).toBeCloseTo(26, 0);
    expect(ahead[13]?.p50C).toBeGreaterThan(24.5);
    const width = (i: number) => (ahead[i]?.p95C ?? 0) - (ahead[i]?.p05C ?? 0);
    expect(width(13)).toBeGreaterThan(width(0));
  });
});

describe('alarms', () => {
  const hot = [shelf, cup('a', 5), read(0, 27, { minC: 23, maxC: 31 })];
  it('are in the day’s answer, with what to do, where cups stand', () => {
    expect(today(facts(hot), question).warnings).toEqual([
      expect.stringMatching(/^Shelf, Wed 25 Nov: 31 °C in the cups, above 28\..*sterile/),
    ]);
    expect(today(facts([shelf, cellar, cup('a', 5, 'cellar'), hot[2] as object]), question).warnings).toEqual([]);
  });
  it('keep the keeper’s limits, count the cup’s own warmth, and know frost', () => {
    const limits = { kind: 'place', place: 'shelf', limitsC: { low: 16, high: 32 } };
    expect(today(facts([shelf, limits, cup('a', 5), hot[2] as object]), question).warnings).toEqual([]);
    const offset = { kind: 'place', place: 'shelf', cupOffsetC: 2 };
    expect(today(facts([shelf, limits, offset, cup('a', 5), hot[2] as object]), question).warnings).toHaveLength(1);
    const frost = today(facts([shelf, cup('a', 5), read(1, 2, { minC: -1, maxC: 6 })]), question).warnings;
    expect(frost.join()).toMatch(/-1 °C .* Frost kills/);
  });
  it('of three days ago are past', () => {
    expect(today(facts([shelf, cup('a', 5), read(3, 27, { minC: 23, maxC: 31 })]), question).warnings).toEqual([]);
  });
});

describe('what if', () => {
  const household = facts([shelf, cellar, ...steady(23, 10, 0), cup('a', 3), cup('b', 5)]);
  const asked = (what: Parameters<typeof temperatureWhatIf>[2]) => {
    const answer = temperatureWhatIf(household, question, what);
    if (!answer.ok) throw new Error(JSON.stringify(answer.problems));
    expect(temperatureWhatIfAnswer.parse(answer.value)).toEqual(answer.value);
    return answer.value;
  };
  it('a warmer place hurries its cups, with the caution about mats; a cooler one holds them', () => {
    const warmer = asked({ place: 'shelf', byC: 2 });
    expect(warmer.cultures.map((c) => c.id)).toEqual(['b', 'a']);
    for (const c of warmer.cultures) expect(c.firstAdultsLaterDays).toBeLessThan(-0.5);
    expect(warmer.cautions.join()).toMatch(/thermostat/);
    for (const c of asked({ place: 'shelf', byC: -3 }).cultures) expect(c.firstAdultsLaterDays).toBeGreaterThan(0.5);
    expect(asked({ place: 'shelf', byC: 0 }).cultures[0]?.firstAdultsLaterDays).toBe(0);
  });
  it('a carried cup alone is held', () => {
    const carried = asked({ culture: 'a', to: 'cellar' });
    expect(carried.cultures.map((c) => c.id)).toEqual(['a']);
    expect(carried.cultures[0]?.firstAdultsLaterDays).toBeGreaterThan(2);
  });
  it('says of what is next by how much it is moved, with its band', () => {
    const [a] = asked({ culture: 'a', to: 'cellar' }).cultures;
    expect(a?.next).toBe('firstAdults');
    const { p05, p50, p95 } = a?.nextLaterDays ?? { p05: 0, p50: 0, p95: 0 };
    expect(p05).toBeLessThan(p50);
    expect(p50).toBeLessThan(p95);
    expect(Math.abs(p50 - (a?.firstAdultsLaterDays ?? 0))).toBeLessThan(0.11);
    // Nobody measured the cellar; the same shelf, cooler, is surer than that.
    const cooler = asked({ place: 'shelf', byC: -6 }).cultures.find((c) => c.id === 'a')?.nextLaterDays;
    expect((cooler?.p95 ?? 0) - (cooler?.p05 ?? 0)).toBeLessThan(p95 - p05);
    expect(asked({ place: 'shelf', byC: 0 }).cultures[0]?.nextLaterDays).toEqual({ p05: 0, p50: 0, p95: 0 });
  });
  it('names what is not there', () => {
    const where = (what: Parameters<typeof temperatureWhatIf>[2]) => {
      const answer = temperatureWhatIf(household, question, what);
      return answer.ok ? null : answer.problems[0]?.where;
    };
    expect(where({ place: 'attic', byC: 1 })).toBe('place');
    expect(where({ place: 'shelf', byC: 99 })).toBe('byC');
    expect(where({ culture: 'x', to: 'cellar' })).toBe('culture');
    expect(where({ culture: 'a', to: 'attic' })).toBe('to');
  });
});
