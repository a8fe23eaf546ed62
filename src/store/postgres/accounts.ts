/** The people of a facility: their accounts, the households they may enter, their sessions. */
import type { Pool, PoolClient } from 'pg';
import { type Identity, inTransaction } from './in-transaction.ts';

export type AccountRole = 'keeper' | 'helper' | 'reader';

export interface Account {
  account: string;
  name: string;
  passwordHash: string;
}

export interface Membership {
  household: string;
  role: AccountRole;
}

export interface Member {
  account: string;
  name: string;
  role: AccountRole;
}

export interface KeptLink {
  account: string;
  name: string;
  household: string;
  secretHash: string;
}

export interface KeptSession extends KeptLink {
  openedAt: Date;
  seenAt: Date;
}

/** A session as its person sees it. */
export interface ListedSession {
  session: string;
  household: string;
  address: string;
  browser: string;
  openedAt: Date;
  seenAt: Date;
}

/** Tells every process, once it is committed. */
const accessEnded = "SELECT pg_notify('flylarder_access', $1)";

export class PostgresAccounts {
  private readonly pool: Pool;
  private readonly where: string;

  constructor(pool: Pool, where: string) {
    this.pool = pool;
    this.where = where;
  }

  async named(name: string): Promise<Account | null> {
    const sql = 'SELECT account, name, password_hash AS "passwordHash" FROM accounts WHERE name = $1';
    return (await this.rows<Account>({}, sql, [name]))[0] ?? null;
  }

  /** False when the name is taken. */
  async add({ account, name, passwordHash }: Account): Promise<boolean> {
    const sql =
      'INSERT INTO accounts (account, name, password_hash) VALUES ($1, $2, $3) ON CONFLICT DO NOTHING RETURNING 1';
    return (await this.rows({}, sql, [account, name, passwordHash])).length > 0;
  }

  /** All sessions of the account end. */
  async setPassword(account: string, passwordHash: string): Promise<void> {
    await this.transaction({}, async (client) => {
      await client.query('UPDATE accounts SET password_hash = $2 WHERE account = $1', [account, passwordHash]);
      await client.query('DELETE FROM sessions WHERE account = $1', [account]);
      await client.query(accessEnded, [account]);
    });
  }

  /** Lets an account into a household, or changes what it may do there. The household must exist. */
  async admit(household: string, account: string, role: AccountRole): Promise<void> {
    const sql = `INSERT INTO memberships (household, account, role) VALUES ($1, $2, $3)
                 ON CONFLICT (household, account) DO UPDATE SET role = excluded.role`;
    await this.rows({ household }, sql, [household, account, role]);
  }

  /** Ends what an account may do in a household, at once. False when it was none of it. */
  async dismiss(household: string, account: string): Promise<boolean> {
    const sql = 'DELETE FROM memberships WHERE household = $1 AND account = $2 RETURNING 1';
    return this.transaction({ household }, async (client) => {
      const { rows } = await client.query(sql, [household, account]);
      await client.query(accessEnded, [account]);
      return rows.length > 0;
    });
  }

  members(household: string): Promise<Member[]> {
    const sql = `SELECT account, name, role FROM memberships JOIN accounts USING (account)
                 WHERE household = $1 ORDER BY name`;
    return this.rows<Member>({ household }, sql, [household]);
  }

  memberships(account: string): Promise<Membership[]> {
    const sql = 'SELECT household, role FROM memberships WHERE account = $1 ORDER BY household';
    return this.rows<Membership>({ account }, sql, [account]);
  }

  /** @param from the address and the browser's name, for its person's own list. */
  async openSession(
    session: string,
    kept: Omit<KeptSession, 'name'>,
    from: { address: string; browser: string },
  ): Promise<void> {
    const sql = `INSERT INTO sessions (session, account, household, secret_hash, address, browser, opened_at, seen_at)
                 VALUES ($1, $2, $3, $4, $5, $6, $7, $8)`;
    const { account, household, secretHash, openedAt, seenAt } = kept;
    await this.rows({}, sql, [session, account, household, secretHash, from.address, from.browser, openedAt, seenAt]);
  }

  /** Used last first. */
  sessions(account: string): Promise<ListedSession[]> {
    const sql = `SELECT session, household, address, browser, opened_at AS "openedAt", seen_at AS "seenAt"
                 FROM sessions WHERE account = $1 ORDER BY seen_at DESC, session`;
    return this.rows<ListedSession>({}, sql, [account]);
  }

  async session(session: string): Promise<KeptSession | null> {
    const sql = `SELECT account, name, household, secret_hash AS "secretHash", opened_at AS "openedAt", seen_at AS "seenAt"
                 FROM sessions JOIN accounts USING (account) WHERE session = $1`;
    return (await this.rows<KeptSession>({}, sql, [session]))[0] ?? null;
  }

  async sessionSeen(session: string, at: Date): Promise<void> {
    await this.rows({}, 'UPDATE sessions SET seen_at = $2 WHERE session = $1', [session, at]);
  }

  /** @param account when given, only a session of this account is closed. */
  async closeSession(session: string, account: string | null = null): Promise<void> {
    const sql = 'DELETE FROM sessions WHERE session = $1 AND account = coalesce($2, account) RETURNING account';
    await this.transaction({}, async (client) => {
      const { rows } = await client.query<{ account: string }>(sql, [session, account]);
      for (const ended of rows) await client.query(accessEnded, [ended.account]);
    });
  }

  /** The account's link to the household's calendar; a former one no longer opens it. */
  async setCalendarLink(link: string, account: string, household: string, secretHash: string): Promise<void> {
    const sql = `INSERT INTO calendar_links (link, account, household, secret_hash) VALUES ($1, $2, $3, $4)
                 ON CONFLICT (account, household) DO UPDATE SET link = excluded.link, secret_hash = excluded.secret_hash`;
    await this.rows({}, sql, [link, account, household, secretHash]);
  }

  async calendarLink(link: string): Promise<KeptLink | null> {
    const sql = `SELECT account, name, household, secret_hash AS "secretHash"
                 FROM calendar_links JOIN accounts USING (account) WHERE link = $1`;
    return (await this.rows<KeptLink>({}, sql, [link]))[0] ?? null;
  }

  /** What the account may do in the household now, or null. */
  async role(account: string, household: string): Promise<AccountRole | null> {
    const sql = 'SELECT role FROM memberships WHERE household = $1 AND account = $2';
    return (await this.rows<{ role: AccountRole }>({ household }, sql, [household, account]))[0]?.role ?? null;
  }

  /** Sessions not seen since `idleSince` or opened before `oldestOpening` go. */
  async sweepSessions(idleSince: Date, oldestOpening: Date): Promise<void> {
    await this.rows({}, 'DELETE FROM sessions WHERE seen_at < $1 OR opened_at < $2', [idleSince, oldestOpening]);
  }

  private async rows<R extends object>(as: Identity, sql: string, values: unknown[]): Promise<R[]> {
    return (await this.transaction(as, (client) => client.query<R>(sql, values))).rows;
  }

  private transaction<T>(as: Identity, act: (client: PoolClient) => Promise<T>): Promise<T> {
    return inTransaction(this.pool, this.where, as, act);
  }
}
