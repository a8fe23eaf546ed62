/** The embedded store: SQLite, one file in the household's folder. */
export { logbookFile, logbookFileName, type SqliteOptions } from './sqlite-file.ts';
export { openSqliteStore } from './sqlite-store.ts';
