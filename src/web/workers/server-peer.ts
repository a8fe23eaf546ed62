/** The household's own server as sync sees it, and the line on which it says that something is new. */
import {
  type OfferReply,
  type OfferRequest,
  offerReply,
  type Peer,
  type PullReply,
  type PullRequest,
  type PushReply,
  type PushRequest,
  pullReply,
  pushReply,
} from '../../sync/index.ts';

/** Longer silence than this counts as no answer. */
const patienceMs = 15_000;

/** The server does not let this device in, or no longer. */
export class ShutOut extends Error {}

/** @param base the page's own folder, where `api/v1` lies when there is a server. */
export function serverPeer(base: string): Peer {
  const ask = async (message: string, body: unknown): Promise<unknown> => {
    const response = await fetch(new URL(`api/v1/sync/${message}`, base), {
      method: 'POST',
      headers: { 'content-type': 'application/json' },
      body: JSON.stringify(body),
      signal: AbortSignal.timeout(patienceMs),
    });
    if (response.status === 401) throw new ShutOut('the server does not know this device');
    if (!response.ok) throw new Error(`${message}: HTTP ${response.status}`);
    return response.json();
  };
  return {
    offer: async (request: OfferRequest): Promise<OfferReply> => offerReply.parse(await ask('offer', request)),
    push: async (request: PushRequest): Promise<PushReply> => pushReply.parse(await ask('push', request)),
    pull: async (request: PullRequest): Promise<PullReply> => pullReply.parse(await ask('pull', request)),
  };
}

/** Whether a server of ours answers there just now. */
export async function serverAnswers(base: string): Promise<boolean> {
  try {
    const response = await fetch(new URL('api/v1/health', base), { signal: AbortSignal.timeout(4000) });
    return response.ok && (response.headers.get('content-type') ?? '').includes('json');
  } catch {
    return false;
  }
}

/** Calls `changed` whenever the server's logbook may have grown: on news, and after each reconnection. */
export function hearServer(base: string, changed: () => void): void {
  new EventSource(new URL('api/v1/events', base)).addEventListener('entries', changed);
}
