import { describe, expect, it } from 'vitest';
import { bareCup, look, strainOf, take } from '../../tests/simulation/learning-cup.ts';
import { type Said, sentence } from '../foundation/index.ts';
import { likelyCauses } from './causes.ts';
import type { CupEvidence, CupSigns, DoubtfulNote } from './evidence.ts';
import { learn } from './learn.ts';
import { ordinaryPrior } from './priors.ts';

const signs: CupSigns = {
  moisture: null,
  mould: false,
  mites: false,
  founderAgeDays: null,
  usualFounders: null,
  warmerByC: null,
  measuredShare: 0,
  logPacePerC: null,
};
const english = (text: Said) =>
  sentence(text, { locale: 'en-GB', of: (words) => words, day: (day) => day, degrees: 'C' });
const foundIn = (note: DoubtfulNote | undefined) => (note ? english(note.found) : '');
const beliefOf = (cup: CupEvidence) =>
  learn({ seed: 2, draws: 400, prior: ordinaryPrior, strains: [strainOf([cup, ...ordinaryCups()])] }).cups.get('cup');

/** Six cups that ran as the books say. */
function ordinaryCups(): CupEvidence[] {
  return Array.from({ length: 6 }, (_, i) =>
    bareCup({
      id: `ordinary-${i}`,
      session: i + 1,
      ageDays: 17,
      looks: [look(12, { absent: ['adults'] }), look(14, { present: ['adults'] }), look(17, { count: 150 + 10 * i })],
    }),
  );
}

describe('a cup off course', () => {
  it('is pointed at when it is late, with its chance and the loss of flies', () => {
    const off = beliefOf(bareCup({ ageDays: 19, looks: [look(19, { absent: ['adults'] })] }))?.offCourse;
    expect(off?.direction).toBe('late');
    expect(off && english(off.what)).toMatch(/no flies yet on day 19/);
    expect(off?.chance).toBeLessThan(0.025);
  });

  it('is pointed at when it gives few flies, and the supply falls', () => {
    const off = beliefOf(
      bareCup({
        ageDays: 19,
        looks: [look(13, { present: ['adults'] }), look(17, { count: 6 }), look(19, { count: 8 })],
      }),
    )?.offCourse;
    expect(off?.direction).toBe('few');
    expect(off?.suppliedFliesIn14Days).toBeLessThan(-10);
  });

  it('is not pointed at when it runs as the others do', () => {
    const cup = bareCup({ ageDays: 17, looks: [look(13, { absent: ['adults'] }), look(17, { count: 170 })] });
    expect(beliefOf(cup)?.offCourse).toBeNull();
  });

  it('puts first what was noted, and last what was looked at and in order', () => {
    const order = (s: Partial<CupSigns>) =>
      likelyCauses(bareCup({ signs: { ...signs, ...s } }), 'few').map((c) => english(c.cause));
    expect(order({ mites: true })[0]).toBe('mites');
    expect(order({ mould: true })[0]).toBe('mould');
    expect(order({ moisture: 'dry' })[0]).toBe('too dry');
    expect(order({ moisture: 'good' }).indexOf('too dry')).toBeGreaterThan(order({}).indexOf('too dry'));
    const cool = likelyCauses(bareCup({ signs: { ...signs, warmerByC: -2 } }), 'late')[0];
    expect([cool && english(cool.cause), cool?.noted]).toEqual(['too cool', true]);
  });
});

describe('cold as a cause', () => {
  /** A cup whose flies come two or three days after the others', with what was measured. */
  const late = (more: Partial<CupSigns>) =>
    beliefOf(
      bareCup({
        ageDays: 19,
        looks: [
          look(9, { absent: ['pupae'] }),
          look(10, { present: ['pupae'] }),
          look(15, { absent: ['adults'] }),
          look(17, { present: ['adults'] }),
        ],
        signs: { ...signs, logPacePerC: 0.1, ...more },
      }),
    )?.offCourse;
  const placeOf = (more: Partial<CupSigns>) =>
    late(more)?.causes.findIndex((c) => english(c.cause) === 'too cool') ?? -1;

  it('is given in degrees: the pace it lost over what a degree does', () => {
    const off = late({});
    expect(off?.daysLate.p50).toBeGreaterThan(1);
    expect(off?.asIfWarmerByC).toBeLessThan(-0.8);
    expect(off?.asIfWarmerByC).toBeGreaterThan(-4);
    expect(late({ logPacePerC: null })?.asIfWarmerByC).toBeNull();
  });

  it('comes first until readings say that it was as warm as expected', () => {
    expect(placeOf({})).toBe(0);
    expect(late({ warmerByC: -1.4, measuredShare: 0.9 })?.causes[0]).toMatchObject({ noted: true });
    expect(placeOf({ warmerByC: 0.1, measuredShare: 0.9 })).toBeGreaterThan(2);
    expect(placeOf({ warmerByC: 0.1, measuredShare: 0.2 })).toBe(0);
  });

  it('is no cause where more cold would be needed than anybody overlooks', () => {
    expect(placeOf({ logPacePerC: 0.01 })).toBeGreaterThan(2);
  });
});

describe('doubtful notes', () => {
  it('names what cannot be, and leaves it out', () => {
    const wrong = bareCup({ ageDays: 18, looks: [look(25, { count: 3000 }), look(16, { count: -4 })] });
    const belief = beliefOf(wrong);
    expect(belief?.doubtful.map((d) => d.chanceWrong)).toEqual([1, 1]);
    expect(foundIn(belief?.doubtful[1])).toMatch(/after the cup ended|after/);
    expect(belief?.draws).toEqual(beliefOf(bareCup({ ageDays: 18 }))?.draws);
  });

  it('points at a count that the notes around it contradict, and keeps to them', () => {
    const looks = [look(16, { count: 100 }), look(17, { count: 3000 }), look(18, { count: 170 })];
    const belief = beliefOf(bareCup({ ageDays: 18, looks }));
    expect(belief?.doubtful).toHaveLength(1);
    expect(foundIn(belief?.doubtful[0])).toMatch(/3,000 on day 17/);
    const flies = [...(belief?.draws.fliesNow ?? [])].sort((a, b) => a - b);
    expect(flies[200]).toBeLessThan(320);
  });

  it('points at more flies taken than the cup can hold', () => {
    const belief = beliefOf(bareCup({ ageDays: 16, takes: [take(15, { flies: 5000 })] }));
    expect(foundIn(belief?.doubtful[0])).toMatch(/5,000 flies taken on day 15/);
  });

  it('finds none in an ordinary log', () => {
    expect(beliefOf(ordinaryCups()[0] as CupEvidence)).toBeUndefined();
    const cup = { ...(ordinaryCups()[0] as CupEvidence), id: 'cup' };
    expect(beliefOf(cup)?.doubtful).toEqual([]);
  });
});
