/** Every kind of entry, and the types that follow from their checks. */
import type { z } from 'zod';
import { amended } from './amended.ts';
import { reportedKinds } from './reported-kinds.ts';

export const entryKinds = { ...reportedKinds, amended } as const;

export type EntryKindName = keyof typeof entryKinds;
/** An entry of one kind, as it is stored. */
export type EntryOf<K extends EntryKindName> = z.output<(typeof entryKinds)[K]['entry']>;
/** Any entry; `kind` tells which. */
export type Entry = { [K in EntryKindName]: EntryOf<K> }[EntryKindName];
/** What a person reports: an entry without id, recordedAt and by, which a device adds. */
export type EntryDraft = { [K in EntryKindName]: z.output<(typeof entryKinds)[K]['draft']> }[EntryKindName];

export const entryKindNames = Object.keys(entryKinds) as EntryKindName[];
