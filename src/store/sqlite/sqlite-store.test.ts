import { join } from 'node:path';
import Database from 'libsql';
import { describe, expect, it } from 'vitest';
import { storeConformance } from '../conformance.ts';
import { numberedEntry } from '../conformance-entries.ts';
import { StoreFault } from '../store.ts';
import { logbookFile, openSqliteStore } from './index.ts';
import { temporaryFolder } from './temporary-folder.ts';
import { crc32 } from './crc32.ts';

describe('the SQLite store', () => {
  for (const { name, run } of storeConformance) {
    it(name, async () => {
      const place = join(temporaryFolder(), 'household');
      await run({ open: async () => openSqliteStore(place) });
    });
  }

  it('is shared by two that write in turn', async () => {
    const place = temporaryFolder();
    const [a, b] = [openSqliteStore(place), openSqliteStore(place)];
    for (let n = 0; n < 20; n++) await (n % 2 === 0 ? a : b).append([numberedEntry(n)]);
    expect([await a.count(), await b.count()]).toEqual([20, 20]);
    await Promise.all([a.close(), b.close()]);
  });

  it('says so when another program holds the file', async () => {
    const place = temporaryFolder();
    const store = openSqliteStore(place, { busyMs: 200 });
    const other = new Database(logbookFile(place));
    other.exec('BEGIN IMMEDIATE');
    await expect(store.append([numberedEntry(1)])).rejects.toThrow(/another program keeps locked/);
    other.exec('ROLLBACK');
    other.close();
    expect(await store.append([numberedEntry(1)])).toEqual({ ok: true, value: { added: 1, alreadyThere: 0 } });
    await store.close();
  });

  it('says so when an entry is damaged', async () => {
    const place = temporaryFolder();
    const store = openSqliteStore(place);
    await store.append([numberedEntry(1)]);
    const other = new Database(logbookFile(place));
    other.exec("UPDATE entries SET text = '{'");
    other.close();
    await expect(store.entry(numberedEntry(1).id)).rejects.toThrow(/run doctor/);
    await expect(store.entries()[Symbol.asyncIterator]().next()).rejects.toThrow(/a damaged entry/);
    await store.close();
  });

  it('refuses a database of something else, and leaves it as it was', () => {
    const place = temporaryFolder();
    const other = new Database(logbookFile(place));
    other.exec('CREATE TABLE birds (name TEXT)');
    other.close();
    expect(() => openSqliteStore(place)).toThrow(/a database of something else/);
  });

  it('refuses a logbook of a newer format', async () => {
    const place = temporaryFolder();
    await openSqliteStore(place).close();
    const other = new Database(logbookFile(place));
    other.exec('PRAGMA user_version = 99');
    other.close();
    expect(() => openSqliteStore(place)).toThrow(StoreFault);
  });
});

it('CRC-32 gives the check value of its published definition', () => expect(crc32('123456789')).toBe(0xcbf43926));
