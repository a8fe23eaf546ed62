/** An entry as one sentence in plain words. */
import type { Said } from '../../foundation/index.ts';
import type { Entry, EntryDraft } from './entry.ts';
import { entryKinds } from './entry.ts';
import type { Names } from './entry-kind.ts';

/** The entry without its day, such as `M12 harvested: 40 flies.`; `names` replace keys. */
export function entrySentence(entry: Entry | EntryDraft, names: Names = {}): Said {
  // The kind and the fields come from one checked value, which TypeScript cannot follow through a lookup.
  const kind = entryKinds[entry.kind] as unknown as { sentence(e: Entry | EntryDraft, names: Names): Said };
  return kind.sentence(entry, names);
}
