/** Flies fed to a group. */
import { counted, entryKind, listed, nameOf } from './entry-kind.ts';
import { amountWords } from '../fold/facts.ts';
import { cultureList, flyCount, key, word } from './field-checks.ts';

export const fed = entryKind(
  'fed',
  {
    group: key,
    flies: flyCount,
    fromCultures: cultureList.optional(),
    leftOver: word(amountWords).optional(),
  },
  (e, names) => {
    const from = listed((e.fromCultures ?? []).map((c) => nameOf(names, 'culture', c)));
    return `${nameOf(names, 'group', e.group)} fed ${counted(e.flies, 'fly', 'flies')}${from && ` from ${from}`}${
      e.leftOver ? `, left over: ${e.leftOver}` : ''
    }.`;
  },
);
