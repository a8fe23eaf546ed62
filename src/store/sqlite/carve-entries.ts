/**
 * Entries found in the raw bytes of a damaged file. Entries are never changed or deleted, so whatever
 * still reads as a whole entry with its checksum behind it is one; long notes that the file keeps in
 * several pieces are not found.
 */
import { readFileSync } from 'node:fs';
import { canonicalText, checkEntry, type Entry } from '../../logbook/index.ts';
import { crc32 } from './crc32.ts';

const beginning = Buffer.from('{"id":"');
const longest = 1 << 16;

/** Each whole entry in the bytes of `file`, as often as it stands there. */
export function* carveEntries(file: string): Generator<Entry> {
  const bytes = readFileSync(file);
  for (let at = bytes.indexOf(beginning); at >= 0; at = bytes.indexOf(beginning, at + 1)) {
    const end = objectEnd(bytes, at);
    const text = end < 0 ? '' : bytes.subarray(at, end).toString('utf8');
    const entry = text !== '' && isFollowedBy(bytes, end, crc32(text)) ? entryOf(text) : null;
    if (entry) yield entry;
  }
}

const [quote, backslash, open, close] = [0x22, 0x5c, 0x7b, 0x7d];

/** The position after the brace that closes the object beginning at `from`, or -1. */
function objectEnd(bytes: Uint8Array, from: number): number {
  let depth = 0;
  let inText = false;
  for (let at = from; at < Math.min(bytes.length, from + longest); at++) {
    const byte = bytes[at] as number;
    if (byte < 0x20) return -1;
    if (inText && byte === backslash) at++;
    else if (byte === quote) inText = !inText;
    else if (!inText && byte === open) depth++;
    else if (!inText && byte === close && --depth === 0) return at + 1;
  }
  return -1;
}

/** SQLite's record format keeps a whole number in as few of 1, 2, 3, 4 or 6 bytes as hold it with its sign. */
function isFollowedBy(bytes: Buffer, at: number, value: number): boolean {
  const length = [1, 2, 3, 4].find((n) => value < 2 ** (8 * n - 1)) ?? 6;
  return at + length <= bytes.length && bytes.readUIntBE(at, length) === value;
}

/** Only an entry whose text is exactly what would be written for it. */
function entryOf(text: string): Entry | null {
  try {
    const checked = checkEntry(JSON.parse(text));
    return checked.ok && canonicalText(checked.value) === text ? checked.value : null;
  } catch {
    return null;
  }
}
