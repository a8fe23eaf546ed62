/** The browser's storage errors as messages that a keeper can act on. */
import { StoreFault } from '../store.ts';

const advice: Record<string, [found: string, expected: string]> = {
  QuotaExceededError: ['no space left for this site; nothing was written', 'some free space on the device'],
  DatabaseClosedError: ['a store that was closed', 'an open store: reload the page'],
  VersionError: ['a store of a newer version of this page', 'the newest version: reload the page'],
  InvalidStateError: ['a browser that keeps no data, as in some private windows', 'a window that may keep data'],
  OpenFailedError: ['a store that cannot be opened', 'a browser that may keep data for this site'],
  MissingAPIError: ['a browser without IndexedDB', 'a browser that can keep data'],
  UnknownError: ["a fault of the browser's storage", 'a healthy disk with free space; then restart the browser'],
};

/** The fault that an error of the browser means; an error of another kind is returned as it is. */
export function indexedDbFault(error: unknown, where: string): unknown {
  if (error instanceof StoreFault || !(error instanceof Error)) return error;
  const inner = (error as { inner?: unknown }).inner;
  const name = [inner instanceof Error ? inner.name : '', error.name].find((n) => Object.hasOwn(advice, n));
  if (name === undefined) return error;
  const [found, expected] = advice[name] as [string, string];
  return new StoreFault({ where, found: `${found} (${name})`, expected }, error);
}
