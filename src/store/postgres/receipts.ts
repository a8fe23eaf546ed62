/** Who recorded what, when and from where: kept by the server beside the entries, in the same commit. */
import type { Pool } from 'pg';
import type { Entry } from '../../logbook/index.ts';
import type { Receipt } from '../receipts.ts';
import { inTransaction } from './in-transaction.ts';

interface Row {
  cursor: string;
  text: string;
  person: string | null;
  address: string | null;
  received_at: Date | null;
}

export async function readReceipts(
  pool: Pool,
  where: string,
  household: string,
  before: number,
  limit: number,
): Promise<Receipt[]> {
  const sql = `SELECT cursor, text, person, address, received_at
               FROM entries LEFT JOIN receipts USING (household, cursor)
               WHERE household = $1 AND cursor < $2 ORDER BY cursor DESC LIMIT $3`;
  const found = await inTransaction(pool, where, { household }, (client) =>
    client.query<Row>(sql, [household, before, limit]),
  );
  return found.rows.map(({ cursor, text, person, address, received_at }) => ({
    cursor: Number(cursor),
    entry: JSON.parse(text) as Entry,
    person,
    address,
    receivedAt: received_at?.toISOString() ?? null,
  }));
}
