/** A JSON Lines logbook read from a file or standard input, checked as one batch. */
import { createReadStream } from 'node:fs';
import { failed, ok, type Result } from '../foundation/index.ts';
import { checkBatch, type Entry, type EntryDraft, entryIdMaker, readLogbook } from '../logbook/index.ts';
import { fileFault } from './file-fault.ts';

/** `-` is standard input. */
export const standardInput = '-';

/**
 * The entries of a file, checked each and against those that the logbook holds (`existing`). Lines
 * without id, recordedAt and by are completed by `complete`.
 */
export async function readLogbookFile(
  path: string,
  complete: (draft: EntryDraft) => Entry,
  existing: Iterable<Entry> = [],
): Promise<Result<Entry[]>> {
  const file = path === standardInput ? 'standard input' : path;
  const chunks = path === standardInput ? process.stdin : createReadStream(path);
  try {
    const read = await readLogbook(chunks, { file, complete });
    if (!read.ok) return read;
    const entries = read.value.map(({ entry }) => entry);
    const lineOf = (index: number) => `${file}, line ${read.value[index]?.line}`;
    const checked = checkBatch(entries, existing, (_, index) => lineOf(index));
    return checked.ok ? ok(entries) : checked;
  } catch (error) {
    return failed({ where: file, found: fileFault(error), expected: 'a JSON Lines file that can be read' });
  }
}

/**
 * Completes hand-written lines of a file that is only read: the same file always gives the same
 * entries, so no clock and no chance.
 */
export function fileEntryMaker(): (draft: EntryDraft) => Entry {
  let madeAt = 0;
  const newId = entryIdMaker({ now: () => madeAt, randomBytes: (n) => new Uint8Array(n) });
  return (draft) => {
    madeAt = Date.parse(`${draft.on}T12:00:00Z`);
    return { id: newId(), recordedAt: `${draft.on}T12:00:00.000Z`, by: 'file', ...draft } as Entry;
  };
}
