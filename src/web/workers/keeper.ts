/**
 * Keeps the logbook on this device and in step with the household's server where there is one. Written
 * here first, always; the server gets it as soon as there is a way.
 */
import { failed, ok, type Result } from '../../foundation/index.ts';
import type { Entry } from '../../logbook/index.ts';
import { openIndexedDbStore } from '../../store/indexeddb/index.ts';
import { openMemoryStore } from '../../store/memory/index.ts';
import { type Store, StoreFault } from '../../store/store.ts';
import { type Peer, type SyncDriver, type SyncStatus, startSyncDriver } from '../../sync/index.ts';
import type { Kept, News, OpenAsk } from './questions.ts';
import { hearServer, ShutOut, serverAnswers, serverPeer } from './server-peer.ts';

const firstLogbook = 'flylarder';
/** A server that is slow to give its entries does not hold the page up for longer. */
const firstSyncMs = 5000;

let store: Store | null = null;
let driver: SyncDriver | null = null;
let seenThrough = 0;
let unsent = 0;

export async function openKeeper({ base, remembered }: OpenAsk, tell: (news: News) => void): Promise<Kept> {
  const peer = (await serverAnswers(base)) ? serverPeer(base) : null;
  const logbook = peer ? await logbookOfServer(peer, remembered ?? firstLogbook) : (remembered ?? firstLogbook);
  const opened = await openStore(logbook);
  store = opened.store;
  // A server that did not answer may be away only: the driver goes on trying if it was there before.
  if (peer || remembered?.startsWith(`${firstLogbook}-`)) await keepInStep(base, store, tell);
  const entries = await entriesAfter(store, 0);
  return { home: driver ? 'server' : 'device', logbook, persistent: opened.persistent, entries };
}

export async function addEntries(entries: Entry[], tell: (news: News) => void): Promise<Result<null>> {
  if (!store) throw new Error('addEntries: the logbook is not open');
  try {
    const taken = await store.append(entries);
    if (!taken.ok) return taken;
  } catch (error) {
    if (error instanceof StoreFault) return failed(error.problem);
    throw error;
  }
  seenThrough = await store.lastCursor();
  if (driver) {
    unsent += entries.length;
    driver.poke();
    if (unsent > entries.length) tell({ news: 'waiting', unsent });
  }
  return ok(null);
}

async function openStore(logbook: string): Promise<{ store: Store; persistent: boolean }> {
  try {
    return { store: await openIndexedDbStore(logbook), persistent: true };
  } catch {
    // Private windows and full disks refuse: the page still works, and says that nothing is kept.
    return { store: openMemoryStore(), persistent: false };
  }
}

/**
 * Which of the device's logbooks belongs to this server. Two households may be served at one address
 * at different times, and their entries must not mix: a server that has entries, but none of ours, is
 * another household and gets a logbook of its own.
 */
async function logbookOfServer(peer: Peer, remembered: string): Promise<string> {
  const { epoch, entries } = await peer.pull({ epoch: null, after: 0, limit: 1 });
  const own = `${firstLogbook}-${epoch}`;
  if (remembered === own) return own;
  const ids = await someIds(remembered);
  if (ids.length === 0) return own;
  const { wanted } = await peer.offer({ ids });
  const isStranger = entries.length > 0 && wanted.length === ids.length;
  return isStranger ? own : remembered;
}

async function someIds(logbook: string): Promise<string[]> {
  const { store: there } = await openStore(logbook);
  const ids: string[] = [];
  for await (const { entry } of there.entries()) {
    ids.push(entry.id);
    if (ids.length === 500) break;
  }
  await there.close();
  return ids;
}

/** Resolves after the first exchange, or when it takes too long. */
async function keepInStep(base: string, kept: Store, tell: (news: News) => void): Promise<void> {
  let first = () => {};
  const firstExchange = new Promise<void>((resolve) => (first = resolve));
  let isOpen = false;
  const onStatus = (status: SyncStatus): void => {
    if (status.state !== 'inStep' && status.state !== 'waiting') return;
    tell({ news: 'shutOut', isOut: status.state === 'waiting' && status.error instanceof ShutOut });
    first();
    if (isOpen) void afterExchange(kept, status.state === 'inStep', tell);
  };
  driver = startSyncDriver({ store: kept, peer: serverPeer(base), sleep, chance: Math.random, onStatus });
  hearServer(base, () => driver?.poke());
  await Promise.race([firstExchange, sleep(firstSyncMs, new AbortController().signal)]);
  seenThrough = await kept.lastCursor();
  isOpen = true;
}

async function afterExchange(kept: Store, isInStep: boolean, tell: (news: News) => void): Promise<void> {
  if (isInStep) unsent = 0;
  tell({ news: 'waiting', unsent });
  const arrived = await entriesAfter(kept, seenThrough);
  seenThrough = await kept.lastCursor();
  if (arrived.length > 0) tell({ news: 'arrived', entries: arrived });
}

async function entriesAfter(kept: Store, cursor: number): Promise<Entry[]> {
  const entries: Entry[] = [];
  for await (const stored of kept.entries(cursor)) entries.push(stored.entry);
  return entries;
}

function sleep(ms: number, signal: AbortSignal): Promise<void> {
  return new Promise((resolve) => {
    const timer = setTimeout(resolve, ms);
    signal.addEventListener('abort', () => (clearTimeout(timer), resolve()), { once: true });
  });
}
