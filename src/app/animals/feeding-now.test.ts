import { describe, expect, it } from 'vitest';
import { factsWritten } from '../../../tests/fixtures/facts-written.ts';
import { addDays, day, dayFromNumber, dayNumber, told } from '../../foundation/index.ts';
import { animals } from '../animals.ts';
import { feedJobs } from '../jobs/feed-jobs.ts';
import { situation } from '../planning-problem.ts';
import { feedingNow } from './feeding-now.ts';
import { wordsOf } from '../words/words.ts';
import { animalWarnings } from './warnings.ts';

const on = day('2026-11-25');
const facts = (drafts: object[]) => factsWritten(drafts, addDays(on, -60));
const frogs = {
  kind: 'group',
  group: 'frogs',
  name: 'Frogs',
  animal: 'dart-frog-medium',
  count: 4,
  fliesPerFeeding: 30,
  strain: 'melanogaster',
};
const fed = (daysAgo: number, more: object = {}) => ({
  kind: 'fed',
  group: 'frogs',
  flies: 120,
  on: addDays(on, -daysAgo),
  ...more,
});
const leftSome = Array.from({ length: 10 }, (_, i) => fed(1 + i, { leftOver: 'some' }));
const cup = { kind: 'started', culture: 'a', strain: 'melanogaster', founders: 50, on: addDays(on, -25) };
const jobOf = (drafts: object[], offset = 0) => {
  const job = feedJobs(feedingNow(facts(drafts), on).facts, 'melanogaster', dayNumber(on), offset, [], new Map())[0];
  return job && told(job, wordsOf());
};
const warned = (drafts: object[]) =>
  told(animalWarnings(facts(drafts), on), wordsOf())
    .map(({ text }) => text)
    .join('\n');
const wantedToday = (drafts: object[]) => situation(facts(drafts), { on, seed: 1 }, 6).problem.strains[0];

