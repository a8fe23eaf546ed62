/**
 * Small texts kept on this device from one opening of the page to the next. A device that is full, or a
 * browser that keeps nothing, is met here alone: the page goes on, and says what is not kept.
 */
/** Texts that cost nothing but a moment when they are gone: first to go when the device is full. */
const spare = ['flylarder answers ahead', 'flylarder answers'];

let isRefused = false;
const followers = new Set<(isRefused: boolean) => void>();

/** Calls `hear` now and whenever the device begins or ceases to refuse what was typed; returns how to stop. */
export function followRefusal(hear: (isRefused: boolean) => void): () => void {
  followers.add(hear);
  hear(isRefused);
  return () => followers.delete(hear);
}

export function remembered(key: string): string | null {
  try {
    return localStorage.getItem(key);
  } catch {
    return null;
  }
}

/** Whether the text is kept now. */
export function remember(key: string, text: string): boolean {
  const isKept = tried(key, text) || (forget(...spare), tried(key, text));
  if (!spare.includes(key) && isRefused === isKept) {
    isRefused = !isKept;
    for (const hear of followers) hear(isRefused);
  }
  return isKept;
}

export function forget(...keys: string[]): void {
  try {
    for (const key of keys) localStorage.removeItem(key);
  } catch {
    // What was never kept needs no forgetting.
  }
}

function tried(key: string, text: string): boolean {
  try {
    localStorage.setItem(key, text);
    return true;
  } catch {
    return false;
  }
}
