/**
 * One entry from words of a command line, `field=value`. What a value is read as (number, list, text)
 * follows from the kind's own check; `a.b=value` fills a field within a field.
 */
import { type Day, failed, type Problem, type Result, nearestName } from '../foundation/index.ts';
import { checkDraft, type EntryDraft, entryJsonSchemas } from '../logbook/index.ts';

/** The parts of a JSON Schema that say how a word is to be read. */
interface Schema {
  type?: string;
  const?: unknown;
  anyOf?: Schema[];
  items?: Schema;
  properties?: Record<string, Schema>;
}

/** The draft that the words describe; its day is `on` unless a word says otherwise. */
export function draftFromWords(kind: string, words: readonly string[], on: Day): Result<EntryDraft> {
  const schema = entryJsonSchemas()[kind] as Schema;
  const draft: Record<string, unknown> = { kind, on };
  const given = new Set<string>();
  for (const word of words) {
    const problem = put(word, kind, schema, draft, given);
    if (problem) return failed(problem);
  }
  return checkDraft(draft, kind);
}

function put(
  word: string,
  kind: string,
  schema: Schema,
  draft: Record<string, unknown>,
  given: Set<string>,
): Problem | null {
  const at = word.indexOf('=');
  if (at < 1) return { where: kind, found: `"${word}"`, expected: 'FIELD=VALUE, such as flies=40' };
  const path = word.slice(0, at);
  if (overlaps(path, given))
    return { where: `${kind}, ${path}`, found: 'the field twice', expected: 'each field once' };
  given.add(path);
  const names = path.split('.');
  const problem = unknownField(names, kind, schema);
  if (problem) return problem;
  putAt(draft, names, valueOf(word.slice(at + 1), schemaAt(schema, names)));
  return null;
}

/** True when the field, a part of it or what it is a part of was given before. */
function overlaps(path: string, given: ReadonlySet<string>): boolean {
  return [...given].some((other) => `${path}.`.startsWith(`${other}.`) || `${other}.`.startsWith(`${path}.`));
}

function unknownField(names: readonly string[], kind: string, schema: Schema): Problem | null {
  let at: Schema | undefined = schema;
  for (const name of names) {
    const known: string[] = Object.keys(at?.properties ?? {}).filter((field) => !envelope.has(field));
    if (!at?.properties || !Object.hasOwn(at.properties, name) || envelope.has(name)) {
      const near = nearestName(name, known);
      const expected = near ?? (known.length > 0 ? `one of ${known.join(', ')}` : 'a field without parts');
      return { where: `${kind}, ${names.join('.')}`, found: 'an unknown field', expected };
    }
    at = at.properties[name];
  }
  return null;
}

/** Made here, never given. */
const envelope = new Set(['id', 'kind', 'recordedAt', 'by']);

function schemaAt(schema: Schema, names: readonly string[]): Schema {
  return names.reduce<Schema>((at, name) => at.properties?.[name] ?? {}, schema);
}

function putAt(target: Record<string, unknown>, names: readonly string[], value: unknown): void {
  const [name, ...rest] = names as [string, ...string[]];
  if (rest.length === 0) {
    target[name] = value;
    return;
  }
  const inner = (target[name] ?? {}) as Record<string, unknown>;
  target[name] = inner;
  putAt(inner, rest, value);
}

/** The word as its field's type; a word that does not fit stays text, and the check says what would. */
function valueOf(word: string, schema: Schema): unknown {
  if (schema.type === 'array') return listOf(word, schema.items ?? {});
  if (schema.type === 'number' || schema.type === 'integer') return numberOf(word);
  if (schema.type === 'boolean' || typeof schema.const === 'boolean') return yesNoOf(word);
  if (schema.type === 'object' || schema.anyOf) return jsonOf(word);
  return word;
}

function listOf(word: string, items: Schema): unknown {
  if (word.startsWith('[')) return jsonOf(word);
  return word === '' ? [] : word.split(',').map((part) => valueOf(part.trim(), items));
}

function numberOf(word: string): unknown {
  return /^[+-]?(\d+\.?\d*|\.\d+)(e[+-]?\d+)?$/i.test(word.trim()) ? Number(word) : word;
}

function yesNoOf(word: string): unknown {
  if (/^(true|yes)$/i.test(word)) return true;
  return /^(false|no)$/i.test(word) ? false : word;
}

function jsonOf(word: string): unknown {
  try {
    return JSON.parse(word);
  } catch {
    return word;
  }
}
