/**
 * The embedded store and syncing, each against the bare database driver doing the same writes or reads
 * with the same settings. FLYLARDER_BENCH_ENTRIES sets the size of the large logbook.
 */
import { mkdtempSync, rmSync } from 'node:fs';
import { tmpdir } from 'node:os';
import { join } from 'node:path';
import { performance } from 'node:perf_hooks';
import Database from 'libsql';
import { canonicalText, type Entry, fold } from '../src/logbook/index.ts';
import { numberedEntries, numberedStarts } from '../src/store/conformance-entries.ts';
import { openSqliteStore } from '../src/store/sqlite/index.ts';
import type { Store } from '../src/store/store.ts';
import { peerOfStore, syncOnce } from '../src/sync/index.ts';
import type { BenchResult, BenchRow } from './bench-result.ts';

const large = Number(process.env.FLYLARDER_BENCH_ENTRIES ?? 100_000);
const single = 300;
const together = 3000;
const batched = 20_000;

export async function run(): Promise<BenchResult> {
  const folder = mkdtempSync(join(tmpdir(), 'flylarder-bench-'));
  try {
    const rows: BenchRow[] = [
      await oneByOne(folder),
      await manyAtOnce(folder),
      await inOneBatch(folder),
      ...(await largeLogbook(folder)),
      await syncing(folder),
    ];
    return { title: 'Embedded store: durable writes, opening, syncing', rows };
  } finally {
    rmSync(folder, { recursive: true, force: true });
  }
}

/** In turns of some entries each, so that a change of the disk's mood meets both alike. */
async function oneByOne(folder: string): Promise<BenchRow> {
  const bare = bareDriver(join(folder, 'bare-single.sqlite'));
  const store = openSqliteStore(join(folder, 'single'));
  let [ms, bareMs] = [0, 0];
  for (let from = 0; from < single; from += 25) {
    const entries = numberedEntries(from, from + 25);
    bareMs += await milliseconds(() => entries.forEach((entry) => bare.insert(entry)));
    ms += await milliseconds(async () => {
      for (const entry of entries) await store.append([entry]);
    });
  }
  await store.close();
  const [rate, bareRate] = [(1000 * single) / ms, (1000 * single) / bareMs];
  return row('durable appends a second, one after another', rate, bareRate, 'one commit each by the driver');
}

async function manyAtOnce(folder: string): Promise<BenchRow> {
  const bare = bareDriver(join(folder, 'bare-together.sqlite'));
  const bareRate = await perSecond(single, () => numberedEntries(0, single).forEach((e) => bare.insert(e)));
  const store = openSqliteStore(join(folder, 'together'));
  const rate = await perSecond(together, async () => {
    for (let n = 0; n < together; n += 100) {
      await Promise.all(numberedEntries(n, n + 100).map((entry) => store.append([entry])));
    }
  });
  await store.close();
  return row('durable appends a second, 100 callers at once', rate, bareRate, 'one commit each by the driver');
}

async function inOneBatch(folder: string): Promise<BenchRow> {
  const entries = numberedEntries(0, batched);
  const bare = bareDriver(join(folder, 'bare-batch.sqlite'));
  const bareRate = await perSecond(batched, () => bare.insertAll(entries));
  const store = openSqliteStore(join(folder, 'batch'));
  const rate = await perSecond(batched, () => store.append(entries));
  await store.close();
  return row(`durable appends a second, ${batched} in a batch`, rate, bareRate, 'one transaction of the driver');
}

/** Growth with size: a tenth of the large logbook, and all of it. */
async function largeLogbook(folder: string): Promise<BenchRow[]> {
  const rows: BenchRow[] = [];
  for (const size of [large / 10, large]) {
    const place = join(folder, `large-${size}`);
    await fill(place, size);
    const bare = new Database(join(place, 'logbook.sqlite'));
    const bareMs = await milliseconds(() => {
      for (const { text } of bare.prepare('SELECT text FROM entries ORDER BY cursor').iterate() as Iterable<{
        text: string;
      }>) {
        JSON.parse(text);
      }
    });
    bare.close();
    const ms = await milliseconds(async () => {
      const store = openSqliteStore(place);
      fold(await allEntries(store));
      await store.close();
    });
    rows.push({
      what: `ms to open ${size} entries and fold them into facts`,
      figure: ms,
      baseline: `${Math.round(bareMs)} ms: the driver reads and parses them`,
      ratio: ms / bareMs,
    });
  }
  return rows;
}

async function syncing(folder: string): Promise<BenchRow> {
  const server = openSqliteStore(join(folder, `large-${large}`));
  const bare = bareDriver(join(folder, 'bare-sync.sqlite'));
  const entries = await allEntries(server);
  const bareMs = await milliseconds(() => {
    for (let from = 0; from < entries.length; from += 500) bare.insertAll(entries.slice(from, from + 500));
  });
  const device = openSqliteStore(join(folder, 'device'));
  const ms = await milliseconds(() =>
    syncOnce(
      device,
      peerOfStore(server, () => 'bench'),
    ),
  );
  await device.close();
  await server.close();
  return {
    what: `ms to sync ${large} entries to an empty device, checked, 500 a message`,
    figure: ms,
    baseline: `${Math.round(bareMs)} ms: the driver writes them, 500 a commit`,
    ratio: ms / bareMs,
  };
}

async function fill(folder: string, size: number): Promise<void> {
  const store = openSqliteStore(folder);
  await store.append(numberedStarts());
  for (let from = 0; from < size; from += 10_000)
    await store.append(numberedEntries(from, Math.min(size, from + 10_000)));
  await store.close();
}

async function allEntries(store: Store): Promise<Entry[]> {
  const entries: Entry[] = [];
  for await (const { entry } of store.entries()) entries.push(entry);
  return entries;
}

/** The driver alone, with the store's settings and columns. */
function bareDriver(file: string) {
  const db = new Database(file);
  db.exec('PRAGMA journal_mode = WAL; PRAGMA synchronous = FULL;');
  db.exec('CREATE TABLE entries (cursor INTEGER PRIMARY KEY AUTOINCREMENT, id TEXT UNIQUE, text TEXT, crc32 INTEGER)');
  const statement = db.prepare('INSERT INTO entries (id, text, crc32) VALUES (?, ?, ?)');
  const insert = (entry: Entry) => statement.run(entry.id, canonicalText(entry), 0);
  const insertAll = (entries: readonly Entry[]) => {
    db.exec('BEGIN IMMEDIATE');
    for (const entry of entries) insert(entry);
    db.exec('COMMIT');
  };
  return { insert, insertAll };
}

async function perSecond(count: number, work: () => unknown): Promise<number> {
  return (1000 * count) / (await milliseconds(work));
}

async function milliseconds(work: () => unknown): Promise<number> {
  const began = performance.now();
  await work();
  return performance.now() - began;
}

function row(what: string, rate: number, bareRate: number, baseline: string): BenchRow {
  return { what, figure: rate, baseline: `${Math.round(bareRate)}: ${baseline}`, ratio: rate / bareRate };
}
