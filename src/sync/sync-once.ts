/**
 * One exchange between a device's store and a server: first what the server lacks is sent, then what
 * the device lacks is fetched. Progress is marked after every batch, so a cut loses nothing but time.
 */
import type { Problem } from '../foundation/index.ts';
import { canonicalText, checkEntry, type Entry } from '../logbook/index.ts';
import type { Store, StoredEntry } from '../store/store.ts';
import { batchLimits, type Peer, type PullReply, type Refusal } from './messages.ts';
import { appendAll } from './serve.ts';
import { readState, type SyncState, writeState } from './sync-state.ts';

export interface SyncReport {
  sent: number;
  received: number;
  /** Entries that one side would not take, with the reason; they stay where they are and are tried again. */
  refused: Refusal[];
}

export interface SyncLimits {
  offeredIds: number;
  pushedEntries: number;
  pulledEntries: number;
  /** A push is closed when its entries' text reaches this many characters. */
  pushedCharacters: number;
}

export const syncLimits: SyncLimits = { ...batchLimits, pushedCharacters: 500_000 };

/** Both ways once. Rejects as soon as the peer or the store does; called again, it goes on. */
export async function syncOnce(store: Store, peer: Peer, limits: SyncLimits = syncLimits): Promise<SyncReport> {
  const report: SyncReport = { sent: 0, received: 0, refused: [] };
  await sendAll(store, peer, limits, report);
  await fetchAll(store, peer, limits, report);
  const state = await readState(store);
  if (state.epoch !== null && state.pulledEpoch !== null && state.epoch !== state.pulledEpoch) {
    // Another life of the server's log: what was sent to the former one may be gone.
    await writeState(store, { ...state, epoch: state.pulledEpoch, sentThrough: 0 });
    await sendAll(store, peer, limits, report);
  }
  return report;
}

async function sendAll(store: Store, peer: Peer, limits: SyncLimits, report: SyncReport): Promise<void> {
  let state = await readState(store);
  await retry(store, peer, limits, state, report);
  for await (const batch of batches(store.entries(state.sentThrough), limits.offeredIds)) {
    const { epoch, wanted } = await peer.offer({ ids: batch.map((s) => s.entry.id) });
    if (epoch !== state.epoch && state.sentThrough > 0) {
      await writeState(store, { ...state, epoch, sentThrough: 0 });
      return sendAll(store, peer, limits, report);
    }
    const want = new Set(wanted);
    const refused = await push(
      peer,
      batch.flatMap(({ entry }) => (want.has(entry.id) ? [entry] : [])),
      limits,
      report,
    );
    state = { ...state, epoch, sentThrough: lastCursor(batch), refused: [...state.refused, ...refused] };
    await writeState(store, state);
  }
}

/** Entries that the server refused before: a newer one may take them. */
async function retry(
  store: Store,
  peer: Peer,
  limits: SyncLimits,
  state: SyncState,
  report: SyncReport,
): Promise<void> {
  if (state.refused.length === 0) return;
  const entries: Entry[] = [];
  for (const id of state.refused) {
    const entry = await store.entry(id);
    if (entry) entries.push(entry);
  }
  state.refused = await push(peer, entries, limits, report);
  await writeState(store, state);
}

/** Sends the entries, in as many pushes as the limits ask for; returns the ids that were refused. */
async function push(peer: Peer, entries: readonly Entry[], limits: SyncLimits, report: SyncReport): Promise<string[]> {
  const refused: string[] = [];
  for (let from = 0; from < entries.length; ) {
    const part = partFrom(entries, from, limits);
    const reply = await peer.push({ entries: part });
    report.sent += reply.added;
    report.refused.push(...reply.refused);
    refused.push(...reply.refused.map((r) => r.id));
    from += part.length;
  }
  return refused;
}

function partFrom(entries: readonly Entry[], from: number, limits: SyncLimits): Entry[] {
  let until = from;
  let characters = 0;
  while (until < entries.length && until - from < limits.pushedEntries && characters < limits.pushedCharacters) {
    characters += canonicalText(entries[until] as Entry).length;
    until++;
  }
  return entries.slice(from, until);
}

async function fetchAll(store: Store, peer: Peer, limits: SyncLimits, report: SyncReport): Promise<void> {
  for (;;) {
    const { pulledEpoch, pulledThrough } = await readState(store);
    const reply = await peer.pull({ epoch: pulledEpoch, after: pulledThrough, limit: limits.pulledEntries });
    const before = await store.lastCursor();
    const receivedBefore = report.received;
    const unreadable = await take(store, reply, report);
    if (unreadable !== null) {
      report.refused.push(unreadable);
      return;
    }
    const through = await store.lastCursor();
    const isUnmixed = through - before === report.received - receivedBefore;
    await markFetched(store, reply, isUnmixed ? { before, through } : null);
    if (!reply.more) return;
  }
}

/**
 * Only after the entries are safe here, and only from a pull: a push's reply says nothing of the
 * entries of others that came in between. `unmixed` are this store's cursors around the fetched
 * entries when nothing else was recorded beside them: those need not be offered back.
 */
async function markFetched(
  store: Store,
  reply: PullReply,
  unmixed: { before: number; through: number } | null,
): Promise<void> {
  const state = await readState(store);
  const sameLife = state.epoch === null || state.epoch === reply.epoch;
  const isSent = sameLife && unmixed !== null && unmixed.before === state.sentThrough;
  const sent = isSent ? { epoch: reply.epoch, sentThrough: unmixed.through } : {};
  await writeState(store, { ...state, ...sent, pulledEpoch: reply.epoch, pulledThrough: reply.next });
}

/** Keeps what came; an entry that this version cannot read stops the fetching until there is a newer one. */
async function take(store: Store, reply: PullReply, report: SyncReport): Promise<Refusal | null> {
  const entries: Entry[] = [];
  for (const value of reply.entries) {
    const checked = checkEntry(value, 'entry from the server');
    if (!checked.ok)
      return { id: String((value as { id?: unknown } | null)?.id), problems: updateFirst(checked.problems) };
    entries.push(checked.value);
  }
  const { added, refused } = await appendAll(store, entries);
  report.received += added;
  report.refused.push(...refused);
  return null;
}

function updateFirst(problems: readonly Problem[]): Problem[] {
  return problems.map((p) => ({ ...p, expected: `${p.expected}; a newer version may know it: reload or update` }));
}

async function* batches(entries: AsyncIterable<StoredEntry>, size: number): AsyncGenerator<StoredEntry[]> {
  let batch: StoredEntry[] = [];
  for await (const stored of entries) {
    batch.push(stored);
    if (batch.length === size) {
      yield batch;
      batch = [];
    }
  }
  if (batch.length > 0) yield batch;
}

function lastCursor(batch: readonly StoredEntry[]): number {
  return (batch[batch.length - 1] as StoredEntry).cursor;
}
