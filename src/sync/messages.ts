/**
 * What a device and a server say to each other. The log is a union of entries by id, so every message
 * may be lost, repeated or come late without harm.
 */
import { z } from 'zod';
import type { Problem } from '../foundation/index.ts';
import type { Entry } from '../logbook/index.ts';

/** Most ids in an offer, entries in a push and in a pull. */
export const batchLimits = { offeredIds: 2000, pushedEntries: 500, pulledEntries: 500 } as const;

const id = z.string().max(64);
const cursor = z.int().min(0).max(Number.MAX_SAFE_INTEGER);
/** Names one life of a server's log: another after it was restored from a copy or begun anew. */
const epoch = z.string().min(1).max(64);

/** "I have these": asked before sending, so that nothing travels twice. */
export const offerRequest = z.strictObject({ ids: z.array(id).max(batchLimits.offeredIds) });
export const offerReply = z.object({ epoch, wanted: z.array(id).max(batchLimits.offeredIds) });

/** Entries are checked one by one, so that one that is refused does not hold up the others. */
export const pushRequest = z.strictObject({ entries: z.array(z.unknown()).max(batchLimits.pushedEntries) });
export const pushReply = z.object({
  epoch,
  added: z.int().min(0),
  alreadyThere: z.int().min(0),
  refused: z.array(
    z.object({ id, problems: z.array(z.object({ where: z.string(), found: z.string(), expected: z.string() })) }),
  ),
});

/** "What came after?" `after` counts within `epoch`; a server of another epoch begins at its start. */
export const pullRequest = z.strictObject({
  epoch: epoch.nullable(),
  after: cursor,
  limit: z.int().min(1).max(batchLimits.pulledEntries),
});
export const pullReply = z.object({
  epoch,
  entries: z.array(z.unknown()).max(batchLimits.pulledEntries),
  /** Cursor to go on from: the only place where a device takes a cursor from. */
  next: cursor,
  more: z.boolean(),
});

export type OfferRequest = z.infer<typeof offerRequest>;
export type OfferReply = z.infer<typeof offerReply>;
export type PushRequest = { entries: Entry[] };
export type PushReply = z.infer<typeof pushReply>;
export type PullRequest = z.infer<typeof pullRequest>;
export type PullReply = z.infer<typeof pullReply>;
export type Refusal = { id: string; problems: Problem[] };

/** The other side as a device sees it; rejects when there is no answer. */
export interface Peer {
  offer(request: OfferRequest): Promise<OfferReply>;
  push(request: PushRequest): Promise<PushReply>;
  pull(request: PullRequest): Promise<PullReply>;
}