describe('what a group is fed now', () => {
  it('is the ration as written where nothing speaks against it', () => {
    expect(jobOf([frogs])).toMatchObject({ flies: 120 });
    expect(jobOf([frogs])?.why).toBe('Frogs: 4 × 30 flies, from whatever gives. Expect about 120 too few.');
  });
  it('falls with left-overs in the job, in the plan and in the answer alike, and says why', () => {
    const drafts = [frogs, cup, ...leftSome];
    const job = jobOf(drafts);
    expect(job?.flies).toBeLessThan(110);
    expect(job?.flies).toBeGreaterThan(70);
    expect(job?.why).toMatch(/Something was left at 10 of 10 feedings: \d+(\.\d)? each in place of 30\./);
    const strain = wantedToday(drafts);
    expect(Math.abs((strain?.wantedFlies[1] ?? 0) - (job?.flies ?? 0))).toBeLessThan(1);
    const answer = animals(facts(drafts), { on, weeks: 1 }).groups[0];
    expect(answer?.fliesByDay[1]).toBeCloseTo(strain?.wantedFlies[1] ?? 0, 6);
    expect(answer?.ration).toMatchObject({ writtenFlies: 30, noted: 10, withLeftOvers: 10 });
    expect(answer?.appetite?.p50).toBeLessThan(110);
    // What is not known of the appetite is need that the forecast draws.
    expect(strain?.needDraws).toHaveLength(256);
  });
  it('stands as written when the keeper says so, and begins anew with a new ration', () => {
    expect(jobOf([{ ...frogs, keepRation: true }, ...leftSome])?.flies).toBe(120);
    expect(jobOf([frogs, ...leftSome, { ...frogs, fliesPerFeeding: 20, on }])?.flies).toBe(80);
  });
  it('takes more flies when they are small: milligrams are kept', () => {
    const pot = (weightMg: number) => ({ kind: 'harvested', culture: 'a', flies: 500, weightMg, on: addDays(on, -3) });
    const small = jobOf([frogs, cup, pot(300)]);
    const big = jobOf([frogs, cup, pot(500)]);
    expect(small?.flies).toBeGreaterThan(120);
    expect(big?.flies).toBeLessThan(120);
    expect(small?.wantedMg).toBeCloseTo(big?.wantedMg ?? 0, -1);
    expect(small?.why).toMatch(/A fly weighs 0\.6 mg now, an ordinary one 0\.75 mg: 25 % more of them\./);
    expect(small?.fliesRange?.low).toBeLessThan(small?.flies ?? 0);
    expect(small?.fliesRange?.high).toBeGreaterThan(small?.flies ?? 0);
    expect(wantedToday([frogs, cup, pot(300)])?.wantedFlies[1]).toBeCloseTo(small?.flies ?? 0, -1);
  });
  it('expects smaller flies from crowded cups', () => {
    const crowded = [1, 2, 3].map((k) => ({ ...cup, culture: `c${k}`, founders: 400, on: addDays(on, -14 - k) }));
    const size = feedingNow(facts([frogs, ...crowded]), on).sizes.get('melanogaster');
    expect(size?.from).toBe('crowding');
    expect(size?.nowMg.middle).toBeLessThan(0.95 * (size?.ordinaryMg ?? 0));
    expect(jobOf([frogs, ...crowded])?.flies).toBeGreaterThan(125);
  });
  it('counts deaths and sales from their day on', () => {
    const sold = { kind: 'headcount', group: 'frogs', change: -2, reason: 'sold', on: addDays(on, -1) };
    expect(jobOf([frogs, sold])?.flies).toBe(60);
    expect(wantedToday([frogs, cup, sold])?.wantedFlies[1]).toBe(60);
  });
  it('gives the same for its own facts: nothing is changed twice', () => {
    const now = feedingNow(facts([frogs, ...leftSome]), on);
    expect(feedingNow(now.facts, on)).toBe(now);
  });
  it('waits as long as its kind can, unless the keeper wrote how long', () => {
    const waits = (draft: object) => feedingNow(facts([draft]), on).facts.groups[0]?.periods.at(-1)?.canWaitDays;
    // data/rations.csv.
    expect(waits(frogs)).toBe(3);
    expect(waits({ ...frogs, animal: 'chameleon-hatchling' })).toBe(0);
    expect(waits({ ...frogs, canWaitDays: 2 })).toBe(2);
    expect(waits({ ...frogs, animal: undefined })).toBe(1);
  });
});

