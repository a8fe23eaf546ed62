import { describe, expect, it } from 'vitest';
import { day } from '../../foundation/index.ts';
import type { Job, TodayAnswer } from '../../app/index.ts';
import { todayText } from './today-text.ts';

const on = day('2026-11-25');
const itself = (key: string) => key;
const labels = { cup: itself, group: itself, strain: itself, place: itself };
const empty: TodayAnswer = {
  on,
  seed: 1,
  household: 'Test',
  jobs: [],
  soon: [],
  cultures: [],
  wantedFlies: {},
  onHandFlies: {},
  warnings: [],
  problems: [],
};
const parcel: Job = {
  id: 'p',
  date: on,
  kind: 'receive',
  strain: 'hydei',
  cups: 2,
  boughtStage: 'young',
  arrives: day('2026-10-26'),
  purchase: 'p1',
  why: 'Did it come?',
  firmness: 'firm',
};
const text = (answer: Partial<TodayAnswer>) =>
  todayText({ ...empty, ...answer }, labels)
    .join(' ')
    .replace(/\s+/g, ' ');

describe('today without cups', () => {
  it('asks for the animals only where none are known, and names what writes down an order and a cup that came', () => {
    expect(text({})).toContain('record group');
    const known = text({ wantedFlies: { melanogaster: 180 } });
    expect(known).not.toContain('record group');
    expect(known).toContain('record purchase');
    expect(known).toContain('record bought');
  });

  it('gives both answers to a parcel that is late', () => {
    const told = text({ jobs: [parcel] });
    expect(told).toContain('record bought culture=LABEL strain=hydei ageDays=DAYS purchase=p1');
    expect(told).toContain('record purchase purchase=p1 strain=hydei cups=0 arrives=2026-10-26');
  });

  it('says how an order is written down', () => {
    const told = text({ jobs: [{ ...parcel, kind: 'buy', arrives: day('2026-11-28') }] });
    expect(told).toContain(
      'record purchase purchase=hydei-young-2026-11-28 strain=hydei cups=2 stage=young arrives=2026-11-28',
    );
  });
});
