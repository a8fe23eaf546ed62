/** Free text, about a cup or about nothing in particular. */
import { entryKind, nameOf } from './entry-kind.ts';
import { key, longText } from './field-checks.ts';

export const note = entryKind(
  'note',
  { text: longText(4000), culture: key.optional() },
  (e, names) => `Note${e.culture === undefined ? '' : ` on ${nameOf(names, 'culture', e.culture)}`}: ${e.text}`,
);
