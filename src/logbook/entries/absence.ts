/** Days on which the keeper is away, from the entry's day on. */
import { entryKind } from './entry-kind.ts';
import { isoDay, yesNo } from './field-checks.ts';

export const absence = entryKind(
  'absence',
  {
    from: isoDay.optional().describe("First day away; the entry's day when left out"),
    until: isoDay.describe('Last day away'),
    sitterFeeds: yesNo.optional().describe('Someone else feeds from the cups meanwhile'),
  },
  (e) =>
    `Away${e.from === undefined ? '' : ` from ${e.from}`} until ${e.until}${
      e.sitterFeeds ? '; someone else feeds' : '; nobody feeds'
    }.`,
  (e) => {
    const from = e.from ?? e.on;
    return from !== undefined && e.until < from
      ? [{ field: 'until', found: e.until, expected: `a day not before ${from}` }]
      : [];
  },
);
