/** Flies fed to a group. */
import { counted, entryKind, listed, nameOf } from './entry-kind.ts';
import { amountWords } from '../fold/facts.ts';
import { cultureList, flyCount, key, listOf, name, word } from './field-checks.ts';

export const fed = entryKind(
  'fed',
  {
    group: key,
    flies: flyCount,
    fromCultures: cultureList.optional(),
    leftOver: word(amountWords).optional(),
    supplements: listOf(name, 20).optional().describe('What the flies were dusted with'),
  },
  (e, names) => {
    const from = listed((e.fromCultures ?? []).map((c) => nameOf(names, 'culture', c)));
    const dust = listed(e.supplements ?? []);
    return `${nameOf(names, 'group', e.group)} fed ${counted(e.flies, 'fly', 'flies')}${from && ` from ${from}`}${
      dust && `, dusted with ${dust}`
    }${e.leftOver ? `, left over: ${e.leftOver}` : ''}.`;
  },
);
