/** Names the sender of entries while they are being kept, for stores that keep that beside them. */
import type { ApiContext } from '../api-context.ts';
import type { Caller } from './caller.ts';

export async function sentBy<T>(
  { sources }: ApiContext,
  caller: Caller,
  entries: readonly { id: string }[],
  keep: () => Promise<T>,
): Promise<T> {
  const ids = entries.map(({ id }) => id);
  sources?.note(ids, { person: caller.name, address: caller.address });
  try {
    return await keep();
  } finally {
    sources?.note(ids, null);
  }
}
