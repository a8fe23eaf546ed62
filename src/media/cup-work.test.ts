import { describe, expect, it } from 'vitest';
import { publishedCautions } from '../reference/cautions.ts';
import { cupChecklist, cupEnd, handlingOrder, moistureByTouch, moistureByWeight } from './index.ts';

const cup = (label: string, ageDays: number, hasMites = false, isQuarantined = false) => ({
  label,
  ageDays,
  hasMites,
  isQuarantined,
});
const request = {
  method: 'cooked' as const,
  cups: 3,
  mediumMassG: 120,
  founders: 40,
  strainName: 'melanogaster',
  dose: { preservative: 'methylparaben', amount: 0.5, unit: 'g' as const, stockMl: 5 },
  sources: [cup('B', 25), cup('A', 16), cup('M', 20, true)],
};
const keys = (steps: { step: string }[]) => steps.map((s) => s.step);

describe('guided start of a cup', () => {
  const steps = cupChecklist(request);
  it('in an order that protects flies and keeper', () => {
    const order = keys(steps);
    const before = (a: string, b: string) =>
      expect(order.indexOf(a), `${a} before ${b}`).toBeLessThan(order.indexOf(b));
    before('cook', 'add-preservative');
    before('add-preservative', 'fill');
    before('fill', 'cover-and-cool');
    before('cover-and-cool', 'live-yeast');
    before('climbing-material', 'knock-down');
    before('knock-down', 'tap-in-founders');
    before('tap-in-founders', 'close-lid');
    before('close-lid', 'label');
    expect(order.at(-1)).toBe('next-day-look');
  });
  it('times run on; the next look is a day later', () => {
    for (let i = 1; i < steps.length - 1; i++) {
      const last = steps[i - 1];
      expect(steps[i]?.afterMinutes).toBe((last?.afterMinutes ?? 0) + (last?.takesMinutes ?? 0));
    }
    expect(steps.at(-1)?.afterMinutes).toBe(1440);
  });
  it('cautions come where the danger is, and each has its fact', () => {
    const cautionsOf = (key: string) => steps.find((s) => s.step === key)?.cautions;
    expect(cautionsOf('cook')).toContain('hot-medium');
    expect(cautionsOf('add-preservative')).toContain('flammable-stock');
    const known = publishedCautions.map((c) => c.caution);
    const all = [
      ...steps,
      ...cupEnd('mites', true).steps,
      ...cupEnd('mould', true).steps,
      ...cupEnd('spent', true).steps,
    ];
    for (const caution of all.flatMap((s) => s.cautions)) expect(known).toContain(caution);
  });
  it('founders come youngest cup first, never from a cup with mites', () =>
    expect(steps.find((s) => s.step === 'knock-down')?.values.order).toBe('A, B'));
  it('an acid goes in last, with its own caution', () => {
    const acid = cupChecklist({
      ...request,
      dose: { preservative: 'propionic-acid', amount: 2, unit: 'ml', stockMl: null },
    });
    expect(acid.find((s) => s.step === 'add-acid')?.cautions).toEqual(['corrosive-acid']);
  });
  it('soaked medium is not cooked, and without preservative none is added', () =>
    expect(keys(cupChecklist({ ...request, method: 'soaked', dose: null })).slice(2, 4)).toEqual(['soak', 'fill']));
});

describe('order of handling', () => {
  it('young before old, quarantine later, mites last', () => {
    const cups = [cup('old', 30), cup('mites', 5, true), cup('new', 3, false, true), cup('young', 10)];
    expect(handlingOrder(cups).map((c) => c.label)).toEqual(['young', 'old', 'new', 'mites']);
  });
});

describe('moisture', () => {
  it('by touch', () => {
    expect(moistureByTouch('moist-and-holds', true)).toEqual({ verdict: 'good', rescue: [] });
    expect(moistureByTouch('runs', false).rescue[0]).toBe('add-dry-mix');
    expect(moistureByTouch('runs', true).rescue).not.toContain('add-dry-mix');
    expect(moistureByTouch('cracks-from-wall', false)).toEqual({ verdict: 'dry', rescue: ['use-flies-and-restart'] });
  });
  it('by weight: a cup that lost 48 of 120 g has lost 40 %', () => {
    const moisture = moistureByWeight({ firstDayMassG: 170, nowMassG: 122, mediumMassG: 120, hasLarvae: true });
    expect(moisture.ok && moisture.value).toMatchObject({ verdict: 'dry', lostShare: 0.4 });
    const good = moistureByWeight({ firstDayMassG: 170, nowMassG: 150, mediumMassG: 120, hasLarvae: true });
    expect(good.ok && good.value.verdict).toBe('good');
  });
  it('refuses a cup that grew heavier, and no weight', () => {
    expect(moistureByWeight({ firstDayMassG: 100, nowMassG: 120, mediumMassG: 80, hasLarvae: false }).ok).toBe(false);
    expect(moistureByWeight({ firstDayMassG: 100, nowMassG: -1, mediumMassG: 80, hasLarvae: false }).ok).toBe(false);
  });
});

describe('end of a cup', () => {
  it('is frozen before it is opened or binned', () => {
    for (const reason of ['spent', 'mould', 'mites', 'dry']) {
      expect(keys(cupEnd(reason, true).steps).slice(0, 2), reason).toEqual(['end-close-tight', 'end-freeze']);
    }
  });
  it('washed and used again when spent; all of it binned for mites, mould and contamination', () => {
    expect(cupEnd('spent', true).reuse).toEqual(['cup', 'lid']);
    for (const reason of ['mites', 'mould', 'contaminated']) {
      expect(cupEnd(reason, true).reuse).toEqual([]);
      expect(keys(cupEnd(reason, true).steps)).toContain('end-bin-everything');
    }
    expect(cupEnd('spent', false).reuse).toEqual([]);
  });
  it('a cup given away is not frozen', () => expect(cupEnd('given', true).steps).toEqual([]));
});
