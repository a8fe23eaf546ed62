import { spawnSync } from 'node:child_process';
import { join, resolve } from 'node:path';
import { beforeAll, expect, it } from 'vitest';
import { numberedId } from '../conformance-entries.ts';
import { examineLogbook, logbookFile, openSqliteStore } from './index.ts';
import { buildRecorder, killCycles } from './kill-cycles.ts';
import { temporaryFolder } from './temporary-folder.ts';

let recorder = '';
beforeAll(async () => {
  recorder = await buildRecorder(resolve('.cache', 'kill-recorder'));
});

it('kill -9 during a thousand records loses no acknowledged entry', async () => {
  const report = await killCycles(recorder, { cycles: 5, wanted: 1000, atOnce: 3, killAfter: (c) => 150 + 37 * c });
  expect(report.lost).toEqual([]);
  expect(report.acknowledged).toBeGreaterThanOrEqual(1000);
}, 120_000);

it('a disk that takes no more is said, and loses no acknowledged entry', async () => {
  const folder = temporaryFolder();
  // No file may grow beyond 500 blocks of 1 KiB.
  const limited = `ulimit -f 500; exec "${process.execPath}" "${recorder}" "${folder}"`;
  const { stdout, stderr, status } = spawnSync('bash', ['-c', limited], { encoding: 'utf8', timeout: 60_000 });
  expect(stderr).toMatch(/StoreFault: .*logbook\.sqlite: found a (disk that fails|full disk)/);
  expect(status).toBe(3);
  const acknowledged = stdout.split('\n').slice(0, -1).map(Number);
  expect(acknowledged.length).toBeGreaterThan(20);
  const store = openSqliteStore(folder);
  expect(await store.missing(acknowledged.map((n) => numberedId(n)))).toEqual([]);
  await store.close();
  expect(examineLogbook(logbookFile(folder)).damage).toEqual([]);
}, 120_000);

it('a folder that cannot be made is said', async () => {
  const folder = temporaryFolder();
  await openSqliteStore(folder).close();
  expect(() => openSqliteStore(join(logbookFile(folder), 'inside'))).toThrow(/a file where a folder should be/);
});
