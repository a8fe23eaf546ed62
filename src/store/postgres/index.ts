/** The store of a facility: PostgreSQL, several households. */
export type {
  Account,
  AccountRole,
  KeptLink,
  KeptSession,
  ListedSession,
  Member,
  Membership,
  PostgresAccounts,
} from './accounts.ts';
export { openPostgres, type PostgresLogbooks } from './open-postgres.ts';
export type { Passkey, PostgresPasskeys } from './passkeys.ts';
export type { DoneWork, PostgresWork } from './work.ts';
