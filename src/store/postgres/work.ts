/**
 * What workers have worked out ahead of the questions: a household's answers, each for one state of its
 * logbook and one build of the program, and when they have to be worked out anew. All of it may be thrown
 * away at any time. What is due is read off the logbooks themselves, so no message that is lost matters.
 */
import type { Pool } from 'pg';
import { inTransaction } from './in-transaction.ts';

export interface DoneWork {
  /** How far the logbook was read. */
  cursor: number;
  /** The program that answered; another one's answers are never given. */
  build: string;
  /** When the answers are of yesterday. */
  dueAt: Date;
  /** Answers by their question. */
  answers: ReadonlyMap<string, unknown>;
}

/** Most households that one look finds due. */
const mostDue = 1000;

export class PostgresWork {
  private readonly pool: Pool;
  private readonly where: string;

  constructor(pool: Pool, where: string) {
    this.pool = pool;
    this.where = where;
  }

  /** Households whose logbook has grown, whose day has ended, or whose answers are of another build. */
  async due(build: string): Promise<string[]> {
    const sql = `SELECT household FROM households LEFT JOIN household_work AS work USING (household)
                 WHERE last_cursor > 0
                   AND (work.cursor IS NULL OR work.cursor < last_cursor OR work.build <> $1 OR work.due_at <= now())
                 ORDER BY work.done_at NULLS FIRST LIMIT $2`;
    const found = await inTransaction(this.pool, this.where, { worker: true }, (client) =>
      client.query<{ household: string }>(sql, [build, mostDue]),
    );
    return found.rows.map(({ household }) => household);
  }

  /** Has this build answered for this state of the household's logbook and day already? */
  async isDone(household: string, cursor: number, build: string): Promise<boolean> {
    const sql = `SELECT 1 FROM household_work
                 WHERE household = $1 AND cursor >= $2 AND build = $3 AND due_at > now()`;
    const found = await inTransaction(this.pool, this.where, { household }, (client) =>
      client.query(sql, [household, cursor, build]),
    );
    return found.rows.length > 0;
  }

  /** Keeps the household's answers in place of older ones. False when newer ones are there already. */
  keep(household: string, { cursor, build, dueAt, answers }: DoneWork): Promise<boolean> {
    const claim = `INSERT INTO household_work (household, cursor, build, due_at) VALUES ($1, $2, $3, $4)
                   ON CONFLICT (household) DO UPDATE
                   SET cursor = excluded.cursor, build = excluded.build, due_at = excluded.due_at, done_at = now()
                   WHERE household_work.cursor <= excluded.cursor RETURNING 1`;
    const insert = `INSERT INTO kept_answers (household, question, answer)
                    SELECT $1, question, answer FROM unnest($2::text[], $3::text[]) AS kept (question, answer)`;
    return inTransaction(this.pool, this.where, { household }, async (client) => {
      const claimed = await client.query(claim, [household, cursor, build, dueAt]);
      if (claimed.rows.length === 0) return false;
      await client.query('DELETE FROM kept_answers WHERE household = $1', [household]);
      const texts = [...answers.values()].map((answer) => JSON.stringify(answer));
      await client.query(insert, [household, [...answers.keys()], texts]);
      return true;
    });
  }

  /** The kept answer to a question about exactly this state of the logbook; undefined when there is none. */
  async answer(household: string, cursor: number, build: string, question: string): Promise<unknown> {
    const sql = `SELECT answer FROM kept_answers JOIN household_work USING (household)
                 WHERE household = $1 AND cursor = $2 AND build = $3 AND question = $4`;
    const found = await inTransaction(this.pool, this.where, { household }, (client) =>
      client.query<{ answer: string }>(sql, [household, cursor, build, question]),
    );
    const [row] = found.rows;
    return row && (JSON.parse(row.answer) as unknown);
  }
}
