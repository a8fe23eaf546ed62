import { describe, expect, it } from 'vitest';
import { bareCup, look, strainOf, take } from '../../tests/simulation/learning-cup.ts';
import { bandOf } from '../foundation/index.ts';
import type { CupEvidence } from './evidence.ts';
import { learn } from './learn.ts';
import { ordinaryPrior } from './priors.ts';
import { TableMemory } from './table-memory.ts';

const believe = (cups: CupEvidence[], draws = 600, seed = 11) =>
  learn({ seed, draws, prior: ordinaryPrior, strains: [strainOf(cups)] });
const fliesOf = (cup: CupEvidence) => bandOf(believe([cup]).cups.get('cup')?.draws.fliesNow ?? []);
const yieldOf = (cups: CupEvidence[]) => believe(cups).byStrain.get('melanogaster')?.logYield.mean ?? Number.NaN;

describe('learn', () => {
  it('gives the same digits for the same input, with or without kept tables', () => {
    const cups = [
      bareCup({ id: 'a', looks: [look(16, { count: 80 })] }),
      bareCup({ id: 'b', looks: [look(18, { amount: 'few' })] }),
    ];
    const memory = new TableMemory();
    const input = { seed: 4, draws: 50, prior: ordinaryPrior, strains: [strainOf(cups)] };
    expect(learn(input, memory)).toEqual(learn(input));
    expect(learn(input, memory)).toEqual(learn(input));
    expect(learn({ ...input, seed: 5 })).not.toEqual(learn(input));
  });

  it('weighs cups once of which nothing different is known', () => {
    const memory = new TableMemory();
    const cups = [bareCup({ id: 'a' }), bareCup({ id: 'b' }), bareCup({ id: 'c', looks: [look(20, { count: 5 })] })];
    const input = { seed: 4, draws: 50, prior: ordinaryPrior, strains: [strainOf(cups)] };
    expect(learn(input, memory)).toEqual(learn(input));
    expect(memory.changes).toBe(2);
  });

  it('notices a new note through kept tables', () => {
    const memory = new TableMemory();
    const before = { seed: 4, draws: 50, prior: ordinaryPrior, strains: [strainOf([bareCup()])] };
    const after = { ...before, strains: [strainOf([bareCup({ looks: [look(20, { count: 5 })] })])] };
    learn(before, memory);
    expect(learn(after, memory)).toEqual(learn(after));
  });

  it('throws for no draws, naming the argument', () => {
    expect(() => believe([bareCup()], 0)).toThrow(/learn: draws 0/);
  });

  it('narrows as evidence comes', () => {
    const width = (cup: CupEvidence) => {
      const band = fliesOf(cup);
      return Math.log((band.p95 + 1) / (band.p05 + 1));
    };
    const word = bareCup({ looks: [look(20, { amount: 'plenty' })] });
    const count = bareCup({ looks: [look(20, { count: 100 })] });
    expect(width(word)).toBeLessThan(width(bareCup()));
    expect(width(count)).toBeLessThan(width(word));
  });

  it('forecasts a cup counted today near the count', () => {
    for (const counted of [120, 200, 350]) {
      const band = fliesOf(bareCup({ looks: [look(20, { count: counted })] }));
      expect(band.p05).toBeLessThan(counted);
      expect(band.p95).toBeGreaterThan(counted);
      expect(Math.abs(Math.log(band.p50 / counted))).toBeLessThan(0.3);
    }
  });

  it('takes recorded flies off, and presumed ones with doubt', () => {
    const flies = (takes: CupEvidence['takes']) => fliesOf(bareCup({ takes }));
    const none = flies([]);
    const recorded = flies([take(20, { flies: 100 })]);
    const presumed = flies([take(20, { flies: 100, presumed: true })]);
    const emptied = flies([take(20, { emptied: true })]);
    expect(recorded.p50).toBeLessThan(none.p50 - 50);
    expect(presumed.p50).toBeLessThan(none.p50 - 30);
    expect(emptied.p50).toBeLessThan(3);
  });

  it('learns from an empty harvest: it must not be dropped', () => {
    const withEmpty = bareCup({ takes: [take(20, { flies: 0 })] });
    expect(yieldOf([withEmpty])).toBeLessThan(yieldOf([bareCup()]) - 0.1);
  });

  it('learns from a rich harvest that at least so many flies were there', () => {
    const rich = bareCup({ ageDays: 16, takes: [take(16, { flies: 400 })] });
    const poor = bareCup({ ageDays: 16, takes: [take(16, { flies: 5 })] });
    expect(yieldOf([rich])).toBeGreaterThan(yieldOf([poor]) + 0.08);
  });

  it('takes silence for nothing: a cup never looked at changes no belief about the household', () => {
    const seen = bareCup({ id: 'seen', looks: [look(18, { count: 60 })] });
    const unseen = (id: string) => bareCup({ id, session: 3 });
    const alone = believe([seen], 3000).byStrain.get('melanogaster');
    const among = believe([seen, unseen('u1'), unseen('u2'), unseen('u3')], 3000).byStrain.get('melanogaster');
    expect(Math.abs((alone?.logYield.mean ?? 0) - (among?.logYield.mean ?? 9))).toBeLessThan(0.05);
    expect((alone?.logYield.sd ?? 0) / (among?.logYield.sd ?? 9)).toBeCloseTo(1, 0);
  });

  it('draws scenarios that hang together: a rich household has rich cups', () => {
    const cups = [bareCup({ id: 'a', looks: [look(20, { amount: 'some' })] }), bareCup({ id: 'b', session: 1 })];
    const belief = believe(cups, 2000);
    const household = belief.byStrain.get('melanogaster')?.draws.logYield ?? new Float64Array(0);
    const cup = belief.cups.get('b')?.draws.logYield ?? new Float64Array(0);
    expect(correlation(household, cup)).toBeGreaterThan(0.25);
  });

  it('tells recipes and places apart, and says how sure it is', () => {
    const cups = Array.from({ length: 16 }, (_, i) =>
      bareCup({
        id: `c${i}`,
        session: i >> 1,
        recipe: i % 2 ? 'rich' : 'plain',
        looks: [look(17, { count: i % 2 ? 210 : 100 }), look(20, { count: i % 2 ? 260 : 130 })],
      }),
    );
    const belief = believe(cups).byStrain.get('melanogaster');
    const draws = (key: string) => belief?.recipes.find((r) => r.key === key)?.draws.logYield ?? new Float64Array(0);
    const more = draws('rich').filter((d, s) => d > (draws('plain')[s] as number)).length / 600;
    expect(more).toBeGreaterThan(0.95);
    expect(belief?.places).toEqual([]);
  });

  it('gives every living cup draws after its age, and ended cups none', () => {
    const gone = bareCup({ id: 'gone', ageDays: 15, ended: { ageDays: 15, failed: true } });
    const belief = believe([bareCup(), gone]);
    expect([...belief.cups.keys()]).toEqual(['cup']);
    for (const age of belief.cups.get('cup')?.draws.endAge ?? []) expect(age).toBeGreaterThan(20);
  });
});

function correlation(a: Float64Array, b: Float64Array): number {
  const mean = (v: Float64Array) => v.reduce((x, y) => x + y, 0) / v.length;
  const [ma, mb] = [mean(a), mean(b)];
  const sum = (f: (i: number) => number) => a.reduce((total, _, i) => total + f(i), 0);
  const da = (i: number) => (a[i] as number) - ma;
  const db = (i: number) => (b[i] as number) - mb;
  return sum((i) => da(i) * db(i)) / Math.sqrt(sum((i) => da(i) ** 2) * sum((i) => db(i) ** 2));
}
