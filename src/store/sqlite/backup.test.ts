import { existsSync, readdirSync, truncateSync } from 'node:fs';
import { join } from 'node:path';
import { describe, expect, it } from 'vitest';
import { addDays, day } from '../../foundation/index.ts';
import { numberedEntries, numberedEntry } from '../conformance-entries.ts';
import type { Store } from '../store.ts';
import {
  backupLogbook,
  copiesFolder,
  dailyBackup,
  examineLogbook,
  keptCopies,
  logbookFile,
  openSqliteStore,
  restoreLogbook,
} from './index.ts';
import { collectGarbage, temporaryFolder } from './temporary-folder.ts';

async function ids(store: Store): Promise<string[]> {
  const all: string[] = [];
  for await (const { entry } of store.entries()) all.push(entry.id);
  await store.close();
  return all;
}

describe('a copy', () => {
  it('is whole while entries are recorded, and can be opened as a logbook', async () => {
    const [folder, other] = [temporaryFolder(), temporaryFolder()];
    const store = openSqliteStore(folder);
    const acknowledged: string[] = [];
    for (let n = 0; n < 300; n++) {
      const pending = store.append([numberedEntry(n)]);
      if (n === 150) backupLogbook(folder, logbookFile(other));
      await pending;
      acknowledged.push(numberedEntry(n).id);
    }
    await store.close();
    const copied = await ids(openSqliteStore(other));
    expect(copied).toEqual(acknowledged.slice(0, copied.length));
    expect(copied.length).toBeGreaterThanOrEqual(150);
  });

  it('is never written over another file', async () => {
    const folder = temporaryFolder();
    await openSqliteStore(folder).close();
    backupLogbook(folder, join(folder, 'copy.sqlite'));
    expect(() => backupLogbook(folder, join(folder, 'copy.sqlite'))).toThrow(/there already/);
    expect(readdirSync(folder).filter((name) => name.includes('unfinished'))).toEqual([]);
  });

  it('of nothing is refused', () => {
    expect(() => backupLogbook(temporaryFolder(), join(temporaryFolder(), 'x'))).toThrow(/no logbook/);
  });
});

describe('daily copies', () => {
  it('one a day, thinned out with age', async () => {
    const folder = temporaryFolder();
    const store = openSqliteStore(folder);
    const first = day('2026-01-01');
    for (let n = 0; n < 60; n++) {
      await store.append([numberedEntry(n)]);
      dailyBackup(folder, addDays(first, n), { days: 3, weeks: 3, months: 2 });
      dailyBackup(folder, addDays(first, n), { days: 3, weeks: 3, months: 2 });
    }
    await store.close();
    const copies = readdirSync(copiesFolder(folder)).sort();
    expect(copies[copies.length - 1]).toBe('logbook-2026-03-01.sqlite');
    expect(copies.length).toBeGreaterThan(4);
    expect(copies.length).toBeLessThanOrEqual(8);
    expect(examineLogbook(join(copiesFolder(folder), copies[0] as string)).damage).toEqual([]);
  });

  it('keep days, weeks and months', () => {
    const days = Array.from({ length: 90 }, (_, i) => addDays(day('2026-01-01'), i));
    // 2026-03-31 was a Tuesday; its weeks began on 30, 23 and 16 March.
    expect(keptCopies(days, { days: 2, weeks: 3, months: 3 })).toEqual([
      '2026-03-31',
      '2026-03-30',
      '2026-03-23',
      '2026-03-16',
      '2026-03-01',
      '2026-02-01',
      '2026-01-01',
    ]);
  });

  it('no logbook, no copy', () => expect(dailyBackup(temporaryFolder(), '2026-01-01')).toBeNull());
});

describe('restoring', () => {
  it('puts the copy in place and keeps what was there', async () => {
    const folder = temporaryFolder();
    const copy = join(temporaryFolder(), 'copy.sqlite');
    const store = openSqliteStore(folder);
    await store.append(numberedEntries(0, 10));
    await store.setMark('sync.epoch', 'first life');
    await store.setMark('own', 'kept');
    backupLogbook(folder, copy);
    await store.append(numberedEntries(10, 15));
    await store.close();
    await collectGarbage();
    const { entries, setAside } = restoreLogbook(copy, folder);
    expect(entries).toBe(10);
    expect(examineLogbook(setAside as string)).toMatchObject({ readable: 15, damage: [] });
    const restored = openSqliteStore(folder);
    expect([await restored.mark('sync.epoch'), await restored.mark('own')]).toEqual([null, 'kept']);
    expect((await ids(restored)).length).toBe(10);
    expect(existsSync(copy)).toBe(true);
  });

  it('into an empty folder', async () => {
    const [folder, copy] = [temporaryFolder(), join(temporaryFolder(), 'copy.sqlite')];
    const store = openSqliteStore(folder);
    await store.append(numberedEntries(0, 3));
    backupLogbook(folder, copy);
    await store.close();
    const target = join(temporaryFolder(), 'new');
    expect(restoreLogbook(copy, target)).toEqual({ entries: 3, setAside: null });
    expect((await ids(openSqliteStore(target))).length).toBe(3);
  });

  it('a damaged copy is refused and nothing is touched', async () => {
    const [folder, copy] = [temporaryFolder(), join(temporaryFolder(), 'copy.sqlite')];
    const store = openSqliteStore(folder);
    await store.append(numberedEntries(0, 200));
    backupLogbook(folder, copy);
    await store.close();
    truncateSync(copy, 30_000);
    expect(() => restoreLogbook(copy, folder)).toThrow(/doctor can save/);
    expect(examineLogbook(logbookFile(folder)).readable).toBe(200);
  });

  it('under a program at work is refused', async () => {
    const [folder, copy] = [temporaryFolder(), join(temporaryFolder(), 'copy.sqlite')];
    const store = openSqliteStore(folder);
    await store.append(numberedEntries(0, 3));
    backupLogbook(folder, copy);
    expect(() => restoreLogbook(copy, folder)).toThrow(/in use/);
    expect((await ids(store)).length).toBe(3);
  });
});
