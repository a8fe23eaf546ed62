/** Entries in plain words, in the language of the page. */
import { entryInWords, namesIn } from '../../app/index.ts';
import type { Logbook } from './models.ts';
import type { Ask } from './questions.ts';

/** One sentence for each id; nothing where the logbook has no such entry. */
export function sentencesOf({ ids, ...telling }: Ask<'sentences'>, { entries, facts }: Logbook): string[] {
  const byId = new Map(entries.map((entry) => [entry.id, entry]));
  const names = namesIn(facts);
  return ids.map((id) => {
    const entry = byId.get(id);
    return entry ? entryInWords(entry, telling, names) : '';
  });
}
