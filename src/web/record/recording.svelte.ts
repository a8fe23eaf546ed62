/** Whether the recording sheet is open, and what it begins with. */
import type { Day } from '../../foundation/index.ts';

export const recordKinds = [
  'seen',
  'harvested',
  'fed',
  'started',
  'bought',
  'ended',
  'wet',
  'dry',
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
  strain?: string;
  cups?: number;
  group?: string;
}

const state = $state<{ form: RecordForm | null }>({ form: null });

export function recording(): RecordForm | null {
  return state.form;
}

/** Opens the sheet; with a kind, its form at once. */
export function openRecording(form: RecordForm = { kind: null }): void {
  state.form = form;
}

export function closeRecording(): void {
  state.form = null;
}
