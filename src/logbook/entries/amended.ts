/** A correction: names the entry that it amends, and voids it or puts another in its place. */
import { z } from 'zod';
import { type Said, said } from '../../foundation/index.ts';
import { entryKind, type Names } from './entry-kind.ts';
import { entryId } from './field-checks.ts';
import { reportedKinds } from './reported-kinds.ts';

const k = reportedKinds;
const replacement = z.discriminatedUnion(
  'kind',
  [
    k.household.replacement,
    k.place.replacement,
    k.temperature.replacement,
    k.strain.replacement,
    k.container.replacement,
    k.recipe.replacement,
    k.batch.replacement,
    k.started.replacement,
    k.bought.replacement,
    k.seen.replacement,
    k.harvested.replacement,
    k.moved.replacement,
    k.ended.replacement,
    k.group.replacement,
    k.fed.replacement,
    k.absence.replacement,
    k.order.replacement,
    k.stock.replacement,
    k.note.replacement,
    k.purchase.replacement,
    k.headcount.replacement,
    k.weighed.replacement,
    k.logger.replacement,
  ],
  { error: `the corrected entry, with a kind among ${Object.keys(k).join(', ')}` },
);

export type Replacement = z.output<typeof replacement>;

export const amended = entryKind(
  'amended',
  {
    amends: entryId.describe('The entry that is corrected; an amendment can be amended too'),
    void: z.literal(true, { error: 'true, or leave the field out' }).optional(),
    replacement: replacement.optional(),
  },
  (e, names) =>
    e.replacement ? said`Corrected to: ${replacementSentence(e.replacement, names)}` : said`An entry taken back.`,
  (e) => {
    if ((e.void === undefined) === (e.replacement === undefined)) {
      return [
        {
          field: 'replacement',
          found: e.void ? 'void and replacement together' : 'neither void nor replacement',
          expected: 'one of the two',
        },
      ];
    }
    return e.replacement ? replacementContradictions(e.replacement) : [];
  },
);

interface AnyKind {
  sentence(fields: Replacement, names: Names): Said;
  contradictions(fields: Replacement): { field: string; found: string; expected: string }[];
}

// The kind and the fields come from one checked value, which TypeScript cannot follow through a lookup.
function kindOf(r: Replacement): AnyKind {
  return reportedKinds[r.kind] as unknown as AnyKind;
}

function replacementSentence(r: Replacement, names: Names): Said {
  return kindOf(r).sentence(r, names);
}

function replacementContradictions(r: Replacement) {
  return kindOf(r)
    .contradictions(r)
    .map((p) => ({ ...p, field: `replacement.${p.field}` }));
}
