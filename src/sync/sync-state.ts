/** How far a device has come with its server, kept as one mark of its store. */
import { z } from 'zod';
import type { Store } from '../store/store.ts';

const syncState = z.object({
  /** The server's epoch that `sentThrough` belongs to; null before the first exchange. */
  epoch: z.string().nullable(),
  /** This store's cursor up to which the server has everything. */
  sentThrough: z.int(),
  /** Ids of entries that the server refused, to be tried again. */
  refused: z.array(z.string()),
  /** The server's cursor up to which this store has everything, and the epoch that it belongs to. */
  pulledEpoch: z.string().nullable(),
  pulledThrough: z.int(),
});
export type SyncState = z.infer<typeof syncState>;

const stateMark = 'sync.state';

export async function readState(store: Store): Promise<SyncState> {
  const text = await store.mark(stateMark);
  if (text !== null) {
    const parsed = syncState.safeParse(parsedJson(text));
    // A state that cannot be read costs one full comparison, nothing else.
    if (parsed.success) return parsed.data;
  }
  return { epoch: null, sentThrough: 0, refused: [], pulledEpoch: null, pulledThrough: 0 };
}

export function writeState(store: Store, state: SyncState): Promise<void> {
  return store.setMark(stateMark, JSON.stringify(state));
}

function parsedJson(text: string): unknown {
  try {
    return JSON.parse(text);
  } catch {
    return null;
  }
}
