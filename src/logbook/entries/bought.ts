/** A cup that was bought, or given by someone else. */
import { said } from '../../foundation/index.ts';
import { entryKind, nameOf } from './entry-kind.ts';
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
  (e, names) => {
    const age = e.ageDays === 1 ? said`1 day old` : said`${e.ageDays} days old`;
    const cup = said`${e.label ?? nameOf(names, 'culture', e.culture)} bought: ${nameOf(names, 'strain', e.strain)}, ${age}`;
    if (e.quarantineUntil === undefined) return said`${cup}.`;
    return said`${cup}; it starts no other cup until ${{ day: e.quarantineUntil }}.`;
  },
  (e) =>
    e.on !== undefined && e.quarantineUntil !== undefined && e.quarantineUntil < e.on
      ? [{ field: 'quarantineUntil', found: e.quarantineUntil, expected: `a day not before ${e.on}, when it came` }]
      : [],
);
