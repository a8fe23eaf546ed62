/** What every kind of entry is made of: its envelope, its own fields, and its line in plain words. */
import { z } from 'zod';
import type { Problem, Said } from '../../foundation/index.ts';
import { entryId, instant, isoDay, line, longText, timeOfDay } from './field-checks.ts';

/** Names that the keeper gave, by key, for sentences; a key without a name stands for itself. */
export type Names = Partial<Record<Named, ReadonlyMap<string, string>>>;
export type Named = 'culture' | 'place' | 'strain' | 'container' | 'recipe' | 'group';

/** What happened, as a person reports it. */
const happening = {
  on: isoDay.describe('The day it happened'),
  time: timeOfDay.optional().describe('Time of day where it happened'),
  note: longText(4000).optional(),
};

/** What a device adds when the entry is made; never changed afterwards. */
const making = {
  id: entryId,
  recordedAt: instant.describe('When it was written down'),
  by: line(80).describe('Person or device'),
};

/** A contradiction between the fields of one entry. */
export type FieldProblem = Omit<Problem, 'where'> & { field: string };

/**
 * Declares a kind of entry.
 * `sentence` is its line in plain words, without the day; `contradictions` lists what no field check
 * can see alone.
 */
export function entryKind<const K extends string, S extends z.ZodRawShape>(
  kind: K,
  fields: S,
  sentence: (fields: z.output<z.ZodObject<S>>, names: Names) => Said,
  contradictions: (fields: z.output<z.ZodObject<S>> & { on?: string | undefined }) => FieldProblem[] = () => [],
) {
  const tag = { kind: z.literal(kind) };
  return {
    kind,
    fieldNames: Object.keys(fields),
    /** The whole entry, as it is stored. */
    entry: z.strictObject({
      id: making.id,
      ...tag,
      ...happening,
      recordedAt: making.recordedAt,
      by: making.by,
      ...fields,
    }),
    /** What a person reports, before a device completes it. */
    draft: z.strictObject({ ...tag, ...happening, ...fields }),
    /** What an amendment puts in an entry's place; day, time and note stay when left out. */
    replacement: z.strictObject({ ...tag, ...happening, on: happening.on.optional(), ...fields }),
    sentence,
    contradictions,
  };
}

export function nameOf(names: Names, what: Named, key: string): string {
  return names[what]?.get(key) ?? key;
}
