import { describe, expect, it } from 'vitest';
import {
  awayDays,
  lateCups,
  lateLooks,
  manyAtOnce,
  on,
  type TwoRooms,
  twoRoomsFacts,
} from '../../../tests/simulation/two-rooms.ts';
import { addDays } from '../../foundation/index.ts';
import type { Job } from '../answers.ts';
import { plan } from '../plan.ts';
import { situation } from '../planning-problem.ts';
import { temperatureWhatIf } from '../temperature/temperature-what-if.ts';
import { today } from '../today.ts';
import { placesToMove } from './places-to-move.ts';

const question = { on, seed: 1, weeks: 8 };
const jobsOf = (facts: Parameters<typeof today>[0], kind: Job['kind']) => {
  const answer = today(facts, question);
  return [...answer.jobs, ...answer.soon].filter((job) => job.kind === kind);
};

describe('a cup that comes too late, and a warmer place', () => {
  const facts = twoRoomsFacts(lateCups, ...lateLooks);
  const moves = jobsOf(facts, 'move');
  const [move] = moves;
  it('is carried there, where a household with one room has to buy', () => {
    const oneRoom = twoRoomsFacts({ ...lateCups, shelfC: lateCups.cellarC }, ...lateLooks);
    expect(jobsOf(oneRoom, 'move')).toEqual([]);
    expect(jobsOf(oneRoom, 'buy').length).toBeGreaterThan(0);
    expect(move).toMatchObject({ date: on, kind: 'move', place: 'shelf', firmness: 'firm' });
    expect(jobsOf(facts, 'buy')).toEqual([]);
    expect(moves.length).toBeLessThanOrEqual(2);
  });
  it('says which days are gained and what goes short without it', () => {
    const culture = move?.cultures?.[0] as string;
    const would = temperatureWhatIf(facts, question, { culture, to: 'shelf' });
    const earlier = would.ok ? -(would.value.cultures[0]?.nextLaterDays.p50 ?? 0) : 0;
    expect(earlier).toBeGreaterThan(1);
    expect(move?.why).toContain(`come ${earlier} days earlier, about `);
    expect(move?.why).toMatch(
      /Were nothing done, .* would be short on .* with a chance of \d+ %; with the cups? moved, of /,
    );
    const german = today(facts, { ...question, language: 'de' }).jobs.find((job) => job.kind === 'move');
    expect(german?.why).toMatch(/Tage früher, etwa .* Wird nichts getan, fehlen am .* Wahrscheinlichkeit/);
  });
  it('stands in the plan too; once it is written down it is done, and the day’s other jobs stay', () => {
    expect(plan(facts, { ...question, scenarios: 20 }).jobs.filter((job) => job.kind === 'move')).toEqual(moves);
    const moved = moves.map(({ cultures }) => ({ kind: 'moved', culture: cultures?.[0], place: 'shelf', on }));
    const after = today(twoRoomsFacts(lateCups, ...lateLooks, ...moved), question);
    expect(after.jobs).toEqual(today(facts, question).jobs.filter((job) => job.kind !== 'move'));
    expect(after.soon).toEqual(today(facts, question).soon);
  });
});

describe('cups that all come at once before some days away, and a cooler place', () => {
  it('are held back for the days after, where a household with one room has to buy', () => {
    const moves = jobsOf(twoRoomsFacts(manyAtOnce, awayDays), 'move');
    expect(moves.map(({ place }) => place)).toContain('cellar');
    expect(moves.every(({ why }) => why.includes('held back for when they are wanted'))).toBe(true);
    expect(jobsOf(twoRoomsFacts({ ...manyAtOnce, cellarC: 25 }, awayDays), 'buy').length).toBeGreaterThan(0);
    expect(jobsOf(twoRoomsFacts(manyAtOnce, awayDays), 'buy')).toEqual([]);
  });
});

describe('a place to carry a cup to', () => {
  const placesOf = (rooms: TwoRooms, ...more: object[]) => {
    const { model } = situation(twoRoomsFacts(rooms, ...more), question, 1);
    const culture = model.facts.cultures.find((c) => c.culture === 'c3');
    const strain = model.strains.get('melanogaster');
    if (!culture || !strain) throw new Error('the household has no such cup');
    return placesToMove(model, strain, culture).map(({ place }) => place);
  };
  it('is never above 28 C, nor too cold for cups, nor outside what the keeper set', () => {
    expect(placesOf(lateCups)).toEqual(['shelf']);
    expect(placesOf({ ...lateCups, shelfC: 28.5 })).toEqual([]);
    expect(placesOf({ ...lateCups, shelfC: 12 })).toEqual([]);
    expect(placesOf({ ...lateCups, shelfC: 20 })).toEqual([]);
    const limits = { kind: 'place', place: 'shelf', limitsC: { low: 10, high: 24 }, on };
    expect(placesOf(lateCups, limits)).toEqual([]);
  });
  it('is none for a cup with mites, or one that was moved this week', () => {
    expect(placesOf(lateCups, { kind: 'seen', culture: 'c3', mites: true, on })).toEqual([]);
    expect(placesOf(lateCups, { kind: 'moved', culture: 'c3', place: 'shelf', on: addDays(on, -3) })).toEqual([]);
  });
  it('leaves a strain in two places where the keeper wants that', () => {
    const backup = { kind: 'household', backup: { cupsPerStrain: 1, inTwoPlaces: true }, on };
    const moved = (cups: number[]) =>
      cups.map((i) => ({ kind: 'moved', culture: `c${i}`, place: 'shelf', on: addDays(on, -20) }));
    expect(placesOf(lateCups, backup, ...moved([0]))).toEqual(['shelf']);
    expect(placesOf({ ...lateCups, startedDaysAgo: [30, 27, 24, 11] }, backup, ...moved([0, 1, 2]))).toEqual([]);
  });
});
