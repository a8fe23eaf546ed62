/** A cup started at home. Flies taken from other cups as its founders need no entry of their own. */
import { said } from '../../foundation/index.ts';
import { entryKind, nameOf } from './entry-kind.ts';
import { foundersSaid, listed, withCommas } from './entry-words.ts';
import { between, cultureList, founderCount, key, mediumMassG, name, surfaceCm2, word } from './field-checks.ts';
import { yeastWords } from '../fold/facts.ts';

export const started = entryKind(
  'started',
  {
    culture: key,
    label: name.optional(),
    strain: key,
    place: key.optional(),
    container: key.optional(),
    batch: key.optional(),
    founders: founderCount,
    founderAgeDays: between(0, 200).optional(),
    fromCultures: cultureList.optional(),
    mediumMassG: mediumMassG.optional(),
    surfaceCm2: surfaceCm2.optional(),
    liveYeast: word(yeastWords).optional().describe('Live yeast put on the medium'),
  },
  (e, names) => {
    const from = listed((e.fromCultures ?? []).map((c) => nameOf(names, 'culture', c)));
    const founders = foundersSaid(e.founders);
    return withCommas(
      said`${e.label ?? nameOf(names, 'culture', e.culture)} started: ${nameOf(names, 'strain', e.strain)}`,
      from === null ? founders : said`${founders} from ${from}`,
      e.place !== undefined && said`in ${nameOf(names, 'place', e.place)}`,
    );
  },
  (e) =>
    e.fromCultures?.includes(e.culture)
      ? [{ field: 'fromCultures', found: `${e.culture} itself`, expected: 'the cups that gave the founders' }]
      : [],
);
