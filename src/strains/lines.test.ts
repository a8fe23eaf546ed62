import { describe, expect, it } from 'vitest';
import { contactsOf, type TracedCup } from './contacts.ts';
import { effectiveSize, effectiveSizeOver, generationsUntilLoss, lossOfVariation } from './effective-size.ts';
import { backupCups, leastRelatedPair, refreshAdvice } from './line-advice.ts';
import { type PedigreeCup, pedigree } from './pedigree.ts';
import { quarantine } from './quarantine.ts';
import { takeover } from './takeover.ts';

describe('effective size (Wright 1931; Falconer, Quantitative Genetics, ch. 4)', () => {
  it('4 F M / (F + M)', () => {
    expect(effectiveSize({ females: 25, males: 25 })).toBe(50);
    expect(effectiveSize({ females: 10, males: 30 })).toBe(30);
    expect(effectiveSize({ females: 5, males: 0 })).toBe(0);
    expect(() => effectiveSize({ females: -1, males: 2 })).toThrow(/females -1/);
  });
  it('harmonic over generations: one narrow one rules', () => {
    expect(effectiveSizeOver([10, 1000])).toBeCloseTo(19.802, 3);
    expect(() => effectiveSizeOver([])).toThrow(/no generations/);
  });
  it('loses 1/(2 Ne) a generation: 1 % at 50, the rule of 50 (Franklin 1980)', () => {
    expect(lossOfVariation([50])).toBeCloseTo(0.01, 12);
    expect(lossOfVariation([50, 50, 50])).toBeCloseTo(1 - 0.99 ** 3, 12);
    expect(generationsUntilLoss(50, 0.1)).toBeCloseTo(10.48, 2);
  });
});

const half = (n: number) => ({ females: n / 2, males: n / 2 });
const chain = (length: number, founders: number): PedigreeCup[] =>
  Array.from({ length }, (_, i) => ({ cup: `c${i}`, parents: i === 0 ? [] : [`c${i - 1}`], founders: half(founders) }));

describe('pedigree of cups', () => {
  it('a straight line loses as the formula says', () => {
    const { nodes } = pedigree(chain(6, 20));
    nodes.forEach((node, i) => {
      expect(node.generation).toBe(i);
      expect(node.loss).toBeCloseTo(lossOfVariation(Array(i + 1).fill(20)), 12);
    });
  });
  it('one pair a generation loses a quarter each time, as an ideal population of two', () => {
    // Wright's exact series for brother and sister is slower at first: 1/4, 3/8, 1/2.
    expect(pedigree(chain(3, 2)).nodes.map((node) => node.loss)).toEqual([1 / 4, 7 / 16, 37 / 64]);
  });
  it('two unrelated lines joined are as fresh as their founders allow', () => {
    const cups: PedigreeCup[] = [
      { cup: 'a', parents: [], founders: half(10) },
      { cup: 'b', parents: [], founders: half(10) },
      { cup: 'ab', parents: ['a', 'b'], founders: half(20) },
    ];
    const tree = pedigree(cups);
    expect(tree.coancestry('a', 'b')).toBe(0);
    // Half of the pairs of parents are of one cup, related by 1/20.
    expect(tree.coancestry('ab', 'ab')).toBeCloseTo(1 / 40 + (39 / 40) * (1 / 20 / 2), 12);
    expect(tree.coancestry('ab', 'a')).toBeCloseTo(1 / 20 / 2, 12);
    expect(tree.edges).toEqual([
      { from: 'a', to: 'ab' },
      { from: 'b', to: 'ab' },
    ]);
  });
  it('finds the least related pair', () => {
    const tree = pedigree([...chain(3, 10), { cup: 'other', parents: [], founders: half(10) }]);
    expect(leastRelatedPair(['c2', 'c1', 'other'], tree)?.pair).toContain('other');
    expect(leastRelatedPair(['c2'], tree)).toBeNull();
  });
  it('keeps going with parents that nobody listed, and with circles that cannot be', () => {
    const tree = pedigree([
      { cup: 'a', parents: ['gone'], founders: half(10) },
      { cup: 'x', parents: ['y'], founders: half(10) },
      { cup: 'y', parents: ['x'], founders: half(10) },
    ]);
    expect(tree.unknownParents).toEqual(['gone']);
    expect(tree.impossible).toEqual(['x', 'y']);
    expect(tree.nodes.map((node) => node.cup)).toEqual(['a']);
    expect(() => tree.coancestry('a', 'x')).toThrow(/x is not in the pedigree/);
    expect(() => pedigree([...chain(1, 2), ...chain(1, 2)])).toThrow(/twice/);
  });
  it('takes a year of a facility: 2,000 cups', () => {
    const cups = Array.from({ length: 2000 }, (_, i) => ({
      cup: `${i}`,
      parents: i < 10 ? [] : [`${i - 10}`, `${i - 7}`],
      founders: half(50),
    }));
    expect(pedigree(cups).nodes.at(-1)?.generation).toBeGreaterThan(150);
  });
});

