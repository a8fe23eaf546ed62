/** The tables, in numbered steps: step n takes a database from version n - 1 to n. Steps never change. */
import type { Pool, PoolClient } from 'pg';
import { StoreFault } from '../store.ts';

const steps: string[] = [
  // 1: several households in one database, each seen only by a session that names it.
  `CREATE TABLE households (
     household text COLLATE "C" PRIMARY KEY,
     last_cursor bigint NOT NULL DEFAULT 0
   );
   CREATE TABLE entries (
     household text COLLATE "C" NOT NULL REFERENCES households,
     cursor bigint NOT NULL,
     id text COLLATE "C" NOT NULL,
     text text NOT NULL,
     PRIMARY KEY (household, cursor),
     UNIQUE (household, id)
   );
   CREATE TABLE marks (
     household text COLLATE "C" NOT NULL REFERENCES households,
     name text COLLATE "C" NOT NULL,
     value text NOT NULL,
     PRIMARY KEY (household, name)
   );
   ALTER TABLE households ENABLE ROW LEVEL SECURITY;
   ALTER TABLE entries ENABLE ROW LEVEL SECURITY;
   ALTER TABLE marks ENABLE ROW LEVEL SECURITY;
   ALTER TABLE households FORCE ROW LEVEL SECURITY;
   ALTER TABLE entries FORCE ROW LEVEL SECURITY;
   ALTER TABLE marks FORCE ROW LEVEL SECURITY;
   CREATE POLICY own_household ON households USING (household = current_setting('flylarder.household', true));
   CREATE POLICY own_household ON entries USING (household = current_setting('flylarder.household', true));
   CREATE POLICY own_household ON marks USING (household = current_setting('flylarder.household', true));`,
  // 2: people. Names, passwords and sessions are looked up before it is known whose they are; what
  // belongs to a household (who may enter it, who recorded what) is seen in its own session only.
  `CREATE TABLE accounts (
     account text COLLATE "C" PRIMARY KEY,
     name text NOT NULL UNIQUE,
     password_hash text NOT NULL
   );
   CREATE TABLE memberships (
     household text COLLATE "C" NOT NULL REFERENCES households,
     account text COLLATE "C" NOT NULL REFERENCES accounts,
     role text NOT NULL CHECK (role IN ('keeper', 'helper', 'reader')),
     PRIMARY KEY (household, account)
   );
   CREATE TABLE sessions (
     session text COLLATE "C" PRIMARY KEY,
     account text COLLATE "C" NOT NULL REFERENCES accounts ON DELETE CASCADE,
     household text COLLATE "C" NOT NULL,
     secret_hash text NOT NULL,
     address text NOT NULL,
     opened_at timestamptz NOT NULL,
     seen_at timestamptz NOT NULL
   );
   CREATE INDEX ON sessions (account);
   CREATE TABLE calendar_links (
     link text COLLATE "C" PRIMARY KEY,
     account text COLLATE "C" NOT NULL REFERENCES accounts ON DELETE CASCADE,
     household text COLLATE "C" NOT NULL,
     secret_hash text NOT NULL,
     UNIQUE (account, household)
   );
   CREATE TABLE receipts (
     household text COLLATE "C" NOT NULL,
     cursor bigint NOT NULL,
     person text NOT NULL,
     address text NOT NULL,
     received_at timestamptz NOT NULL DEFAULT now(),
     PRIMARY KEY (household, cursor),
     FOREIGN KEY (household, cursor) REFERENCES entries
   );
   ALTER TABLE memberships ENABLE ROW LEVEL SECURITY;
   ALTER TABLE memberships FORCE ROW LEVEL SECURITY;
   ALTER TABLE receipts ENABLE ROW LEVEL SECURITY;
   ALTER TABLE receipts FORCE ROW LEVEL SECURITY;
   CREATE POLICY own_household ON memberships USING (household = current_setting('flylarder.household', true));
   CREATE POLICY own_account ON memberships FOR SELECT
     USING (account = current_setting('flylarder.account', true));
   CREATE POLICY own_household ON receipts USING (household = current_setting('flylarder.household', true));`,
  // 3: work done ahead by workers. What they answered is seen in the household's own session only; which
  // households there are, and how far each one's work has come, in a session that names itself a worker's.
  `CREATE TABLE kept_answers (
     household text COLLATE "C" NOT NULL REFERENCES households,
     question text COLLATE "C" NOT NULL,
     answer text NOT NULL,
     PRIMARY KEY (household, question)
   );
   CREATE TABLE household_work (
     household text COLLATE "C" PRIMARY KEY REFERENCES households,
     cursor bigint NOT NULL,
     build text NOT NULL,
     due_at timestamptz NOT NULL,
     done_at timestamptz NOT NULL DEFAULT now()
   );
   ALTER TABLE kept_answers ENABLE ROW LEVEL SECURITY;
   ALTER TABLE kept_answers FORCE ROW LEVEL SECURITY;
   ALTER TABLE household_work ENABLE ROW LEVEL SECURITY;
   ALTER TABLE household_work FORCE ROW LEVEL SECURITY;
   CREATE POLICY own_household ON kept_answers USING (household = current_setting('flylarder.household', true));
   CREATE POLICY own_household ON household_work USING (household = current_setting('flylarder.household', true));
   CREATE POLICY worker ON households FOR SELECT USING (current_setting('flylarder.worker', true) = 'on');
   CREATE POLICY worker ON household_work FOR SELECT USING (current_setting('flylarder.worker', true) = 'on');`,
  // 4: passkeys, the questions that they answer, each good once; and what a session's browser calls itself.
  `CREATE TABLE passkeys (
     passkey text COLLATE "C" PRIMARY KEY,
     account text COLLATE "C" NOT NULL REFERENCES accounts ON DELETE CASCADE,
     name text NOT NULL,
     public_key bytea NOT NULL,
     counter bigint NOT NULL,
     transports text[] NOT NULL,
     added_at timestamptz NOT NULL,
     used_at timestamptz
   );
   CREATE INDEX ON passkeys (account);
   CREATE TABLE challenges (
     challenge text COLLATE "C" PRIMARY KEY,
     account text COLLATE "C" REFERENCES accounts ON DELETE CASCADE,
     good_until timestamptz NOT NULL
   );
   ALTER TABLE sessions ADD COLUMN browser text NOT NULL DEFAULT '';`,
];

