/** Whether the recording sheet is open, and what it begins with. */
import type { Day } from '../../foundation/index.ts';
import type { EndReason } from '../../logbook/index.ts';
import { forgetDraft, keepDraft, keptDraft } from '../state/drafts.ts';

/** What can be chosen on the sheet, in the order in which it is offered. */
export const recordKinds = [
  'seen',
  'harvested',
  'fed',
  'started',
  'ended',
  'moved',
  'bought',
  'wet',
  'dry',
  'weighed',
  'headcount',
  'temperature',
  'note',
] as const;
export type RecordKind = (typeof recordKinds)[number];

/** What a form begins with; anything left out has its usual value. */
export interface RecordForm {
  kind: RecordKind | null;
  on?: Day;
  cultures?: string[];
  flies?: number;
  reason?: EndReason;
  strain?: string;
  cups?: number;
  group?: string;
  /** The entry that the form corrects. */
  amends?: string;
}

/** The form that is open, so that a page that is loaded again opens it again. */
const openForm = 'open recording form';

const state = $state<{ form: RecordForm | null }>({ form: null });

export function recording(): RecordForm | null {
  return state.form;
}

/** Opens the sheet; with a kind, its form at once. */
export function openRecording(form: RecordForm = { kind: null }): void {
  state.form = form;
  if (form.kind) keepDraft(openForm, form);
}

export function closeRecording(): void {
  state.form = null;
  forgetDraft(openForm);
}

/** Opens the form that was open when the page went away. */
export function reopenRecording(): void {
  state.form = keptDraft<RecordForm>(openForm);
}
