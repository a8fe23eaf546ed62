/** The embedded store: SQLite, one file in the household's folder. */
export { backupLogbook, copiesFolder, dailyBackup } from './backup.ts';
export { type Examination, examineLogbook, salvageLogbook } from './doctor.ts';
export { type KeptCopies, keepByDefault, keptCopies } from './kept-copies.ts';
export { type Restored, restoreLogbook } from './restore.ts';
export { logbookFile, logbookFileName, type SqliteOptions } from './sqlite-file.ts';
export { openSqliteStore, type SqliteStore } from './sqlite-store.ts';
