/** A keeper's own spreadsheet in the worker: read, matched with what its columns mean, and shown before it is written. */
import { dayWords, entryInWords } from '../../app/index.ts';
import { ok, type Result } from '../../foundation/index.ts';
import { type EntryDraft, type Facts, previewSheet, proposeMatching, readSheet } from '../../logbook/index.ts';
import type { Ask, ReadSheet, SheetShown } from './questions.ts';

const mostShown = 12;

export function sheetRead(text: string, file: string, facts: Facts): Result<ReadSheet> {
  const sheet = readSheet(text, file);
  if (!sheet.ok) return sheet;
  const { dateOrderIsCertain, ...matching } = proposeMatching(sheet.value);
  const knownPlaces = facts.places.map(({ place, name }) => ({ place, name }));
  return ok({ sheet: sheet.value, matching: { ...matching, knownPlaces }, dateOrderIsCertain });
}

export function sheetShown({ sheet, matching, telling }: Ask<'showSheet'>): SheetShown {
  const { drafts, problems } = previewSheet(sheet, matching);
  const all: EntryDraft[] = drafts.map(({ draft }) => draft);
  return {
    drafts: all,
    sentences: all
      .slice(0, mostShown)
      .map(
        (draft) => `${dayWords(draft.on, telling.language)} ${draft.on.slice(0, 4)} · ${entryInWords(draft, telling)}`,
      ),
    problems,
  };
}
