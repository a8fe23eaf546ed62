/** Flies or cups promised to someone for a day. */
import { counted, entryKind, listed, nameOf } from './entry-kind.ts';
import { flyCount, isoDay, key, whole } from './field-checks.ts';

export const order = entryKind(
  'order',
  { order: key, due: isoDay, strain: key, flies: flyCount.optional(), cups: whole(0, 10_000).optional() },
  (e, names) =>
    `Order ${e.order}: ${
      listed([
        e.flies !== undefined && counted(e.flies, 'fly', 'flies'),
        e.cups !== undefined && counted(e.cups, 'cup'),
      ]) || 'nothing'
    } of ${nameOf(names, 'strain', e.strain)} for ${e.due}.`,
);
