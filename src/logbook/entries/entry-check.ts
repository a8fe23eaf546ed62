/** The check at every door: unknown data becomes an entry, or a list of what is wrong with it. */
import type { z } from 'zod';
import { addDays, type Day, failed, ok, parseDay, type Problem, type Result } from '../../foundation/index.ts';
import { type Entry, type EntryDraft, entryKindNames, entryKinds } from './entry.ts';
import type { FieldProblem } from './entry-kind.ts';

interface CheckedKind {
  kind: string;
  entry: z.ZodType;
  draft: z.ZodType;
  fieldNames: string[];
  contradictions(fields: unknown): FieldProblem[];
}
const kinds = new Map(Object.entries(entryKinds as unknown as Record<string, CheckedKind>));

/** The entry that `value` is. `where` names its place, such as `file, line 7`; the field is added. */
export function checkEntry(value: unknown, where = 'entry'): Result<Entry> {
  const result = checkAs('entry', value, where);
  if (!result.ok) return result;
  const entry = result.value as Entry;
  const late = tooLate(entry, where);
  return late ? failed(late) : ok(entry);
}

/** The draft that `value` is: an entry before a device adds id, recordedAt and by. */
export function checkDraft(value: unknown, where = 'entry'): Result<EntryDraft> {
  return checkAs('draft', value, where) as Result<EntryDraft>;
}

function checkAs(form: 'entry' | 'draft', value: unknown, where: string): Result<unknown> {
  const kind = kindOf(value, where);
  if (!kind.ok) return kind;
  const parsed = kind.value[form].safeParse(value);
  if (!parsed.success) return failed(...parsed.error.issues.flatMap((i) => problemsOf(i, value, where, kind.value)));
  const contradictions = kind.value.contradictions(parsed.data);
  return contradictions.length > 0
    ? failed(...contradictions.map(({ field, found, expected }) => ({ where: `${where}, ${field}`, found, expected })))
    : ok(parsed.data);
}

function kindOf(value: unknown, where: string): Result<CheckedKind> {
  if (typeof value !== 'object' || value === null || Array.isArray(value)) {
    return failed({ where, found: excerpt(value), expected: 'an object with the fields of an entry' });
  }
  const name = Object.hasOwn(value, 'kind') ? (value as { kind: unknown }).kind : undefined;
  const kind = typeof name === 'string' ? kinds.get(name) : undefined;
  return kind
    ? ok(kind)
    : failed({ where: `${where}, kind`, found: excerpt(name), expected: `one of ${entryKindNames.join(', ')}` });
}

/** A day can be one ahead of UTC somewhere on Earth, never two. */
function tooLate(entry: Entry, where: string): Problem | null {
  const recordedOn = parseDay(entry.recordedAt.slice(0, 10));
  if (!recordedOn.ok)
    return { where: `${where}, recordedAt`, found: entry.recordedAt, expected: 'a year from 1990 to 2200' };
  const last: Day = addDays(recordedOn.value, 1);
  const expected = `a day not after ${last}: the entry was recorded at ${entry.recordedAt}`;
  return entry.on > last ? { where: `${where}, on`, found: entry.on, expected } : null;
}

function problemsOf(issue: z.core.$ZodIssue, value: unknown, where: string, kind: CheckedKind): Problem[] {
  const at = (path: readonly PropertyKey[]) => (path.length === 0 ? where : `${where}, ${path.map(String).join('.')}`);
  if (issue.code === 'unrecognized_keys') {
    const expected =
      issue.path.length === 0
        ? `only the fields of "${kind.kind}": ${kind.fieldNames.join(', ')}, and on, time, note, id, recordedAt, by`
        : 'only the fields that the format names';
    return issue.keys.map((key) => ({
      where: at([...issue.path, excerpt(key).slice(1, -1)]),
      found: 'an unknown field',
      expected,
    }));
  }
  return [{ where: at(issue.path), found: excerpt(valueAt(value, issue.path)), expected: expectedOf(issue) }];
}

/** The check's own sentence; where it has none, the library's is a programmer's. */
function expectedOf(issue: z.core.$ZodIssue): string {
  if (issue.code === 'invalid_type' && issue.message.startsWith('Invalid input')) {
    return issue.expected === 'array' ? 'a list' : 'an object with the fields that the format names';
  }
  const isLength = (issue.code === 'too_small' || issue.code === 'too_big') && issue.origin === 'array';
  return isLength && /^Too (small|big)/.test(issue.message)
    ? 'a list of the length that the format names'
    : issue.message;
}

function valueAt(value: unknown, path: readonly PropertyKey[]): unknown {
  let at: unknown = value;
  for (const key of path) at = at === null || at === undefined ? undefined : (at as Record<PropertyKey, unknown>)[key];
  return at;
}

/** The value as short text for a message. */
export function excerpt(value: unknown): string {
  if (value === undefined) return 'nothing';
  const text = JSON.stringify(value) ?? String(value);
  return text.length > 60 ? `${text.slice(0, 60)}... (${text.length} characters)` : text;
}
