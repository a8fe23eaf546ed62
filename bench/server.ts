/** Durable entries a second over HTTP, against the bare database driver committing the same lines. */
import { randomBytes } from 'node:crypto';
import { mkdtempSync, rmSync } from 'node:fs';
import { tmpdir } from 'node:os';
import { join } from 'node:path';
import { performance } from 'node:perf_hooks';
import Database from 'libsql';
import { day } from '../src/foundation/index.ts';
import { entryIdMaker } from '../src/logbook/index.ts';
import { startServer } from '../src/server/index.ts';
import { openSqliteStore } from '../src/store/sqlite/index.ts';
import type { BenchResult, BenchRow } from './bench-result.ts';

const singles = 500;
const writers = 16;
const batchSize = 5000;
const newEntryId = entryIdMaker({ now: () => Date.now(), randomBytes: (n) => randomBytes(n) });
const now = () => new Date().toISOString();

export async function run(): Promise<BenchResult> {
  const folder = mkdtempSync(join(tmpdir(), 'flylarder-bench-'));
  const store = openSqliteStore(join(folder, 'household'));
  const shell = { todayIn: () => day(now().slice(0, 10)), now, newEntryId };
  const server = await startServer({ store, shell, version: 'bench', webFolder: folder, port: 0 });
  const send = (lines: string) => post(server.address, lines);
  try {
    const bare = bareDriver(join(folder, 'bare.sqlite'));
    const row = (what: string, rate: number, bareRate: number, name: string): BenchRow => ({
      what,
      figure: `${Math.round(rate)} entries/s`,
      baseline: `${name}: ${Math.round(bareRate)} rows/s`,
      ratio: rate / bareRate,
    });
    const one = await perSecond(singles, async () => {
      for (let i = 0; i < singles; i++) await send(noteLine(i));
    });
    const several = await perSecond(singles, async () => {
      await Promise.all(Array.from({ length: writers }, () => sendSome(send, singles / writers)));
    });
    const batch = await perSecond(batchSize, () =>
      send(Array.from({ length: batchSize }, (_, i) => noteLine(i)).join('')),
    );
    return {
      title: `Server: durable appends over HTTP, this machine, logbook growing to ${2 * singles + batchSize}`,
      rows: [
        row('one at a time', one, bare.single, 'bare libsql, a commit each'),
        row(`${writers} writers at once`, several, bare.single, 'bare libsql, a commit each'),
        row(`one batch of ${batchSize}`, batch, bare.batched, 'bare libsql, one commit'),
      ],
    };
  } finally {
    await server.stop();
    await store.close();
    rmSync(folder, { recursive: true, force: true });
  }
}

async function sendSome(send: (lines: string) => Promise<void>, count: number): Promise<void> {
  for (let i = 0; i < count; i++) await send(noteLine(i));
}

async function post(address: string, lines: string): Promise<void> {
  const headers = { 'content-type': 'application/x-ndjson' };
  const answer = await fetch(`${address}api/v1/entries`, { method: 'POST', headers, body: lines });
  if (answer.status !== 201) throw new Error(`${answer.status}: ${await answer.text()}`);
  await answer.arrayBuffer();
}

function noteLine(n: number): string {
  const entry = { id: newEntryId(), kind: 'note', on: '2026-10-01', recordedAt: now(), by: 'bench', text: `note ${n}` };
  return `${JSON.stringify(entry)}\n`;
}

/** Rows a second of the driver alone, as durable as the store: every commit reaches the disk. */
function bareDriver(file: string): { single: number; batched: number } {
  const db = new Database(file);
  db.exec(
    'PRAGMA journal_mode = WAL; PRAGMA synchronous = FULL; CREATE TABLE entries (id TEXT PRIMARY KEY, text TEXT)',
  );
  const insert = db.prepare('INSERT INTO entries VALUES (?, ?)');
  const rate = (count: number, act: () => void) => {
    const startedAt = performance.now();
    act();
    return (1000 * count) / (performance.now() - startedAt);
  };
  const rows = (count: number) => {
    for (let i = 0; i < count; i++) insert.run(newEntryId(), noteLine(i));
  };
  const single = rate(singles, () => rows(singles));
  const batched = rate(batchSize, () => {
    db.exec('BEGIN');
    rows(batchSize);
    db.exec('COMMIT');
  });
  db.close();
  return { single, batched };
}

async function perSecond(count: number, act: () => Promise<unknown>): Promise<number> {
  const startedAt = performance.now();
  await act();
  return (1000 * count) / (performance.now() - startedAt);
}
