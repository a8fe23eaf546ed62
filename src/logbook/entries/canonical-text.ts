/** One text for one entry, so that replicas agree byte for byte: envelope first, then fields by name. */
import type { Entry } from './entry.ts';

const first = ['id', 'kind', 'on', 'time', 'recordedAt', 'by'];

/** The entry as JSON on one line, without blanks, fields in a fixed order, absent ones left out. */
export function canonicalText(entry: Entry): string {
  const record = entry as unknown as Record<string, unknown>;
  const rest = Object.keys(record)
    .filter((field) => !first.includes(field))
    .sort();
  return objectText(record, [...first, ...rest]);
}

function objectText(record: Record<string, unknown>, fields: readonly string[]): string {
  const parts = fields
    .filter((f) => record[f] !== undefined)
    .map((f) => `${JSON.stringify(f)}:${valueText(record[f])}`);
  return `{${parts.join(',')}}`;
}

function valueText(value: unknown): string {
  if (Array.isArray(value)) return `[${value.map(valueText).join(',')}]`;
  if (typeof value === 'object' && value !== null) {
    return objectText(value as Record<string, unknown>, Object.keys(value).sort());
  }
  return JSON.stringify(value);
}
