/** Cups ordered from someone else, until they arrive and are written down as bought. */
import { counted, entryKind, nameOf } from './entry-kind.ts';
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
      ? `Purchase ${e.purchase} cancelled.`
      : `${counted(e.cups, 'cup')} of ${nameOf(names, 'strain', e.strain)} ordered, expected on ${e.arrives}.`,
  (e) =>
    e.on !== undefined && e.arrives < e.on
      ? [{ field: 'arrives', found: e.arrives, expected: `a day not before ${e.on}, when it was ordered` }]
      : [],
);
