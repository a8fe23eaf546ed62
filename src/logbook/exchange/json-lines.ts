/** The logbook as JSON Lines: one entry a line, UTF-8, read and written as streams. */
import { failed, ok, type Problem, type Result } from '../../foundation/index.ts';
import { canonicalText } from '../entries/canonical-text.ts';
import type { Entry, EntryDraft } from '../entries/entry.ts';
import { checkDraft, checkEntry, excerpt } from '../entries/entry-check.ts';
import { type ByteLine, splitLines } from './split-lines.ts';
import { decodeUtf8 } from './utf8.ts';

export interface ReadOptions {
  /** The file's name, for messages. */
  file: string;
  /** Longer lines are refused without being kept; 1 MiB when left out. */
  maxLineBytes?: number;
  /** Completes entries written by hand, without id, recordedAt and by; such are refused without it. */
  complete?: (draft: EntryDraft) => Entry;
}

export interface ReadEntry {
  line: number;
  entry: Entry;
}

/** Each line's entry, or what is wrong with that line. Blank lines are passed over. */
export async function* readJsonLines(
  chunks: AsyncIterable<Uint8Array>,
  options: ReadOptions,
): AsyncGenerator<Result<ReadEntry>> {
  const { file, maxLineBytes = 1 << 20 } = options;
  for await (const byteLine of splitLines(chunks, maxLineBytes)) {
    const where = `${file}, line ${byteLine.line}`;
    const text = textOf(byteLine, where, maxLineBytes);
    if (!text.ok) yield text;
    else if (text.value.trim() !== '') yield entryOf(text.value, byteLine, where, options);
  }
}

/** All entries of a file, or its first problems: nothing of a bad file is used. */
export async function readLogbook(
  chunks: AsyncIterable<Uint8Array>,
  options: ReadOptions & { maxProblems?: number },
): Promise<Result<ReadEntry[]>> {
  const { maxProblems = 20 } = options;
  const entries: ReadEntry[] = [];
  const problems: Problem[] = [];
  for await (const result of readJsonLines(chunks, options)) {
    if (result.ok) entries.push(result.value);
    else problems.push(...result.problems);
    if (problems.length >= maxProblems) break;
  }
  return problems.length > 0 ? failed(...problems.slice(0, maxProblems)) : ok(entries);
}

/** The entries' lines, each with its line feed, in the order they come. */
export async function* writeJsonLines(entries: AsyncIterable<Entry> | Iterable<Entry>): AsyncGenerator<string> {
  for await (const entry of entries) yield `${canonicalText(entry)}\n`;
}

function textOf({ line, bytes, length }: ByteLine, where: string, maxLineBytes: number): Result<string> {
  if (bytes === null) {
    return failed({ where, found: `a line of ${length} bytes`, expected: `at most ${maxLineBytes} bytes a line` });
  }
  const text = decodeUtf8(line === 1 ? withoutMark(bytes) : bytes);
  const expected = 'UTF-8 text, one JSON object a line';
  if (text === null) return failed({ where, found: foreign(bytes), expected });
  return text.includes('\0') ? failed({ where, found: foreign(bytes), expected }) : ok(text);
}

function withoutMark(bytes: Uint8Array): Uint8Array {
  return bytes[0] === 0xef && bytes[1] === 0xbb && bytes[2] === 0xbf ? bytes.subarray(3) : bytes;
}

function foreign(bytes: Uint8Array): string {
  if ((bytes[0] === 0xff && bytes[1] === 0xfe) || (bytes[0] === 0xfe && bytes[1] === 0xff)) return 'UTF-16 text';
  if (bytes[0] === 0x1f && bytes[1] === 0x8b) return 'a compressed file (gzip)';
  return bytes.includes(0) ? 'zero bytes, as in UTF-16 or a binary file' : 'bytes that are not UTF-8';
}

function entryOf(text: string, byteLine: ByteLine, where: string, options: ReadOptions): Result<ReadEntry> {
  const value = parsed(text, byteLine, where);
  if (!value.ok) return value;
  const entry =
    options.complete && isDraft(value.value)
      ? completed(value.value, where, options.complete)
      : checkEntry(value.value, where);
  return entry.ok ? ok({ line: byteLine.line, entry: entry.value }) : entry;
}

function parsed(text: string, { ended, length }: ByteLine, where: string): Result<unknown> {
  try {
    return ok(JSON.parse(text));
  } catch {
    const found = ended
      ? `text that is not JSON: ${excerpt(text)}`
      : `a last line that breaks off after ${length} bytes`;
    return failed({ where, found, expected: 'one whole JSON object on the line' });
  }
}

function isDraft(value: unknown): boolean {
  return typeof value === 'object' && value !== null && !Object.hasOwn(value, 'id');
}

function completed(value: unknown, where: string, complete: (draft: EntryDraft) => Entry): Result<Entry> {
  const draft = checkDraft(value, where);
  return draft.ok ? checkEntry(complete(draft.value), where) : draft;
}
