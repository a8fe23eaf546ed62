import { describe, expect, it } from 'vitest';
import { type Day, dayNumber } from '../foundation/index.ts';
import { type Entry, fold } from '../logbook/index.ts';
import { householdModel, type StrainModel } from './household-model.ts';
import { conditionsOf, nominalCup } from './nominal-cup.ts';

let made = 0;
const entry = (fields: object) =>
  ({
    id: `0190f5fe-7c00-7a00-8000-${String((made += 1)).padStart(12, '0')}`,
    recordedAt: '2026-03-01T08:00:00Z',
    by: 'Ada',
    ...fields,
  }) as Entry;
const on = '2026-03-20' as Day;
const start = { kind: 'started', on: '2026-03-01', culture: 'a', strain: 'melanogaster', founders: 40, place: 'shelf' };
const place = { kind: 'place', on: '2026-02-01', place: 'shelf', temperatureC: 23 };

function cupWith(more: object[], started: object = start) {
  const facts = fold([place, started, ...more].map(entry));
  const model = householdModel(facts, on, 60);
  const strain = model.strains.get('melanogaster') as StrainModel;
  const culture = facts.cultures[0];
  if (!culture) throw new Error('no cup');
  const { course } = nominalCup(model, strain, culture);
  return { conditions: conditionsOf(model, strain, culture), flies: course.emerged.reduce((a, b) => a + b, 0), facts };
}

const read = (day: string, humidityPercent: number, more = {}) => ({
  kind: 'temperature',
  on: day,
  place: 'shelf',
  humidityPercent,
  ...more,
});

describe('humidity and yeast from the logbook to the cup', () => {
  it('assumes nothing where nothing was measured', () => {
    expect(cupWith([]).conditions).not.toHaveProperty('humidityPercent');
    expect(cupWith([]).conditions).not.toHaveProperty('liveYeast');
  });

  it('takes the mean of what was read about the cup, with or without a temperature, and dry air costs flies', () => {
    const dry = cupWith([read('2026-03-02', 20), read('2026-03-10', 30, { meanC: 23 }), read('2025-12-01', 90)]);
    expect(dry.conditions.humidityPercent).toBe(25);
    expect(dry.flies).toBeLessThan(0.97 * cupWith([]).flies);
    expect(dry.facts.places[0]?.readings).toHaveLength(1);
  });

  it('counts only what was known by today', () => {
    expect(dayNumber(on)).toBeLessThan(dayNumber('2026-03-25' as Day));
    expect(cupWith([read('2026-03-25', 20)]).conditions).not.toHaveProperty('humidityPercent');
  });

  it('yeast in excess costs flies', () => {
    const excess = cupWith([], { ...start, liveYeast: 'excess' });
    expect(excess.conditions.liveYeast).toBe('excess');
    expect(excess.flies).toBeLessThan(cupWith([]).flies);
  });

  it('names a place that no entry describes', () => {
    const { problems } = fold([place, start, { ...read('2026-03-02', 40), place: 'attic' }].map(entry));
    expect(problems.map(({ found }) => found).join()).toContain('attic');
  });
});
