import { describe, expect, it } from 'vitest';
import { frogFacts, on } from '../../../tests/simulation/frog-household.ts';
import { addDays } from '../../foundation/index.ts';
import { today } from '../today.ts';

/** Every cup but the youngest crashed yesterday; the frogs can't wait, the toads a day. */
const crashed = ['c0', 'c1', 'c2', 'c3', 'c4', 'c5'].map((culture) => ({
  kind: 'ended',
  culture,
  reason: 'crashed',
  on: addDays(on, -1),
}));
const buys = {
  kind: 'household',
  on: addDays(on, -20),
  purchase: { leadDays: 3, deliveryWeekdays: ['sat', 'tue'], quarantineDays: 14, pricePerCup: 6 },
};
const toads = {
  kind: 'group',
  group: 'toads',
  name: 'Toads',
  count: 2,
  fliesPerFeeding: 10,
  strain: 'melanogaster',
  canWaitDays: 1,
};
const question = { on, seed: 1, weeks: 3 };
const warnings = (language: 'en' | 'de', ...more: object[]) =>
  today(frogFacts(...more), { ...question, language }).warnings.filter((text) => /short|reichen/.test(text));

describe('days that will be short for all that can be bought', () => {
  it('are told with what ends them and who can wait', () => {
    const told = warnings('en', buys, toads, ...crashed);
    // 60 flies are due today and 80 on the days after it, with those of the toads that could wait: 73 to 77 a day.
    // No fly is left today; the parcel that an order of today can reach comes on Saturday, the 28th.
    expect(told[0]).toMatch(
      /^Drosophila melanogaster may fall short from Wed 25 Nov to \S+ \d+ Nov: on the worst day with a chance of 100 %, by about [67]\d of the 7\d flies wanted\. No parcel ordered now comes before Sat 28 Nov\. With the order in the plan \(cups: \d+, to order by Wed 25 Nov\) it is as safe as asked again from /,
    );
    expect(told[0]).toContain(
      'Cannot wait and come first: frogs. Can be fed later, by as many days: Toads (1). What is still missing has to be other prey, or flies from another keeper.',
    );
  });

  it('are none in the household as it was', () => {
    expect(warnings('en', buys, toads)).toEqual([]);
  });

  it('are told in German', () => {
    expect(warnings('de', buys, toads, ...crashed)[0]).toMatch(/^Drosophila melanogaster: von .* reichen die Fliegen/);
  });
});
