/** A cup moved to another place. */
import { said } from '../../foundation/index.ts';
import { entryKind, nameOf } from './entry-kind.ts';
import { key } from './field-checks.ts';

export const moved = entryKind(
  'moved',
  { culture: key, place: key },
  (e, names) => said`${nameOf(names, 'culture', e.culture)} moved to ${nameOf(names, 'place', e.place)}.`,
);
