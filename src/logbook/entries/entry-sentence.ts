/** An entry as one line in plain words. */
import type { Entry, EntryDraft } from './entry.ts';
import { entryKinds } from './entry.ts';
import type { Names } from './entry-kind.ts';

/** The entry's line without its day, such as `M12 harvested: 40 flies.`; `names` replace keys. */
export function entrySentence(entry: Entry | EntryDraft, names: Names = {}): string {
  // The kind and the fields come from one checked value, which TypeScript cannot follow through a lookup.
  const kind = entryKinds[entry.kind] as unknown as { sentence(e: Entry | EntryDraft, names: Names): string };
  return kind.sentence(entry, names);
}
