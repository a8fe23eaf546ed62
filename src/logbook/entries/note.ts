/** Free text, about a cup or about nothing in particular. */
import { said } from '../../foundation/index.ts';
import { entryKind, nameOf } from './entry-kind.ts';
import { key, longText } from './field-checks.ts';

export const note = entryKind('note', { text: longText(4000), culture: key.optional() }, (e, names) =>
  e.culture === undefined ? said`Note: ${e.text}` : said`Note on ${nameOf(names, 'culture', e.culture)}: ${e.text}`,
);
