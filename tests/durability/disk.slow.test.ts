/**
 * Real disks in trouble: a file system of two megabytes that fills up, and one that is read-only, each mounted
 * for the test alone (Linux namespaces; where this user may not mount, the test says so and fails).
 */
import { spawnSync } from 'node:child_process';
import { cpSync, mkdtempSync, readFileSync, rmSync } from 'node:fs';
import { tmpdir } from 'node:os';
import { join, resolve } from 'node:path';
import { afterEach, beforeAll, expect, it } from 'vitest';
import { numberedId } from '../../src/store/conformance-entries.ts';
import { examineLogbook, logbookFile, openSqliteStore } from '../../src/store/sqlite/index.ts';
import { buildRecorder } from '../../src/store/sqlite/kill-cycles.ts';

const program = resolve('bin/flylarder.mjs');
let recorder = '';
let folder = '';
beforeAll(async () => {
  recorder = await buildRecorder(resolve('.cache', 'disk-recorder'));
});
afterEach(() => rmSync(folder, { recursive: true, force: true }));

/** Runs a script with an empty disk of its own at $DISK; what it copies to $OUT is there afterwards. */
function onSmallDisk(script: string): { out: string; err: string; status: number | null } {
  folder = mkdtempSync(join(tmpdir(), 'flylarder-disk-'));
  const DISK = mkdtempSync(join(folder, 'disk-'));
  const namespace = process.getuid?.() === 0 ? ['--mount'] : ['--map-root-user', '--mount'];
  const whole = `set -e; mount -t tmpfs -o size=2m tmpfs "$DISK"; set +e; ${script}`;
  const env = { ...process.env, DISK, OUT: folder, NODE: process.execPath, RECORDER: recorder, PROGRAM: program };
  const done = spawnSync('unshare', [...namespace, 'bash', '-c', whole], { env, encoding: 'utf8', timeout: 120_000 });
  if (/unshare|mount/.test(done.stderr)) throw new Error(`This test must be allowed to mount a disk: ${done.stderr}`);
  return { out: done.stdout, err: done.stderr, status: done.status };
}

it('a disk that fills up is said, and every acknowledged entry is there afterwards', async () => {
  const { out, err } = onSmallDisk(
    '"$NODE" "$RECORDER" "$DISK/household"; echo "status $?" >&2; cp -a "$DISK/household" "$OUT/"',
  );
  expect(err).toMatch(/StoreFault: .*logbook\.sqlite: found a full disk; nothing was written/);
  expect(err).toMatch(/status 3/);
  const acknowledged = out.split('\n').slice(0, -1).map(Number);
  expect(acknowledged.length).toBeGreaterThan(100);
  const saved = join(folder, 'household');
  const store = openSqliteStore(saved);
  expect(await store.missing(acknowledged.map((n) => numberedId(n)))).toEqual([]);
  await store.close();
  expect(examineLogbook(logbookFile(saved)).damage).toEqual([]);
});

it('a file that does not fit is written not at all, and the logbook goes on', () => {
  const line = '{"kind":"note","on":"2026-10-01","text":"note &"}';
  const { err, out } =
    onSmallDisk(`cd "$OUT"; seq 20000 | sed 's/.*/${line}/' > big.jsonl; head -1 big.jsonl > small.jsonl
    "$NODE" "$PROGRAM" record small.jsonl --data "$DISK/household"
    "$NODE" "$PROGRAM" record big.jsonl --data "$DISK/household"; echo "status $?" >&2
    "$NODE" "$PROGRAM" export --data "$DISK/household"`);
  expect(err).toMatch(/found a full disk; nothing was written/);
  expect(err).toMatch(/status 3/);
  expect(out.match(/"text"/g)).toHaveLength(1);
});

it('a read-only disk is said, and the logbook on it stays as it was', () => {
  const { err } = onSmallDisk(`"$NODE" "$PROGRAM" record note text=kept --data "$DISK/household" > /dev/null
    cp -a "$DISK/household" "$OUT/before"
    mount -o remount,ro "$DISK"
    "$NODE" "$PROGRAM" record note text=lost --data "$DISK/household"; echo "status $?" >&2
    cp -a "$DISK/household" "$OUT/after"`);
  expect(err).toMatch(/found a (logbook that may not be written|disk that is read-only|file that cannot be opened)/);
  expect(err).toMatch(/status 3/);
  const bytes = (name: string) => readFileSync(logbookFile(join(folder, name)));
  expect(bytes('after').equals(bytes('before'))).toBe(true);
  cpSync(join(folder, 'after'), join(folder, 'again'), { recursive: true });
  expect(examineLogbook(logbookFile(join(folder, 'again')))).toMatchObject({ readable: 1, damage: [] });
});
