/** A cup that was bought, or given by someone else. */
import { counted, details, entryKind, nameOf } from './entry-kind.ts';
import { between, founderCount, isoDay, key, mediumMassG, name, surfaceCm2, whole } from './field-checks.ts';

export const bought = entryKind(
  'bought',
  {
    culture: key,
    label: name.optional(),
    strain: key,
    place: key.optional(),
    ageDays: whole(0, 120).describe('Age of the cup on arrival'),
    container: key.optional(),
    mediumMassG: mediumMassG.optional(),
    surfaceCm2: surfaceCm2.optional(),
    founders: founderCount.optional(),
    quarantineUntil: isoDay.optional(),
    purchase: key.optional().describe('The purchase that it came with'),
    price: between(0, 1_000_000).optional(),
  },
  (e, names) =>
    `${e.label ?? nameOf(names, 'culture', e.culture)} bought: ${nameOf(names, 'strain', e.strain)}, ${counted(
      e.ageDays,
      'day',
    )} old${details(e.quarantineUntil !== undefined && `starts no other cup until ${e.quarantineUntil}`)}.`,
  (e) =>
    e.on !== undefined && e.quarantineUntil !== undefined && e.quarantineUntil < e.on
      ? [{ field: 'quarantineUntil', found: e.quarantineUntil, expected: `a day not before ${e.on}, when it came` }]
      : [],
);
