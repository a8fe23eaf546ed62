/** Days on which the keeper is away, from the entry's day on. */
import { said } from '../../foundation/index.ts';
import { entryKind } from './entry-kind.ts';
import { isoDay, yesNo } from './field-checks.ts';

export const absence = entryKind(
  'absence',
  {
    from: isoDay.optional().describe("First day away; the entry's day when left out"),
    until: isoDay.describe('Last day away'),
    sitterFeeds: yesNo.optional().describe('Someone else feeds from the cups meanwhile'),
  },
  (e) => {
    const until = { day: e.until };
    const away = e.from === undefined ? said`Away until ${until}` : said`Away from ${{ day: e.from }} to ${until}`;
    return e.sitterFeeds ? said`${away}; someone else feeds.` : said`${away}; nobody feeds.`;
  },
  (e) => {
    const from = e.from ?? e.on;
    return from !== undefined && e.until < from
      ? [{ field: 'until', found: e.until, expected: `a day not before ${from}` }]
      : [];
  },
);
