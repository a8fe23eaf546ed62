/** A cup moved to another place. */
import { entryKind, nameOf } from './entry-kind.ts';
import { key } from './field-checks.ts';

export const moved = entryKind(
  'moved',
  { culture: key, place: key },
  (e, names) => `${nameOf(names, 'culture', e.culture)} moved to ${nameOf(names, 'place', e.place)}.`,
);
