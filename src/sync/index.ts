/** Keeping several copies of one logbook in step. */
export {
  batchLimits,
  type OfferReply,
  type OfferRequest,
  offerReply,
  offerRequest,
  type Peer,
  type PullReply,
  type PullRequest,
  type PushReply,
  type PushRequest,
  pullReply,
  pullRequest,
  pushReply,
  pushRequest,
  type Refusal,
} from './messages.ts';
export { peerOfStore } from './peer-of-store.ts';
export { answerOffer, answerPull, answerPush, forgetEpoch, storeEpoch } from './serve.ts';
export { type SyncDriver, type SyncDriverOptions, startSyncDriver, type SyncStatus } from './sync-driver.ts';
export { type SyncLimits, type SyncReport, syncLimits, syncOnce } from './sync-once.ts';
