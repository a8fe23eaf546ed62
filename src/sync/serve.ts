/** The server's side: three questions answered from its store. Requests were checked by messages.ts. */
import { failed, type Result } from '../foundation/index.ts';
import { checkEntry, type Entry } from '../logbook/index.ts';
import type { Store } from '../store/store.ts';
import type { OfferReply, OfferRequest, PullReply, PullRequest, PushReply, Refusal } from './messages.ts';

const epochMark = 'sync.epoch';

/** The epoch of a store; `newEpoch` makes one when it has none yet. A restored copy must lose its own. */
export async function storeEpoch(store: Store, newEpoch: () => string): Promise<string> {
  const known = await store.mark(epochMark);
  if (known !== null && known !== '') return known;
  await store.setMark(epochMark, newEpoch());
  // Read back: another process may have set its own meanwhile, and the last one holds.
  return (await store.mark(epochMark)) as string;
}

/** To be called on a store that was restored from a copy: devices then compare everything anew. */
export async function forgetEpoch(store: Store): Promise<void> {
  await store.setMark(epochMark, '');
}

export async function answerOffer(store: Store, epoch: string, request: OfferRequest): Promise<OfferReply> {
  return { epoch, wanted: await store.missing(request.ids) };
}

/** Takes what can be taken. Throws StoreFault when the store fails; then the device sends again. */
export async function answerPush(store: Store, epoch: string, values: readonly unknown[]): Promise<PushReply> {
  const refused: Refusal[] = [];
  const good: Entry[] = [];
  for (const value of values) {
    const checked = checkEntry(value, `entry ${idOf(value)}`);
    if (checked.ok) good.push(checked.value);
    else refused.push({ id: idOf(value), problems: checked.problems });
  }
  const taken = await appendAll(store, good);
  return { epoch, added: taken.added, alreadyThere: taken.alreadyThere, refused: [...refused, ...taken.refused] };
}

export async function answerPull(store: Store, epoch: string, request: PullRequest): Promise<PullReply> {
  const after = request.epoch === epoch ? request.after : 0;
  const entries: Entry[] = [];
  let next = after;
  for await (const stored of store.entries(after)) {
    if (entries.length === request.limit) return { epoch, entries, next, more: true };
    entries.push(stored.entry);
    next = stored.cursor;
  }
  return { epoch, entries, next, more: false };
}

/** Appends all that do not clash with what is there; one clash does not hold up the others. */
export async function appendAll(
  store: Store,
  entries: readonly Entry[],
): Promise<{ added: number; alreadyThere: number; refused: Refusal[] }> {
  const together = await store.append(entries);
  if (together.ok) return { ...together.value, refused: [] };
  const sum = { added: 0, alreadyThere: 0, refused: [] as Refusal[] };
  for (const entry of entries) {
    const alone: Result<{ added: number; alreadyThere: number }> =
      entries.length === 1 ? failed(...together.problems) : await store.append([entry]);
    if (!alone.ok) sum.refused.push({ id: entry.id, problems: alone.problems });
    else {
      sum.added += alone.value.added;
      sum.alreadyThere += alone.value.alreadyThere;
    }
  }
  return sum;
}

function idOf(value: unknown): string {
  const id = typeof value === 'object' && value !== null ? (value as { id?: unknown }).id : undefined;
  return typeof id === 'string' ? id.slice(0, 64) : 'without id';
}