describe('what a line needs', () => {
  it('is fine, wants founders, or wants new flies', () => {
    expect(refreshAdvice({ loss: 0.05, effectiveSize: 60 }).verdict).toBe('fine');
    expect(refreshAdvice({ loss: 0.05, effectiveSize: 20 }).verdict).toBe('more founders');
    expect(refreshAdvice({ loss: 0.25, effectiveSize: 60 }).verdict).toBe('refresh');
  });
  it('says in how many generations: ln(0.8/0.95) / ln(1 - 1/40) = 6.8 at 20', () =>
    expect(refreshAdvice({ loss: 0.05, effectiveSize: 20 }).why).toMatch(/about 6 generations/));
  it('backup cups by hand: 0.1^2 = 0.01, with a shared 0.004 it takes three', () => {
    expect(backupCups(0.1, 0, 0.01).cups).toBe(2);
    expect(backupCups(0.1, 0.004, 0.01).cups).toBe(3);
    expect(backupCups(0.1, 0.02, 0.01)).toMatchObject({ cups: null });
    expect(() => backupCups(1, 0, 0.1)).toThrow(/own 1/);
  });
  it('quarantine by whole generations', () => {
    const { until, steps } = quarantine(100, 14, 3);
    expect(until).toBe(142);
    expect(steps.map((step) => step.onDay)).toEqual([100, 114, 128, 142]);
    expect(() => quarantine(100, 14, 0)).toThrow(/generations 0/);
  });
});

describe('contacts of a cup with mites', () => {
  const cup = (name: string, more: Partial<TracedCup> = {}): TracedCup => ({
    cup: name,
    parents: [],
    startedOn: 100,
    endedOn: null,
    places: [{ from: more.startedOn ?? 100, place: 'shelf' }],
    batch: null,
    ...more,
  });
  const sick = cup('sick', { parents: ['mother'], startedOn: 100, batch: 'm1' });
  const kindsOf = (others: TracedCup[]) =>
    Object.fromEntries(contactsOf([sick, ...others], 'sick', 125).map(({ cup: name, kinds }) => [name, kinds]));
  it('finds parents, offspring, the session, the shelf and the batch', () => {
    const away = [{ from: 80, place: 'attic' }];
    const kinds = kindsOf([
      cup('mother', { startedOn: 80, places: away }),
      cup('child', { parents: ['sick'], startedOn: 120, places: [{ from: 120, place: 'attic' }] }),
      cup('sibling', { places: away }),
      cup('neighbour', { startedOn: 90 }),
      cup('batchmate', { startedOn: 101, places: away, batch: 'm1' }),
      cup('stranger', { startedOn: 101, places: away }),
      cup('long gone', { startedOn: 10, endedOn: 60 }),
      cup('later', { startedOn: 126, batch: 'm1' }),
    ]);
    expect(kinds).toEqual({
      mother: ['parent'],
      child: ['offspring'],
      sibling: ['same session'],
      neighbour: ['same place'],
      batchmate: ['same batch'],
    });
  });
  it('minds when they stood together', () => {
    const moved = cup('moved', {
      startedOn: 90,
      places: [
        { from: 90, place: 'shelf' },
        { from: 100, place: 'attic' },
      ],
    });
    expect(kindsOf([moved])).toEqual({});
    const [contact] = contactsOf(
      [
        sick,
        {
          ...moved,
          places: [
            { from: 90, place: 'attic' },
            { from: 110, place: 'shelf' },
          ],
        },
      ],
      'sick',
      125,
    );
    expect(contact?.sinceDay).toBe(110);
  });
  it('wants a cup that exists', () => expect(() => contactsOf([sick], 'x', 125)).toThrow(/x is not/));
});

describe('two species in a cup', () => {
  const quick = {
    name: 'melanogaster',
    founders: 25,
    generationDays: 14,
    offspringPerFounder: 10,
    firstEmergenceDay: 11,
  };
  const slow = { name: 'hydei', founders: 25, generationDays: 28, offspringPerFounder: 10, firstEmergenceDay: 20 };
  it('the faster one wins: after 28 days 100 to 10, so 10/11', () => {
    const { winner, winnerShareByDay } = takeover(slow, quick, 28);
    expect(winner).toBe('melanogaster');
    expect(winnerShareByDay[0]).toBe(0.5);
    expect(winnerShareByDay[28]).toBeCloseTo(10 / 11, 12);
  });
  it('says when the other is nearly gone and how to part them', () => {
    const { loserBelowTenthDay, todo } = takeover(quick, slow, 60);
    expect(loserBelowTenthDay).toBe(27);
    expect(todo[0]).toMatch(/first 9 days of emergence are melanogaster/);
    expect(takeover(quick, { ...slow, firstEmergenceDay: 12 }, 5).todo).toHaveLength(1);
  });
  it('refuses nonsense', () => expect(() => takeover(quick, { ...slow, founders: 0 }, 5)).toThrow(/founders of hydei/));
});
