/** Flies taken out of a cup. */
import { counted, details, entryKind, nameOf } from './entry-kind.ts';
import { between, flyCount, key, whole, word, yesNo } from './field-checks.ts';

export const harvested = entryKind(
  'harvested',
  {
    culture: key,
    flies: flyCount.optional(),
    taps: whole(0, 1000).optional(),
    weightMg: between(0, 10_000_000).optional(),
    emptied: yesNo.optional(),
    purpose: word(['feeding', 'founders', 'given', 'other']).optional().describe('Feeding when left out'),
  },
  (e, names) =>
    `${nameOf(names, 'culture', e.culture)} harvested${details(
      e.flies !== undefined && counted(e.flies, 'fly', 'flies'),
      e.taps !== undefined && counted(e.taps, 'tap'),
      e.weightMg !== undefined && `${e.weightMg} mg`,
      e.emptied && 'emptied',
      e.purpose &&
        e.purpose !== 'feeding' &&
        (e.purpose === 'founders' ? 'as founders' : `for ${e.purpose === 'given' ? 'someone else' : 'other use'}`),
    )}.`,
);
