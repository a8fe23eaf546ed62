/** Flies fed to a group. */
import { said } from '../../foundation/index.ts';
import { entryKind, nameOf } from './entry-kind.ts';
import { amountSaid, fliesSaid, listed, withCommas } from './entry-words.ts';
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
    const [group, flies] = [nameOf(names, 'group', e.group), fliesSaid(e.flies)];
    return withCommas(
      from === null ? said`${group} fed ${flies}` : said`${group} fed ${flies} from ${from}`,
      dust !== null && said`dusted with ${dust}`,
      e.leftOver && said`left over: ${amountSaid[e.leftOver]}`,
    );
  },
);
