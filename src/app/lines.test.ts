import { describe, expect, it } from 'vitest';
import { factsWritten } from '../../tests/fixtures/facts-written.ts';
import { addDays, day } from '../foundation/index.ts';
import { lines } from './lines.ts';
import { linesAnswer } from './lines/line-answer.ts';

const on = day('2026-11-25');
const facts = (drafts: object[]) => factsWritten(drafts, addDays(on, -60));
const settings = (temperatureC = 23) => [
  { kind: 'place', place: 'shelf', temperatureC },
  { kind: 'strain', strain: 'mel-vg', base: 'melanogaster', mutation: 'vg' },
  { kind: 'strain', strain: 'mel-ap', base: 'melanogaster', mutation: 'ap' },
  { kind: 'strain', strain: 'mystery', base: 'melanogaster' },
  { kind: 'strain', strain: 'hydei', base: 'hydei' },
];
const cup = (culture: string, daysAgo: number, more: object = {}) => ({
  kind: 'started',
  culture,
  strain: 'mel-vg',
  place: 'shelf',
  founders: 50,
  on: addDays(on, -daysAgo),
  ...more,
});
const seen = (culture: string, fields: object) => ({ kind: 'seen', culture, on: addDays(on, -1), ...fields });
const answered = (drafts: object[], temperatureC = 23) => lines(facts([...settings(temperatureC), ...drafts]), { on });

describe('lines of a household', () => {
  const shelf = [
    cup('a', 50),
    cup('b', 35, { fromCultures: ['a'] }),
    cup('c', 20, { fromCultures: ['b'], founders: 20 }),
  ];
  it('have the shape that the doors promise', () => {
    const answer = answered([...shelf, seen('c', { winged: 2 }), seen('b', { mites: true })]);
    expect(linesAnswer.parse(answer)).toEqual(answer);
  });
  it('draw the pedigree, with what each generation lost', () => {
    const [line] = answered(shelf).strains;
    expect(line?.mutation).toBe('vg');
    expect(line?.cups.map(({ culture, generation }) => [culture, generation])).toEqual([
      ['a', 0],
      ['b', 1],
      ['c', 2],
    ]);
    expect(line?.cups[2]?.lossShare).toBeCloseTo(1 - 0.99 * 0.99 * (1 - 1 / 40), 12);
    expect(line?.advice).toMatchObject({ culture: 'c', verdict: 'more founders' });
    expect(line?.joinCups).toHaveLength(2);
  });
  it('tell whether one mishap takes the whole line', () => {
    expect(answered(shelf).strains[0]?.spread).toMatchObject({
      livingCups: 3,
      places: 1,
      verdict: 'one mishap takes all',
    });
    const attic = { kind: 'place', place: 'attic', temperatureC: 20 };
    const split = answered([attic, ...shelf, cup('d', 10, { place: 'attic' })]).strains[0]?.spread;
    expect(split).toMatchObject({ places: 2, startingDays: 4, verdict: 'split' });
    const ended = ['a', 'b', 'c'].map((culture) => ({ kind: 'ended', culture, reason: 'spent', on }));
    // A line without a living cup is no line any more.
    expect(answered([...shelf, ...ended]).strains).toEqual([]);
  });
  it('say nothing where nothing is wrong', () => expect(answered(shelf).warnings).toEqual([]));
  it('warn of two mutations in one cup, with the picture of what comes', () => {
    const other = cup('x', 20, { strain: 'mel-ap' });
    const [warning] = answered([...shelf, other, cup('mix', 2, { fromCultures: ['c', 'x'] })]).warnings;
    expect(warning).toMatchObject({ kind: 'mixed strains', culture: 'mix' });
    expect(warning?.outlooks[0]?.wingedShare[0]).toBeCloseTo(0.5, 12);
    expect(warning?.todo.join()).toMatch(/throw the cup out/);
  });
  it('answer an unknown mutation for each thing that may be true', () => {
    const other = cup('x', 20, { strain: 'mystery' });
    const [warning] = answered([...shelf, other, cup('mix', 2, { fromCultures: ['c', 'x'] })]).warnings;
    expect(warning?.outlooks).toHaveLength(3);
  });
  it('warn of two species, and name the one that takes over', () => {
    const other = cup('x', 30, { strain: 'hydei' });
    const [warning] = answered([...shelf, other, cup('mix', 2, { fromCultures: ['c', 'x'] })]).warnings;
    expect(warning).toMatchObject({ kind: 'two species' });
    expect(warning?.why).toMatch(/Here that is mel-vg/);
  });
  it('tell a stranger from warmth by the temperature of the place', () => {
    const cool = answered([...shelf, seen('c', { winged: 1 })]).warnings[0];
    const warm = answered([...shelf, seen('c', { winged: 1 })], 30).warnings[0];
    expect(cool?.steps.length).toBeGreaterThan(2);
    expect(cool?.steps.map(({ date }) => date)).toEqual([...(cool?.steps ?? [])].map(({ date }) => date).sort());
    expect(cool?.outlooks[0]?.wingedShare[0]).toBeCloseTo(1 / 10, 12);
    expect(warm?.steps).toEqual([]);
    expect(warm?.why).toMatch(/30 °C.*longer/);
  });
  it('find the cups one contact away from mites, living ones only', () => {
    const ended = { kind: 'ended', culture: 'a', reason: 'spent', on: addDays(on, -5) };
    const [warning] = answered([...shelf, ended, seen('b', { mites: true })]).warnings;
    expect(warning?.contacts.map(({ culture, kinds }) => [culture, kinds[0]])).toEqual([['c', 'offspring']]);
  });
  it('date the quarantine of a bought cup', () => {
    const bought = {
      kind: 'bought',
      culture: 'new',
      strain: 'mel-vg',
      place: 'shelf',
      ageDays: 10,
      on: addDays(on, -3),
      quarantineUntil: addDays(on, 25),
    };
    const [one] = answered([bought]).quarantine;
    expect(one?.until).toBe(addDays(on, 25));
    expect(one?.steps[0]?.date).toBe(addDays(on, -3));
  });
});
