/** The store of a facility: PostgreSQL, several households. */
export { openPostgres, type PostgresLogbooks } from './open-postgres.ts';
