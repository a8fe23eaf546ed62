/** JSON Schema (draft 2020-12) of every kind, made from the checks that guard the doors. */
import { z } from 'zod';
import { entryKindNames, entryKinds } from './entry.ts';

/** One schema for each kind of entry, by kind. Rules between fields are in the checks only. */
export function entryJsonSchemas(): Record<string, unknown> {
  return Object.fromEntries(entryKindNames.map((kind) => [kind, schemaOf(entryKinds[kind].entry)]));
}

function schemaOf(check: z.ZodType): unknown {
  return z.toJSONSchema(check, { unrepresentable: 'any', reused: 'inline' });
}
