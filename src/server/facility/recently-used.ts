/** What takes long to open, kept open by name; the one asked for longest ago makes room. */
export class RecentlyUsed<Opened> {
  private readonly opened = new Map<string, Promise<Opened>>();
  private readonly most: number;
  private readonly open: (name: string) => Promise<Opened>;
  private readonly leave: (opened: Opened) => Promise<void>;

  /** @param most that are open at a time. */
  constructor(most: number, open: (name: string) => Promise<Opened>, leave: (opened: Opened) => Promise<void>) {
    this.most = most;
    this.open = open;
    this.leave = leave;
  }

  get size(): number {
    return this.opened.size;
  }

  get(name: string): Promise<Opened> {
    const known = this.opened.get(name) ?? this.open(name);
    this.opened.delete(name);
    this.opened.set(name, known);
    // A database that was away must not be remembered as something that cannot be opened.
    known.catch(() => this.opened.delete(name));
    const [oldest] = this.opened.keys();
    if (this.opened.size > this.most && oldest !== undefined) {
      const leaving = this.opened.get(oldest);
      this.opened.delete(oldest);
      void leaving?.then(this.leave);
    }
    return known;
  }

  async close(): Promise<void> {
    const all = await Promise.allSettled(this.opened.values());
    const open = all.flatMap((each) => (each.status === 'fulfilled' ? [each.value] : []));
    await Promise.all(open.map(this.leave));
  }
}
