/** Cups ordered from someone else, until they arrive and are written down as bought. */
import { said } from '../../foundation/index.ts';
import { entryKind, nameOf } from './entry-kind.ts';
import { cupsSaid } from './entry-words.ts';
import { isoDay, key, whole, word } from './field-checks.ts';

export const purchase = entryKind(
  'purchase',
  {
    purchase: key,
    strain: key,
    cups: whole(0, 1000).describe('0 when the order was cancelled'),
    stage: word(['producing', 'young']).optional().describe('Producing when left out'),
    arrives: isoDay.describe('Day on which the parcel is expected'),
  },
  (e, names) =>
    e.cups === 0
      ? said`Purchase ${e.purchase} cancelled.`
      : said`${cupsSaid(e.cups)} of ${nameOf(names, 'strain', e.strain)} ordered, expected on ${{ day: e.arrives }}.`,
  (e) =>
    e.on !== undefined && e.arrives < e.on
      ? [{ field: 'arrives', found: e.arrives, expected: `a day not before ${e.on}, when it was ordered` }]
      : [],
);
