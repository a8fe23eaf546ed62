/** Flies taken out of a cup. */
import { type Said, said } from '../../foundation/index.ts';
import { entryKind, nameOf } from './entry-kind.ts';
import { detailed, fliesSaid } from './entry-words.ts';
import { between, flyCount, key, whole, word, yesNo } from './field-checks.ts';

const purposes = ['feeding', 'founders', 'given', 'other'] as const;
const purposeSaid: Record<(typeof purposes)[number], Said | null> = {
  feeding: null,
  founders: said`as founders`,
  given: said`for someone else`,
  other: said`for other use`,
};

export const harvested = entryKind(
  'harvested',
  {
    culture: key,
    flies: flyCount.optional(),
    taps: whole(0, 1000).optional(),
    weightMg: between(0, 10_000_000).optional(),
    emptied: yesNo.optional(),
    purpose: word(purposes).optional().describe('Feeding when left out'),
  },
  (e, names) =>
    detailed(
      said`${nameOf(names, 'culture', e.culture)} harvested`,
      e.flies !== undefined && fliesSaid(e.flies),
      e.taps !== undefined && (e.taps === 1 ? said`1 tap` : said`${e.taps} taps`),
      e.weightMg !== undefined && said`${e.weightMg} mg`,
      e.emptied && said`emptied`,
      e.purpose && purposeSaid[e.purpose],
    ),
);
