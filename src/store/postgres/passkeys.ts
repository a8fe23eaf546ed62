/** The passkeys of a facility's people (Web Authentication), and the challenges that they answer. */
import type { Pool } from 'pg';
import { inTransaction } from './in-transaction.ts';

export interface Passkey {
  /** The credential's id, base64url. */
  passkey: string;
  account: string;
  /** What its person calls it. */
  name: string;
  publicKey: Buffer;
  /** Of signatures made, as far as the authenticator counts them. */
  counter: number;
  transports: string[];
  addedAt: Date;
  usedAt: Date | null;
}

type Row = Omit<Passkey, 'counter'> & { counter: string };

const columns = `passkey, account, name, public_key AS "publicKey", counter, transports,
                 added_at AS "addedAt", used_at AS "usedAt"`;

export class PostgresPasskeys {
  private readonly pool: Pool;
  private readonly where: string;

  constructor(pool: Pool, where: string) {
    this.pool = pool;
    this.where = where;
  }

  /** False when the key is there already. */
  async add({ passkey, account, name, publicKey, counter, transports, addedAt }: Passkey): Promise<boolean> {
    const sql = `INSERT INTO passkeys (passkey, account, name, public_key, counter, transports, added_at)
                 VALUES ($1, $2, $3, $4, $5, $6, $7) ON CONFLICT DO NOTHING RETURNING 1`;
    return (await this.rows(sql, [passkey, account, name, publicKey, counter, transports, addedAt])).length > 0;
  }

  async find(passkey: string): Promise<Passkey | null> {
    const [row] = await this.rows<Row>(`SELECT ${columns} FROM passkeys WHERE passkey = $1`, [passkey]);
    return row ? counted(row) : null;
  }

  /** Oldest first. */
  async list(account: string): Promise<Passkey[]> {
    const sql = `SELECT ${columns} FROM passkeys WHERE account = $1 ORDER BY added_at, passkey`;
    return (await this.rows<Row>(sql, [account])).map(counted);
  }

  async used(passkey: string, counter: number, at: Date): Promise<void> {
    await this.rows('UPDATE passkeys SET counter = $2, used_at = $3 WHERE passkey = $1', [passkey, counter, at]);
  }

  /** Only its own account removes a key. */
  async remove(passkey: string, account: string): Promise<void> {
    await this.rows('DELETE FROM passkeys WHERE passkey = $1 AND account = $2', [passkey, account]);
  }

  /** Remembers a challenge for the account, or for whoever signs in; those whose time is over go. */
  async setChallenge(challenge: string, account: string | null, now: Date, goodUntil: Date): Promise<void> {
    await this.rows('DELETE FROM challenges WHERE good_until < $1', [now]);
    const sql = 'INSERT INTO challenges (challenge, account, good_until) VALUES ($1, $2, $3)';
    await this.rows(sql, [challenge, account, goodUntil]);
  }

  /** Was it set for this account, and is its time not over? It is good once, whichever process is asked. */
  async takeChallenge(challenge: string, account: string | null, now: Date): Promise<boolean> {
    const sql = `DELETE FROM challenges
                 WHERE challenge = $1 AND account IS NOT DISTINCT FROM $2 AND good_until >= $3 RETURNING 1`;
    return (await this.rows(sql, [challenge, account, now])).length > 0;
  }

  private async rows<R extends object>(sql: string, values: unknown[]): Promise<R[]> {
    return (await inTransaction(this.pool, this.where, {}, (client) => client.query<R>(sql, values))).rows;
  }
}

function counted(row: Row): Passkey {
  return { ...row, counter: Number(row.counter) };
}
