/**
 * Many households and many people on one PostgreSQL. The process keeps nothing that the database does
 * not have: any number of them may run side by side, and any may be killed.
 */
import { Hono } from 'hono';
import type { EntrySource, PostgresAccounts, PostgresLogbooks } from '../../store/postgres/index.ts';
import { type ApplicationOptions, addHousehold, fault } from '../application.ts';
import { LiveHousehold } from '../live-household.ts';
import type { LogLine } from './request-log.ts';

export interface FacilityOptions extends ApplicationOptions {
  logbooks: PostgresLogbooks;
  /** Where a proxy shows this server to browsers. */
  publicUrl?: string;
  /** Takes a line for every request. */
  log?: (line: LogLine) => void;
}

/** Households held in memory; the one asked for longest ago makes room. */
const mostOpen = 100;

export class Facility {
  readonly options: FacilityOptions;
  readonly accounts: PostgresAccounts;
  private readonly open = new Map<string, Promise<OpenHousehold>>();

  constructor(options: FacilityOptions) {
    this.options = options;
    this.accounts = options.logbooks.accounts;
  }

  get publicUrl(): string | undefined {
    return this.options.publicUrl;
  }

  nowMs(): number {
    return Date.parse(this.options.shell.now());
  }

  get openHouseholds(): number {
    return this.open.size;
  }

  /** The household's application; its guards have been passed already. */
  async household(name: string): Promise<OpenHousehold> {
    const known = this.open.get(name) ?? openHousehold(this.options, name);
    this.open.delete(name);
    this.open.set(name, known);
    // A database that was away must not be remembered as a household that cannot be opened.
    known.catch(() => this.open.delete(name));
    const [oldest] = this.open.keys();
    if (this.open.size > mostOpen && oldest !== undefined) {
      const leaving = this.open.get(oldest);
      this.open.delete(oldest);
      void leaving?.then(({ live }) => live.close());
    }
    return known;
  }

  async close(): Promise<void> {
    const all = await Promise.allSettled(this.open.values());
    const opened = all.flatMap((each) => (each.status === 'fulfilled' ? [each.value.live] : []));
    await Promise.all(opened.map((live) => live.close()));
  }
}

interface OpenHousehold {
  live: LiveHousehold;
  app: Hono;
}

async function openHousehold(options: FacilityOptions, name: string): Promise<OpenHousehold> {
  const sources = new Map<string, EntrySource>();
  const store = await options.logbooks.household(name, (id) => sources.get(id));
  const live = await LiveHousehold.open(store);
  const app = new Hono();
  app.onError(fault);
  addHousehold(app, live, {
    ...options,
    noteSource: (ids, caller) => {
      for (const id of ids) {
        if (caller) sources.set(id, { person: caller.name, address: caller.address });
        else sources.delete(id);
      }
    },
  });
  return { live, app };
}