describe('animals that grow', () => {
  const nymphs = {
    ...frogs,
    group: 'nymphs',
    name: 'Nymphs',
    animal: 'mantis-l1',
    fliesPerFeeding: 3,
    on: addDays(on, -4),
  };
  const hydei = { ...cup, culture: 'h', strain: 'hydei' };
  const groupsFor = (drafts: object[]) => feedingNow(facts(drafts), on).groups.find(({ group }) => group === 'nymphs');
  it('change fly with their stages in the need of the forecast, when the household keeps the larger fly', () => {
    const periods = groupsFor([nymphs, cup, hydei])?.periods ?? [];
    expect(periods.map(({ strain }) => strain)).toEqual([
      'melanogaster',
      'melanogaster',
      'melanogaster',
      'hydei',
      'hydei',
    ]);
    // L1 lasts 8 to 14 days and L2 as long (data/rations.csv), begun four days ago.
    expect(periods[3]?.arrival).toMatchObject({
      earliest: dayNumber(on) - 4 + 16,
      latest: dayNumber(on) - 4 + 28,
      countLow: 4,
      countHigh: 4,
    });
    const problem = situation(facts([nymphs, cup, hydei]), { on, seed: 1 }, 6).problem;
    const need = new Map(problem.strains.map((one) => [one.strain, one.wantedFlies]));
    expect(need.get('melanogaster')?.[2]).toBeGreaterThan(0);
    expect(need.get('melanogaster')?.[40]).toBe(0);
    expect(need.get('hydei')?.[2]).toBe(0);
    expect(need.get('hydei')?.[40]).toBeGreaterThan(0);
    expect(problem.strains.every(({ needDraws }) => needDraws?.length === 256)).toBe(true);
  });
  it('go on with the fly at hand where no larger one is kept', () => {
    const periods = groupsFor([nymphs, cup])?.periods ?? [];
    expect(new Set(periods.map(({ strain }) => strain))).toEqual(new Set(['melanogaster']));
    // Practice names 4 to 8 melanogaster in place of 3 to 5 hydei for L3; the keeper gives 3 / sqrt(10) of the books.
    expect(periods[3]?.fliesPerFeeding).toBeCloseTo((3 / Math.sqrt(10)) * Math.sqrt(32), 6);
  });
  it('grow quicker in the warm', () => {
    const next = (temperatureC: number) =>
      groupsFor([{ ...nymphs, temperatureC }, cup])?.periods[2]?.arrival?.latest ?? 0;
    expect(next(30)).toBeLessThan(next(25));
    expect(next(20)).toBeGreaterThan(next(25));
  });
  it('are looked for when their time has come and nobody wrote it, and fed as before meanwhile', () => {
    const old = { ...nymphs, on: addDays(on, -40) };
    expect(warned([old])).toMatch(/Nymphs: by the books they have moved on to their next stage by Fri 13 Nov/);
    expect(jobOf([old])?.flies).toBe(12);
    expect(groupsFor([old])?.periods.at(-1)?.fliesPerFeeding).toBeGreaterThan(0);
  });
  it('are let go to larger prey only when they were weighed and weigh enough', () => {
    const l4 = { ...nymphs, animal: 'mantis-l4', strain: 'hydei', on: addDays(on, -9) };
    const weighed = (massG: number) => ({ kind: 'weighed', group: 'nymphs', massG, on: addDays(on, -2) });
    expect(groupsFor([l4, weighed(0.06)])?.periods.at(-1)?.fliesPerFeeding).toBeGreaterThan(0);
    expect(groupsFor([l4, weighed(0.12)])?.periods.at(-1)?.fliesPerFeeding).toBe(0);
  });
  it('are fed with care near a moult', () => {
    expect(jobOf([nymphs], 6)?.why).toMatch(
      /Near a moult: feed only those that hunt, and take out every fly that is left\./,
    );
    expect(jobOf([nymphs])?.why).not.toMatch(/moult/);
  });
});

describe('a hatch that is expected', () => {
  const nymphs = (earliest: number, latest: number) => ({
    ...frogs,
    group: 'nymphs',
    name: 'Nymphs',
    animal: 'mantis-l1',
    fliesPerFeeding: 3,
    count: 120,
    from: addDays(on, earliest),
    arrival: { earliest: addDays(on, earliest), latest: addDays(on, latest), countLow: 40, countHigh: 200 },
  });
  it('enters the scenarios with its days and numbers', () => {
    const strain = wantedToday([nymphs(10, 19), cup]);
    const at = (day: number) => (strain?.needDraws ?? []).map((flies) => flies[day] as number);
    expect(at(9).every((flies) => flies === 0)).toBe(true);
    expect(at(14).filter((flies) => flies === 0).length / 256).toBeCloseTo(0.5, 1);
    expect(Math.min(...at(19))).toBeGreaterThanOrEqual(120);
    expect(Math.max(...at(19))).toBeGreaterThan(500);
    expect(Math.max(...at(19))).toBeLessThanOrEqual(600 * (4.243 / 3.162) + 1);
  });
  it('is looked for from its first day, and not fed before somebody says that it came', () => {
    const job = jobOf([nymphs(-2, 5)]);
    expect(job).toMatchObject({ kind: 'look', group: 'nymphs' });
    expect(job?.why).toMatch(/40 to 200 are expected by/);
    expect(warned([nymphs(-9, -3)])).toMatch(/expected by .*write down how many came/);
  });
  it('rules out the days that are past', () => {
    const range = feedingNow(facts([nymphs(-2, 5)]), on).groups[0]?.periods[0]?.arrival;
    expect(dayFromNumber(range?.earliest ?? 0)).toBe(on);
  });
});
