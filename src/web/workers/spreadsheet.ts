/** A keeper's own spreadsheet in the worker: read, matched with what its columns mean, and shown before it is written. */
import { ok, type Result } from '../../foundation/index.ts';
import {
  type EntryDraft,
  entrySentence,
  type Facts,
  previewSheet,
  proposeMatching,
  readSheet,
  type Sheet,
  type SheetMatching,
} from '../../logbook/index.ts';
import type { ReadSheet, SheetShown } from './questions.ts';

const mostShown = 12;

export function sheetRead(text: string, file: string, facts: Facts): Result<ReadSheet> {
  const sheet = readSheet(text, file);
  if (!sheet.ok) return sheet;
  const { dateOrderIsCertain, ...matching } = proposeMatching(sheet.value);
  const knownPlaces = facts.places.map(({ place }) => place);
  return ok({ sheet: sheet.value, matching: { ...matching, knownPlaces }, dateOrderIsCertain });
}

export function sheetShown(sheet: Sheet, matching: SheetMatching): SheetShown {
  const { drafts, problems } = previewSheet(sheet, matching);
  const all: EntryDraft[] = drafts.map(({ draft }) => draft);
  return {
    drafts: all,
    sentences: all.slice(0, mostShown).map((draft) => `${draft.on} · ${entrySentence(draft)}`),
    problems,
  };
}
