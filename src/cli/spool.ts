/**
 * A file's entries, checked one by one and set down in a temporary file, so that they can be read again and
 * again without being held in memory, and completed ones keep the ids that they were given.
 */
import { once } from 'node:events';
import { createReadStream, createWriteStream, mkdtempSync, rmSync } from 'node:fs';
import { tmpdir } from 'node:os';
import { join } from 'node:path';
import { createInterface } from 'node:readline';
import { failed, ok, type Problem, type Result } from '../foundation/index.ts';
import { canonicalText, type Entry, type EntryDraft, type PlacedEntry, readJsonLines } from '../logbook/index.ts';
import { StoreFault } from '../store/store.ts';
import { fileFault } from './file-fault.ts';
import { standardInput } from './logbook-file.ts';

const mostProblems = 20;
const pieceSize = 1000;

export class Spool {
  readonly file: string;
  /** Ids of the first entries, for a report. */
  readonly ids: string[] = [];
  count = 0;
  private readonly folder = mkdtempSync(join(tmpdir(), 'flylarder-import-'));
  private readonly path = join(this.folder, 'entries');
  private readonly mostIds: number;

  /** @param file what to call the source in messages. */
  constructor(file: string, mostIds: number) {
    this.file = file;
    this.mostIds = mostIds;
  }

  /** Takes the source's entries; the first problems when any is wrong. */
  async fill(source: AsyncIterable<Uint8Array>, complete: (draft: EntryDraft) => Entry): Promise<Result<null>> {
    const out = createWriteStream(this.path, { mode: 0o600 });
    const broken = once(out, 'error').then(([error]) => Promise.reject(this.fault(error)));
    broken.catch(() => {});
    const problems: Problem[] = [];
    for await (const read of readJsonLines(source, { file: this.file, complete })) {
      if (!read.ok) problems.push(...read.problems);
      else if (problems.length === 0) {
        const { line, entry } = read.value;
        this.count++;
        if (this.ids.length < this.mostIds) this.ids.push(entry.id);
        if (!out.write(`${line} ${canonicalText(entry)}\n`)) await Promise.race([once(out, 'drain'), broken]);
      }
      if (problems.length >= mostProblems) break;
    }
    out.end();
    await Promise.race([once(out, 'close'), broken]);
    return problems.length > 0 ? failed(...problems.slice(0, mostProblems)) : ok(null);
  }

  async *entries(): AsyncGenerator<PlacedEntry> {
    for await (const text of createInterface({ input: createReadStream(this.path), crlfDelay: 0 })) {
      const at = text.indexOf(' ');
      yield { entry: JSON.parse(text.slice(at + 1)) as Entry, where: `${this.file}, line ${text.slice(0, at)}` };
    }
  }

  async *pieces(): AsyncGenerator<Entry[]> {
    let piece: Entry[] = [];
    for await (const { entry } of this.entries()) {
      piece.push(entry);
      if (piece.length < pieceSize) continue;
      yield piece;
      piece = [];
    }
    if (piece.length > 0) yield piece;
  }

  /** The store names an entry by its id; the file's owner knows it by its line, the last of that id. */
  async placed(problem: Problem): Promise<Problem> {
    let found = problem;
    for await (const { entry, where } of this.entries()) {
      if (problem.where === `entry ${entry.id}`) found = { ...problem, where };
    }
    return found;
  }

  remove(): void {
    rmSync(this.folder, { recursive: true, force: true });
  }

  private fault(error: unknown): StoreFault {
    const expected = 'a place with room for a copy of the file; TMPDIR names another';
    return new StoreFault({ where: this.folder, found: String(error), expected }, error);
  }
}

/** The entries of a file or of standard input, to be removed after use; its problems when any line is bad. */
export async function spooled(
  path: string,
  complete: (draft: EntryDraft) => Entry,
  mostIds: number,
): Promise<Result<Spool>> {
  const spool = new Spool(path === standardInput ? 'standard input' : path, mostIds);
  try {
    const source = path === standardInput ? process.stdin : createReadStream(path);
    const filled = await spool.fill(source, complete);
    if (filled.ok) return ok(spool);
    spool.remove();
    return filled;
  } catch (error) {
    spool.remove();
    if (error instanceof StoreFault) throw error;
    return failed({ where: spool.file, found: fileFault(error), expected: 'a JSON Lines file that can be read' });
  }
}
