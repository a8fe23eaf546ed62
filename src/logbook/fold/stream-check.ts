/**
 * The check of a batch that is too large to be held in memory. Whether an entry of the most frequent kinds
 * is right depends on the frame of the logbook alone (its cups with their starts and ends, places, groups,
 * corrections), never on another of its kind. So the frame is held, and the rest is checked piece by piece.
 */
import { failed, ok, type Result } from '../../foundation/index.ts';
import type { Entry } from '../entries/entry.ts';
import { type BatchProblem, contradictions } from './batch-check.ts';
import { foldUntold, type UntoldFacts } from './fold.ts';
import { toldProblems } from './near-names.ts';

/** An entry with its place, such as `log.jsonl, line 7`. */
export interface PlacedEntry {
  entry: Entry;
  where: string;
}

/** Read from its beginning each time; the same entries each time. */
export type Reread<T> = () => AsyncIterable<T>;

export interface StreamCheckOptions {
  /** Entries held beside the frame. */
  pieceSize?: number;
  maxProblems?: number;
}

const frequent = new Set(['seen', 'harvested', 'moved', 'fed', 'weighed', 'temperature', 'stock', 'note']);

/**
 * As `checkBatch`, for a batch and a logbook that are streams. Memory grows with the logbook's frame, not
 * with its length. Two contents under one id are found only when both are in one piece: the store refuses them.
 */
export async function checkStream(
  batch: Reread<PlacedEntry>,
  existing: Reread<Entry>,
  { pieceSize = 20_000, maxProblems = 20 }: StreamCheckOptions = {},
): Promise<Result<null>> {
  const corrected = new Set<string>();
  for await (const { entry } of batch()) if (entry.kind === 'amended') corrected.add(entry.amends);
  for await (const entry of existing()) if (entry.kind === 'amended') corrected.add(entry.amends);
  const isFrame = (entry: Entry) => !frequent.has(entry.kind) || corrected.has(entry.id);
  const frame = new Frame();
  for await (const placed of batch()) if (isFrame(placed.entry)) frame.add(placed);
  for await (const entry of existing()) if (isFrame(entry)) frame.existing.push(entry);
  const problems = new Map<string, BatchProblem>();
  const note = (found: readonly BatchProblem[]) => {
    for (const problem of found) problems.set(`${problem.where}\n${problem.found}`, problem);
    return problems.size >= maxProblems;
  };
  const rest = pieces(batch(), ({ entry }) => !isFrame(entry), pieceSize);
  let isFull = note(frame.check([], []));
  for await (const piece of rest) if (!isFull) isFull = note(frame.check(piece, []));
  // Frequent entries contradict none of their kind: the logbook's own can only be at odds with a new frame.
  if (frame.isChanged && !isFull) {
    for await (const piece of pieces(existing(), (entry) => !isFrame(entry), pieceSize)) {
      if (note(frame.check([], piece))) break;
    }
  }
  if (problems.size === 0) return ok(null);
  return failed(...toldProblems([...problems.values()].slice(0, maxProblems), frame.facts()));
}

class Frame {
  readonly existing: Entry[] = [];
  private readonly batch: PlacedEntry[] = [];

  add(placed: PlacedEntry): void {
    this.batch.push(placed);
  }

  get isChanged(): boolean {
    return this.batch.length > 0;
  }

  /** All keys that the whole logbook knows are the frame's. */
  facts(): UntoldFacts {
    return foldUntold([...this.existing, ...this.batch.map(({ entry }) => entry)]);
  }

  check(piece: readonly PlacedEntry[], existingPiece: readonly Entry[]): BatchProblem[] {
    const all = [...this.batch, ...piece];
    const where = (_: Entry, index: number) => (all[index] as PlacedEntry).where;
    const entries = all.map(({ entry }) => entry);
    return contradictions(entries, [...this.existing, ...existingPiece], where).problems;
  }
}

/** The wanted ones, so many at a time. */
async function* pieces<T>(from: AsyncIterable<T>, isWanted: (each: T) => boolean, size: number): AsyncGenerator<T[]> {
  let piece: T[] = [];
  for await (const each of from) {
    if (!isWanted(each)) continue;
    piece.push(each);
    if (piece.length < size) continue;
    yield piece;
    piece = [];
  }
  if (piece.length > 0) yield piece;
}
