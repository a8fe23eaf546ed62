import { describe, expect, it } from 'vitest';
import { day } from '../foundation/index.ts';
import { type Entry, fold } from '../logbook/index.ts';
import { forecast } from './forecast.ts';
import { supposing } from './what-if.ts';

const on = day('2026-11-25');
const entry = (n: number, fields: object) =>
  ({
    id: `0198c000-0000-7000-8000-00000000000${n}`,
    on,
    recordedAt: '2026-11-25T08:00:00.000Z',
    by: 'test',
    ...fields,
  }) as Entry;
const facts = fold([
  entry(1, { kind: 'place', place: 'home', temperatureC: 21 }),
  entry(2, { kind: 'group', group: 'newts', count: 4, fliesPerFeeding: 10, strain: 'melanogaster' }),
  entry(3, { kind: 'started', culture: 'M1', strain: 'melanogaster', place: 'home', founders: 50, on: '2026-11-18' }),
]);
const question = { on, seed: 1, weeks: 4 };
const household = supposing(facts, question);
const supposed = (warmerC: number, needFactor: number) => household.forecast({ warmerC, needFactor }, 50);
const firstFlies = (warmerC: number) => supposed(warmerC, 1).days.findIndex((each) => each.emergingFlies.p50 >= 5);

describe('a what-if', () => {
  it('that changes nothing gives the forecast itself', () => {
    expect(supposed(0, 1)).toEqual(forecast(facts, { ...question, scenarios: 50 }));
  });

  it('of twice the appetite wants twice the flies', () => {
    const wanted = (factor: number) => supposed(0, factor).days.map((each) => each.wantedFlies);
    expect(wanted(2)).toEqual(wanted(1).map((flies) => 2 * flies));
  });

  it('of a colder place has its first flies later', () => {
    expect(firstFlies(-3)).toBeGreaterThan(firstFlies(3));
  });
});
