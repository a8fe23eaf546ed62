import {
  closeSync,
  existsSync,
  openSync,
  readFileSync,
  statSync,
  truncateSync,
  writeFileSync,
  writeSync,
} from 'node:fs';
import { join } from 'node:path';
import Database from 'libsql';
import { beforeEach, describe, expect, it } from 'vitest';
import { canonicalText, type Entry } from '../../logbook/index.ts';
import { numberedEntries, numberedEntry } from '../conformance-entries.ts';
import { examineLogbook, logbookFile, openSqliteStore, salvageLogbook } from './index.ts';
import { temporaryFolder } from './temporary-folder.ts';

const size = 2000;
let folder = '';
let file = '';

beforeEach(async () => {
  folder = temporaryFolder();
  file = logbookFile(folder);
  const store = openSqliteStore(folder);
  await store.append(numberedEntries(0, size));
  await store.close();
});

function overwrite(at: number, bytes: Uint8Array): void {
  const handle = openSync(file, 'r+');
  writeSync(handle, bytes, 0, bytes.length, at);
  closeSync(handle);
}

function readable(): { entries: Set<string>; examination: ReturnType<typeof examineLogbook> } {
  const entries = new Set<string>();
  const examination = examineLogbook(file, (entry) => entries.add(canonicalText(entry)));
  return { entries, examination };
}

const everyText = new Set(numberedEntries(0, size).map(canonicalText));

describe('the doctor', () => {
  it('finds nothing wrong with a good logbook, and leaves it as it was', () => {
    const before = readFileSync(file);
    expect(readable().examination).toEqual({ file, readable: size, lost: 0, damage: [] });
    expect(readFileSync(file).equals(before)).toBe(true);
  });

  it('reads a logbook that is in use, write-ahead log included', async () => {
    const store = openSqliteStore(folder);
    await store.append([numberedEntry(5000)]);
    expect(readable().examination).toMatchObject({ readable: size + 1, damage: [] });
    await store.close();
  });

  it('names an entry of which one bit has flipped, and reads all others', () => {
    const bytes = readFileSync(file);
    const text = Buffer.from(canonicalText(numberedEntry(777)));
    const at = bytes.indexOf(text) + text.indexOf('"flies":') + 8;
    overwrite(at, new Uint8Array([(bytes[at] as number) ^ 1]));
    const { entries, examination } = readable();
    expect(examination).toMatchObject({ readable: size - 1, lost: 1 });
    expect(examination.damage.map((p) => p.where)).toEqual([`${file}, entry ${numberedEntry(777).id} at cursor 778`]);
    expect(entries.has(canonicalText(numberedEntry(777)))).toBe(false);
  });

  for (const page of [1, 2, 3, 4, 5, 20, 60]) {
    it(`page ${page} filled with noise: no false entry, and all but that page's are read`, () => {
      overwrite(
        (page - 1) * 4096,
        Uint8Array.from({ length: 4096 }, (_, i) => (i * 151 + page) % 256),
      );
      const { entries, examination } = readable();
      expect(examination.damage.length).toBeGreaterThan(0);
      expect([...entries].filter((text) => !everyText.has(text))).toEqual([]);
      // A page of 4096 bytes holds at most 17 entries of about 230 bytes.
      expect(examination.readable).toBeGreaterThanOrEqual(size - 17);
    });
  }

  it('a file cut in half: what is left is read', () => {
    truncateSync(file, statSync(file).size / 2);
    const { entries, examination } = readable();
    expect(examination.damage.length).toBeGreaterThan(0);
    expect(examination.readable).toBeGreaterThan(size / 4);
    expect([...entries].every((text) => everyText.has(text))).toBe(true);
  });

  it('a file of something else: says so, reads nothing', () => {
    writeFileSync(file, 'a letter to grandmother, of some length '.repeat(200));
    expect(readable().examination).toMatchObject({ readable: 0, damage: [expect.anything()] });
  });

  it('an empty file is damage too', () => {
    writeFileSync(file, '');
    expect(readable().examination.damage.length).toBeGreaterThan(0);
  });

  it('a missing row is noticed, and found again in the bytes where it stood', () => {
    const db = new Database(file);
    db.exec('DELETE FROM entries WHERE cursor = 12');
    db.close();
    const { entries, examination } = readable();
    expect(examination).toMatchObject({ readable: size, lost: 0, damage: [{ where: `${file}, entry at cursor 12` }] });
    expect(entries).toEqual(everyText);
  });

  it('no file: says so', () => {
    expect(() => examineLogbook(join(folder, 'nowhere.sqlite'))).toThrow(/no such file/);
  });
});

describe('saving what can be read', () => {
  it('makes a new logbook of it and never writes into one that is there', async () => {
    overwrite(4096 * 10, new Uint8Array(4096));
    const target = temporaryFolder();
    const examination = await salvageLogbook(file, target);
    const store = openSqliteStore(target);
    const saved: Entry[] = [];
    for await (const { entry } of store.entries()) saved.push(entry);
    await store.close();
    expect(saved.length).toBe(examination.readable);
    expect(saved.every((e) => everyText.has(canonicalText(e)))).toBe(true);
    expect(examineLogbook(logbookFile(target)).damage).toEqual([]);
    await expect(salvageLogbook(file, folder)).rejects.toThrow(/a folder without one/);
    expect(existsSync(file)).toBe(true);
  });
});
