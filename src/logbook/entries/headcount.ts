/** Animals that joined a group or left it: deaths, sales, births, purchases. */
import { type Said, said } from '../../foundation/index.ts';
import { entryKind, nameOf } from './entry-kind.ts';
import { animalsSaid } from './entry-words.ts';
import { key, whole, word } from './field-checks.ts';

export const headcountReasons = ['died', 'sold', 'given', 'escaped', 'born', 'bought', 'moved', 'counted'] as const;

const reasonSaid: Record<(typeof headcountReasons)[number], Said> = {
  died: said`died`,
  sold: said`sold`,
  given: said`given away`,
  escaped: said`escaped`,
  born: said`born`,
  bought: said`bought`,
  moved: said`moved to another group`,
  counted: said`counted anew`,
};

export const headcount = entryKind(
  'headcount',
  {
    group: key,
    change: whole(-100_000, 100_000).describe('Below 0 for animals that are gone'),
    reason: word(headcountReasons),
  },
  (e, names) => {
    const [group, animals] = [nameOf(names, 'group', e.group), animalsSaid(Math.abs(e.change))];
    const why = reasonSaid[e.reason];
    return e.change < 0 ? said`${group}: ${animals} fewer (${why}).` : said`${group}: ${animals} more (${why}).`;
  },
  (e) => {
    if (e.change === 0) return [{ field: 'change', found: '0', expected: 'how many more, or fewer with a minus' }];
    const mustFall = ['died', 'sold', 'given', 'escaped'].includes(e.reason);
    const mustRise = ['born', 'bought'].includes(e.reason);
    if (mustFall && e.change > 0)
      return [{ field: 'change', found: `${e.change}, ${e.reason}`, expected: 'a number below 0' }];
    return mustRise && e.change < 0
      ? [{ field: 'change', found: `${e.change}, ${e.reason}`, expected: 'a number above 0' }]
      : [];
  },
);
