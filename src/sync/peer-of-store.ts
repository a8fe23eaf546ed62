/** A peer without a network between: a store answering in the same process, through the same checks. */
import type { Store } from '../store/store.ts';
import { offerRequest, type Peer, pullReply, pullRequest, pushRequest } from './messages.ts';
import { answerOffer, answerPull, answerPush, storeEpoch } from './serve.ts';

/** `newEpoch` names a new life of the store's log, as on a server. */
export function peerOfStore(store: Store, newEpoch: () => string): Peer {
  const epoch = () => storeEpoch(store, newEpoch);
  return {
    offer: async (request) => answerOffer(store, await epoch(), offerRequest.parse(request)),
    push: async (request) => answerPush(store, await epoch(), pushRequest.parse(request).entries),
    pull: async (request) => pullReply.parse(await answerPull(store, await epoch(), pullRequest.parse(request))),
  };
}