// Any number: processes that start together take turns under it.
const migrationLock = 7_305_118_204;

/** Brings the database to the newest version, all steps or none. Throws StoreFault. */
export async function migrate(pool: Pool, where: string): Promise<void> {
  const client = await pool.connect();
  try {
    await client.query('BEGIN');
    await client.query('SELECT pg_advisory_xact_lock($1)', [migrationLock]);
    await refuseBypass(client, where);
    await client.query('CREATE TABLE IF NOT EXISTS logbook_version (version integer NOT NULL)');
    const { rows } = await client.query<{ version: number }>('SELECT version FROM logbook_version');
    const version = rows[0]?.version ?? 0;
    if (version > steps.length) {
      const expected = `format ${steps.length} or older: use a newer version`;
      throw new StoreFault({ where, found: `a logbook of format ${version}`, expected });
    }
    for (const step of steps.slice(version)) await client.query(step);
    if (rows.length === 0) await client.query('INSERT INTO logbook_version VALUES ($1)', [steps.length]);
    else if (version < steps.length) await client.query('UPDATE logbook_version SET version = $1', [steps.length]);
    await client.query('COMMIT');
  } catch (error) {
    await client.query('ROLLBACK').catch(() => {});
    throw error;
  } finally {
    client.release();
  }
}

/** Row-level security binds neither superusers nor roles that bypass it: such a role is refused. */
async function refuseBypass(client: PoolClient, where: string): Promise<void> {
  const { rows } = await client.query<{ free: boolean }>(
    'SELECT rolsuper OR rolbypassrls AS free FROM pg_roles WHERE rolname = current_user',
  );
  if (rows[0]?.free !== false) {
    const expected = 'a role of its own that owns the database, without SUPERUSER and BYPASSRLS';
    throw new StoreFault({ where, found: 'a database role that may see every household', expected });
  }
}
