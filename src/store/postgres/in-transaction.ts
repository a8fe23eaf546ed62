/** All of some work in the database or none of it, as a household or an account: others stay unseen. */
import type { Pool, PoolClient } from 'pg';
import { postgresFault } from './postgres-fault.ts';

/** Whose session it is for row-level security. */
export interface Identity {
  household?: string;
  account?: string;
  /** A worker's session sees which households there are, and nothing else of them. */
  worker?: true;
}

/** Throws StoreFault when the database fails. */
export async function inTransaction<T>(
  pool: Pool,
  where: string,
  { household, account, worker }: Identity,
  act: (client: PoolClient) => Promise<T>,
): Promise<T> {
  let client: PoolClient | null = null;
  let broken: Error | undefined;
  try {
    client = await pool.connect();
    await client.query('BEGIN');
    if (household !== undefined) await client.query("SELECT set_config('flylarder.household', $1, true)", [household]);
    if (account !== undefined) await client.query("SELECT set_config('flylarder.account', $1, true)", [account]);
    if (worker) await client.query("SELECT set_config('flylarder.worker', 'on', true)");
    const result = await act(client);
    await client.query('COMMIT');
    return result;
  } catch (error) {
    await client?.query('ROLLBACK').catch((e: Error) => {
      broken = e;
    });
    throw postgresFault(error, where);
  } finally {
    client?.release(broken);
  }
}
