/** Keeps a device in step with its server: at once after a change, and patiently while there is no way. */
import type { Store } from '../store/store.ts';
import type { Peer } from './messages.ts';
import { syncOnce, type SyncReport } from './sync-once.ts';

export type SyncStatus =
  | { state: 'syncing' }
  | { state: 'inStep'; last: SyncReport }
  /** `afterMs` until the next try. */
  | { state: 'waiting'; error: unknown; afterMs: number }
  | { state: 'stopped' };

export interface SyncDriverOptions {
  store: Store;
  peer: Peer;
  /** Resolves after so many ms, or at once when the signal is aborted. */
  sleep(ms: number, signal: AbortSignal): Promise<void>;
  /** Uniform on [0, 1): spreads the tries of many devices. */
  chance(): number;
  onStatus(status: SyncStatus): void;
  /** Between exchanges when nothing calls; default five minutes. */
  restMs?: number;
  /** First and longest wait after a failure; default 1 s and 5 min. */
  firstWaitMs?: number;
  longestWaitMs?: number;
}

export interface SyncDriver {
  /** Something changed here or there: exchange now, or once more when an exchange is under way. */
  poke(): void;
  /** Resolves when the exchange under way has ended. */
  stop(): Promise<void>;
}

export function startSyncDriver(options: SyncDriverOptions): SyncDriver {
  const { restMs = 300_000, firstWaitMs = 1000, longestWaitMs = 300_000 } = options;
  let stopped = false;
  let poked = true;
  let wake = new AbortController();
  let failures = 0;

  /** One exchange; returns the ms until the next. */
  async function exchange(): Promise<number> {
    options.onStatus({ state: 'syncing' });
    try {
      const last = await syncOnce(options.store, options.peer);
      failures = 0;
      options.onStatus({ state: 'inStep', last });
      return restMs;
    } catch (error) {
      const longest = Math.min(longestWaitMs, firstWaitMs * 2 ** Math.min(failures++, 30));
      const afterMs = Math.round(longest * (0.5 + options.chance() / 2));
      options.onStatus({ state: 'waiting', error, afterMs });
      return afterMs;
    }
  }

  async function run(): Promise<void> {
    while (!stopped) {
      poked = false;
      const rest = await exchange();
      if (poked || stopped) continue;
      wake = new AbortController();
      await options.sleep(rest, wake.signal);
    }
    options.onStatus({ state: 'stopped' });
  }

  const running = run();
  return {
    poke() {
      poked = true;
      wake.abort();
    },
    stop() {
      stopped = true;
      wake.abort();
      return running;
    },
  };
}
