/** The fields of one kind of entry, as `record KIND FIELD=VALUE` takes them, read off the kind's own check. */
import { entryJsonSchemas } from '../../logbook/index.ts';
import { wrapped } from './layout.ts';

/** The parts of a JSON Schema that a keeper wants to know. */
interface Schema {
  description?: string;
  type?: string;
  const?: unknown;
  enum?: unknown[];
  format?: string;
  pattern?: string;
  maxLength?: number;
  minimum?: number;
  maximum?: number;
  anyOf?: Schema[];
  items?: Schema;
  properties?: Record<string, Schema>;
  required?: string[];
}

const asJson = 'as JSON, see docs/formats/logbook.md';

/** Given by the device, or the same in every kind. */
const elsewhere = new Set(['id', 'kind', 'recordedAt', 'by', 'on', 'time', 'note']);

/** Lines of at most 80 columns: first the fields that must be given, then the others. */
export function entryHelp(kind: string): string[] {
  const schema = entryJsonSchemas()[kind] as Schema;
  const fields = fieldsOf(schema, '');
  const width = Math.max(...fields.map(({ name }) => name.length));
  const list = (wanted: boolean) =>
    fields
      .filter(({ required }) => required === wanted)
      .flatMap(({ name, field }) => wrapped(wordsOf(field), `  ${name.padEnd(width)}  `));
  const required = list(true);
  return [
    `Usage: flylarder record ${kind} FIELD=VALUE ... [OPTIONS]`,
    ...(required.length > 0 ? ['', 'Needed:', ...required] : []),
    '',
    'If known:',
    ...list(false),
    '',
    'And of every entry: on=DAY, time=18:30, note=TEXT. A key is a short name of your',
    'own, without spaces; a strain is melanogaster, hydei or one you recorded. Lists',
    'have commas between, a.b=VALUE is a part of a field.',
  ];
}

/** What the check of days says of every day. */
const anyDay = 'Calendar day, ISO 8601';

interface Field {
  name: string;
  required: boolean;
  field: Schema;
}

function fieldsOf(schema: Schema, within: string): Field[] {
  const names = Object.keys(schema.properties ?? {}).filter((name) => within !== '' || !elsewhere.has(name));
  return names.flatMap((name) => {
    const field = schema.properties?.[name] as Schema;
    const required = within === '' && (schema.required ?? []).includes(name);
    if (field.type === 'object' && field.properties) return fieldsOf(field, `${within}${name}.`);
    return [{ name: `${within}${name}`, required, field }];
  });
}

function wordsOf(field: Schema): string {
  const kind = kindOf(field);
  return field.description && field.description !== anyDay ? `${field.description}; ${kind}` : kind;
}

function kindOf({
  enum: words,
  type,
  format,
  pattern,
  maxLength,
  items,
  minimum,
  maximum,
  anyOf,
  const: fixed,
}: Schema): string {
  if (words) return words.join(' | ');
  if (fixed !== undefined) return String(fixed);
  if (anyOf) return anyOf.map(kindOf).join(' | ');
  if (type === 'array') return items && items.type !== 'object' ? `list of ${kindOf(items)}` : `list, ${asJson}`;
  if (type === 'integer' || type === 'number') {
    return `${type === 'integer' ? 'whole number' : 'number'} from ${minimum} to ${maximum}`;
  }
  if (type === 'boolean') return 'yes | no';
  if (type === 'object') return asJson;
  if (format === 'date') return 'day, such as 2026-11-25';
  return pattern !== undefined && maxLength === undefined ? 'key' : 'text';
}
