/** Tells open connections that an account's session or right may have ended. */
export class AccessEnded {
  private readonly listeners = new Map<string, Set<() => void>>();

  /** Calls `changed` when word comes of the account; the function returned ends that. */
  listen(account: string, changed: () => void): () => void {
    const mine = this.listeners.get(account) ?? new Set();
    this.listeners.set(account, mine.add(changed));
    return () => {
      mine.delete(changed);
      if (mine.size === 0) this.listeners.delete(account);
    };
  }

  tell(account: string): void {
    for (const changed of this.listeners.get(account) ?? []) changed();
  }
}
