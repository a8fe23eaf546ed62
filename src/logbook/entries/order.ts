/** Flies or cups promised to someone for a day. */
import { said } from '../../foundation/index.ts';
import { entryKind, nameOf } from './entry-kind.ts';
import { cupsSaid, fliesSaid, listed } from './entry-words.ts';
import { flyCount, isoDay, key, whole } from './field-checks.ts';

export const order = entryKind(
  'order',
  { order: key, due: isoDay, strain: key, flies: flyCount.optional(), cups: whole(0, 10_000).optional() },
  (e, names) => {
    const what = listed([e.flies !== undefined && fliesSaid(e.flies), e.cups !== undefined && cupsSaid(e.cups)]);
    const strain = nameOf(names, 'strain', e.strain);
    return said`Promised (${e.order}): ${what ?? said`nothing`} of ${strain} for ${{ day: e.due }}.`;
  },
);
