import { expect, test } from 'vitest';
import { day } from '../foundation/index.ts';
import type { SeenFact } from '../logbook/index.ts';
import { moistureSpells } from './moisture-spells.ts';

const look = (on: string, moisture: SeenFact['moisture']): SeenFact => ({
  entryId: on,
  on: day(on),
  present: [],
  absent: [],
  amount: null,
  count: null,
  moisture,
  mould: false,
  mites: false,
  winged: null,
});
const culture = (seen: SeenFact[]) => ({ startedOn: day('2026-03-01'), seen });

test('a dry cup is dry until it is seen good again, by age', () => {
  const seen = [look('2026-03-06', 'dry'), look('2026-03-07', null), look('2026-03-10', 'good')];
  expect(moistureSpells(culture(seen))).toEqual([{ fromAgeDays: 5, untilAgeDays: 8, state: 'dry' }]);
});

test('a wet cup that nobody looked at again is taken to be put right within four days', () => {
  expect(moistureSpells(culture([look('2026-03-03', 'wet')]))).toEqual([
    { fromAgeDays: 2, untilAgeDays: 5, state: 'wet' },
  ]);
});

test('good looks make no spell', () => {
  expect(moistureSpells(culture([look('2026-03-03', 'good')]))).toEqual([]);
});
