/**
 * Many households and many people on one PostgreSQL. The process keeps nothing that the database does
 * not have: any number of them may run side by side, and any may be killed.
 */
import { availableParallelism } from 'node:os';
import { Hono } from 'hono';
import type { PostgresAccounts, PostgresLogbooks } from '../../store/postgres/index.ts';
import { EntrySources } from '../../store/receipts.ts';
import { AccessEnded } from '../access/access-ended.ts';
import { type ApplicationOptions, addHousehold, fault } from '../application.ts';
import { LiveHousehold } from '../live-household.ts';
import { ReckonerThreads } from '../reckoning/reckoner-threads.ts';
import { RecentlyUsed } from './recently-used.ts';
import type { LogLine } from './request-log.ts';

export interface FacilityOptions extends ApplicationOptions {
  logbooks: PostgresLogbooks;
  /** Where a proxy shows this server to browsers. */
  publicUrl?: string;
  /** Takes a line for every request. */
  log?: (line: LogLine) => void;
}

/** Households held in memory. */
const mostOpen = 100;

export class Facility {
  readonly options: FacilityOptions;
  readonly accounts: PostgresAccounts;
  readonly accessEnded = new AccessEnded();
  private readonly open: RecentlyUsed<OpenHousehold>;
  private readonly reckoners: ReckonerThreads | null;
  private stopHearing = async () => {};

  constructor(options: FacilityOptions) {
    this.options = options;
    this.accounts = options.logbooks.accounts;
    this.reckoners = options.reckoner ? new ReckonerThreads(options.reckoner, threadsToSpare()) : null;
    const openOne = (name: string) => openHousehold(options, name, this.reckoners);
    this.open = new RecentlyUsed(mostOpen, openOne, ({ live }) => live.close());
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
  household(name: string): Promise<OpenHousehold> {
    return this.open.get(name);
  }

  /** Hears of sessions that end in any process. Until it is called, open streams find out a little later. */
  async hear(): Promise<void> {
    const stop = await this.options.logbooks.onAccessEnded((account) => this.accessEnded.tell(account));
    this.stopHearing = stop;
  }

  async close(): Promise<void> {
    await this.stopHearing();
    await this.reckoners?.stop();
    await this.open.close();
  }
}

/** All processors but one for the thread that serves requests, and no more than a few: each holds logbooks. */
function threadsToSpare(): number {
  return Math.min(4, Math.max(1, availableParallelism() - 1));
}

interface OpenHousehold {
  live: LiveHousehold;
  app: Hono;
}

async function openHousehold(
  options: FacilityOptions,
  name: string,
  reckoners: ReckonerThreads | null,
): Promise<OpenHousehold> {
  const sources = new EntrySources();
  const store = await options.logbooks.household(name, sources.of);
  const { work } = options.logbooks;
  const live = await LiveHousehold.open(store, {
    workedAhead: (key, cursor) => work.answer(name, cursor, options.version, key),
    ...(reckoners && { reckoners }),
  });
  const app = new Hono();
  app.onError(fault);
  addHousehold(app, live, {
    ...options,
    accountPage: '/network/account',
    sources,
    receipts: (before, limit) => options.logbooks.receipts(name, before, limit),
  });
  return { live, app };
}
