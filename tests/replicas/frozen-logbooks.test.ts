/** Logbooks that earlier versions wrote open for ever and say what they said. */
import { copyFileSync, createReadStream, existsSync, mkdtempSync, readdirSync, readFileSync, rmSync } from 'node:fs';
import { tmpdir } from 'node:os';
import { join } from 'node:path';
import { describe, expect, it } from 'vitest';
import { canonicalText, type Entry, entryKindNames, fold, readLogbook } from '../../src/logbook/index.ts';
import { examineLogbook, logbookFile, openSqliteStore } from '../../src/store/sqlite/index.ts';

const folder = join(import.meta.dirname, '../fixtures/logbooks');
const frozen = readdirSync(folder, { withFileTypes: true })
  .filter((f) => f.isDirectory())
  .map((f) => f.name);

async function entriesOf(name: string): Promise<Entry[]> {
  const read = await readLogbook(createReadStream(join(folder, name, 'logbook.jsonl')), { file: name });
  if (!read.ok) throw new Error(JSON.stringify(read.problems));
  return read.value.map((r) => r.entry);
}

function textOf(name: string): string {
  return readFileSync(join(folder, name, 'logbook.jsonl'), 'utf8');
}

describe.each(frozen)('%s', (name) => {
  it('is read, and written again byte for byte', async () => {
    const entries = await entriesOf(name);
    expect(entries.map((e) => `${canonicalText(e)}\n`).join('')).toBe(textOf(name));
  });

  it('says what it said', async () => {
    const said = JSON.parse(readFileSync(join(folder, name, 'facts.json'), 'utf8')) as object;
    expect(fold(await entriesOf(name))).toMatchObject(said);
  });
});

describe.each(frozen.filter((name) => existsSync(join(folder, name, 'logbook.sqlite'))))(
  '%s, the SQLite file',
  (name) => {
    it('opens, is whole, has the same entries and takes new ones', async () => {
      const household = mkdtempSync(join(tmpdir(), 'frozen-'));
      try {
        copyFileSync(join(folder, name, 'logbook.sqlite'), logbookFile(household));
        const store = openSqliteStore(household);
        let text = '';
        let last: Entry | null = null;
        for await (const { entry } of store.entries()) {
          text += `${canonicalText(entry)}\n`;
          last = entry;
        }
        expect(text).toBe(textOf(name));
        const fresh = { ...(last as unknown as Entry), id: '019d0000-0000-7000-8000-000000000001' };
        expect(await store.append([fresh])).toEqual({ ok: true, value: { added: 1, alreadyThere: 0 } });
        await store.close();
        expect(examineLogbook(logbookFile(household)).damage).toEqual([]);
      } finally {
        rmSync(household, { recursive: true, force: true });
      }
    });
  },
);

it('receipts of a frozen file are still told', async () => {
  const household = mkdtempSync(join(tmpdir(), 'frozen-'));
  copyFileSync(join(folder, 'format-1-receipts', 'logbook.sqlite'), logbookFile(household));
  const store = openSqliteStore(household);
  const senders = (await store.receipts(10, 10)).map(({ person, address, receivedAt }) => [
    person,
    address,
    receivedAt,
  ]);
  await store.close();
  rmSync(household, { recursive: true, force: true });
  expect(senders).toEqual([
    [null, null, null],
    ['Phone', '192.168.1.30', '2026-10-05T08:00:01.000Z'],
  ]);
});

it('every kind of entry stands in a frozen logbook', async () => {
  const kinds = new Set((await Promise.all(frozen.map(entriesOf))).flat().map((e) => e.kind));
  expect(entryKindNames.filter((kind) => !kinds.has(kind))).toEqual([]);
});
