/** Kills a recording process again and again and looks for what it had acknowledged. */
import { spawn } from 'node:child_process';
import { mkdtempSync, rmSync } from 'node:fs';
import { tmpdir } from 'node:os';
import { join, resolve } from 'node:path';
import { build } from 'vite';
import { canonicalText } from '../../logbook/index.ts';
import { numberedEntry, numberedId } from '../conformance-entries.ts';
import { openSqliteStore } from './index.ts';

export interface KillReport {
  cycles: number;
  acknowledged: number;
  lost: number[];
}

/** Builds the recorder as plain JavaScript; inside the project, so that it finds its packages. */
export async function buildRecorder(outDir: string): Promise<string> {
  const entry = resolve(import.meta.dirname, 'kill-recorder.ts');
  await build({
    configFile: false,
    logLevel: 'error',
    build: { ssr: entry, outDir, emptyOutDir: true, rollupOptions: { output: { entryFileNames: 'recorder.mjs' } } },
  });
  return join(outDir, 'recorder.mjs');
}

/** Runs until `wanted` records are acknowledged and `cycles` kills are done, killing at chosen moments. */
export async function killCycles(
  recorder: string,
  options: { cycles: number; wanted: number; atOnce: number; killAfter: (cycle: number) => number },
): Promise<KillReport> {
  const folder = mkdtempSync(join(tmpdir(), 'logbook-kill-'));
  const acknowledged = new Set<number>();
  const lost = new Set<number>();
  let next = 0;
  let cycle = 0;
  try {
    for (; cycle < options.cycles || acknowledged.size < options.wanted; cycle++) {
      const fresh = await recordUntilKilled(recorder, folder, next, options.atOnce, options.killAfter(cycle));
      for (const n of fresh) acknowledged.add(n);
      next = Math.max(next, ...fresh, 0) + options.atOnce + 1;
      for (const n of await missing(folder, fresh)) lost.add(n);
    }
    for (const n of await missing(folder, acknowledged)) lost.add(n);
  } finally {
    rmSync(folder, { recursive: true, force: true });
  }
  return { cycles: cycle, acknowledged: acknowledged.size, lost: [...lost] };
}

/** The numbers acknowledged before the process was killed, `records` of them or some more. */
function recordUntilKilled(recorder: string, folder: string, first: number, atOnce: number, records: number) {
  return new Promise<Set<number>>((done, fail) => {
    const child = spawn(process.execPath, [recorder, folder, String(first), String(atOnce)]);
    let out = '';
    let errors = '';
    child.stderr.on('data', (chunk) => {
      errors += String(chunk);
    });
    child.stdout.on('data', (chunk) => {
      out += String(chunk);
      if (out.split('\n').length > records) child.kill('SIGKILL');
    });
    child.on('error', fail);
    child.on('close', (_code, signal) => {
      // A line without its end was not acknowledged yet.
      if (signal === 'SIGKILL') done(new Set(out.split('\n').slice(0, -1).map(Number)));
      else fail(new Error(`the recorder ended by itself: ${errors}`));
    });
  });
}

async function missing(folder: string, numbers: Iterable<number>): Promise<number[]> {
  const store = openSqliteStore(folder);
  const lost: number[] = [];
  for (const n of numbers) {
    const kept = await store.entry(numberedId(n));
    if (kept === null || canonicalText(kept) !== canonicalText(numberedEntry(n))) lost.push(n);
  }
  await store.close();
  return lost;
}
