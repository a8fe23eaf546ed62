/** A request's body as entries: JSON `{ entries: [...] }` or JSON Lines, each checked. */
import type { HonoRequest } from 'hono';
import { failed, ok, type Problem, type Result } from '../foundation/index.ts';
import { checkDraft, checkEntry, type Entry, type EntryDraft, readLogbook } from '../logbook/index.ts';
import type { Shell } from './shell.ts';

export interface EntryBatch {
  entries: Entry[];
  /** The place of an entry in the request, for problems. */
  where(entry: Entry, index: number): string;
}

const mostProblems = 20;

/** @param by signs entries that name no author. */
export async function readBatch(request: HonoRequest, shell: Shell, by: string): Promise<Result<EntryBatch>> {
  const type = (request.header('content-type') ?? '').split(';')[0]?.trim().toLowerCase();
  const complete = entryMaker(shell, by);
  if (type === 'application/x-ndjson') return fromJsonLines(request, complete);
  if (type === 'application/json') return fromJson(await request.text(), complete);
  const found = type ? `"${type.slice(0, 60)}"` : 'nothing';
  return failed({ where: 'Content-Type', found, expected: 'application/json or application/x-ndjson' });
}

function entryMaker(shell: Shell, by: string): (draft: EntryDraft) => Entry {
  return (draft) => ({ id: shell.newEntryId(), recordedAt: shell.now(), by, ...draft }) as Entry;
}

async function fromJsonLines(
  request: HonoRequest,
  complete: (draft: EntryDraft) => Entry,
): Promise<Result<EntryBatch>> {
  const chunks = request.raw.body ?? new ReadableStream<Uint8Array>({ start: (stream) => stream.close() });
  const read = await readLogbook(chunks, { file: 'body', complete, maxProblems: mostProblems });
  if (!read.ok) return read;
  const lines = read.value;
  if (lines.length === 0) return failed({ where: 'body', found: 'no line', expected: 'one entry a line' });
  return ok({ entries: lines.map(({ entry }) => entry), where: (_, index) => `body, line ${lines[index]?.line}` });
}

function fromJson(text: string, complete: (draft: EntryDraft) => Entry): Result<EntryBatch> {
  const values = entryValues(text);
  if (!values.ok) return values;
  const entries: Entry[] = [];
  const problems: Problem[] = [];
  for (const [i, value] of values.value.entries()) {
    const entry = entryFrom(value, `entries.${i}`, complete);
    if (entry.ok) entries.push(entry.value);
    else problems.push(...entry.problems);
    if (problems.length >= mostProblems) break;
  }
  return problems.length > 0 ? failed(...problems) : ok({ entries, where: (_, index) => `entries.${index}` });
}

function entryValues(text: string): Result<unknown[]> {
  const expected = 'JSON such as {"entries": [{"kind": "note", "on": "2026-11-25", "text": "..."}]}';
  try {
    const body: unknown = JSON.parse(text);
    const entries = typeof body === 'object' && body !== null && 'entries' in body ? body.entries : undefined;
    if (Array.isArray(entries) && entries.length > 0) return ok(entries);
    return failed({ where: 'body', found: 'JSON without a list of entries', expected });
  } catch {
    return failed({ where: 'body', found: 'text that is not JSON', expected });
  }
}

function entryFrom(value: unknown, where: string, complete: (draft: EntryDraft) => Entry): Result<Entry> {
  if (typeof value !== 'object' || value === null || Object.hasOwn(value, 'id')) return checkEntry(value, where);
  const draft = checkDraft(value, where);
  return draft.ok ? checkEntry(complete(draft.value), where) : draft;
}
