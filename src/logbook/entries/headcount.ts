/** Animals that joined a group or left it: deaths, sales, births, purchases. */
import { counted, entryKind, nameOf } from './entry-kind.ts';
import { key, whole, word } from './field-checks.ts';

export const headcountReasons = ['died', 'sold', 'given', 'escaped', 'born', 'bought', 'moved', 'counted'] as const;

export const headcount = entryKind(
  'headcount',
  {
    group: key,
    change: whole(-100_000, 100_000).describe('Below 0 for animals that are gone'),
    reason: word(headcountReasons),
  },
  (e, names) =>
    `${nameOf(names, 'group', e.group)}: ${counted(Math.abs(e.change), 'animal')} ${e.change < 0 ? 'fewer' : 'more'} (${e.reason}).`,
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
