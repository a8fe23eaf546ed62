/** Where the published numbers come from: the entries of data/sources.bib. */
import text from '../../data/sources.bib?raw';

export interface Source {
  key: string;
  /** BibTeX kind such as article or misc. */
  kind: string;
  /** Fields by name: author, title, year, doi, url, note and so on. */
  fields: Record<string, string>;
}

const byKey = new Map(readSources(text).map((entry) => [entry.key, entry]));

/** The source of that key, or undefined when no table names it. */
export function source(key: string): Source | undefined {
  return byKey.get(key);
}

/** Author, year, title, place and note of a source in one line. */
export function sourceLine(entry: Source): string {
  const { author, year, title, journal, volume, doi, url, note } = entry.fields;
  const place = journal ? `${journal}${volume ? ` ${volume}` : ''}` : undefined;
  const parts = [author, year, title, place, doi ? `doi ${doi}` : undefined, url, note];
  return parts
    .filter((part) => part !== undefined)
    .join('. ')
    .replaceAll(/[{}]/g, '');
}

/** Entries `@kind{key, name = {value}, ...}`; values in braces, which may nest one level. */
function readSources(bib: string): Source[] {
  const entries: Source[] = [];
  for (const line of bib.split('\n')) {
    const head = /^@(\w+)\{([^,\s]+),(.*)\}\s*$/.exec(line);
    if (!head) continue;
    const fields: Record<string, string> = {};
    for (const field of (head[3] ?? '').matchAll(/(\w+)\s*=\s*\{((?:[^{}]|\{[^{}]*\})*)\}/g)) {
      fields[field[1] ?? ''] = field[2] ?? '';
    }
    entries.push({ key: head[2] ?? '', kind: head[1] ?? '', fields });
  }
  return entries;
}
