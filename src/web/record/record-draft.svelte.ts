/** A recording form's values: as usual, as an earlier entry had them, or as they were left. */
import type { Day } from '../../foundation/index.ts';
import type { Entry, EntryDraft } from '../../logbook/index.ts';
import { book } from '../state/book.svelte.ts';
import { type FormDraft, formDraft } from '../state/form-draft.svelte.ts';
import type { RecordForm } from './recording.svelte.ts';
import { standingEntry } from './standing-entries.ts';

/** What every form has beside its own values. */
export interface Happening {
  on: Day;
  note: string;
}

export interface RecordDraft<Values extends object> {
  values: Values & Happening;
  kept: FormDraft<Values & Happening>;
  /** The entry that is being corrected, or null. */
  amended: Entry | null;
  /** The form's own fields of that entry; the others stay as they were. */
  governs: readonly string[];
}

/**
 * To be called while a form is being made.
 * @param ofEntry what the form shows of an entry that is corrected.
 * @param governs the entry's fields that the form shows.
 */
export function recordDraft<Amended extends Entry, Values extends object>(
  form: RecordForm,
  usual: Values,
  ofEntry: (entry: Amended) => Partial<NoInfer<Values>>,
  governs: readonly (keyof Amended & string)[],
): RecordDraft<Values> {
  const amended = form.amends ? standingEntry(book.entries, form.amends) : null;
  const begin: Values & Happening = {
    on: amended?.on ?? form.on ?? book.on,
    note: amended?.note ?? '',
    ...usual,
    ...(amended && ofEntry(amended as Amended)),
  };
  const kept = formDraft(`${book.showing} ${JSON.stringify(form)}`, begin);
  return { values: kept.values, kept, amended, governs };
}

/** The entries to write: new ones, or the correction of the one that the form was opened for. */
export function writtenDrafts(
  drafts: EntryDraft[],
  { amended, governs, values }: RecordDraft<object>,
  today: Day,
): EntryDraft[] {
  const { on, note } = values;
  const happening = { on, ...(note.trim() !== '' && { note: note.trim() }) };
  const [corrected] = drafts;
  if (!amended) return drafts.map((draft) => ({ ...draft, ...happening }) as EntryDraft);
  const replacement = { ...fieldsBeyond(amended, governs), ...corrected, ...happening };
  return [{ kind: 'amended', on: today, amends: amended.id, replacement } as EntryDraft];
}

const envelope = ['id', 'recordedAt', 'by', 'kind', 'on', 'note'];

function fieldsBeyond(entry: Entry, governs: readonly string[]): object {
  return Object.fromEntries(Object.entries(entry).filter(([field]) => ![...envelope, ...governs].includes(field)));
}
