/** How long the command line's answers take on the demo, cold: the process's start is part of the time. */
import { spawnSync } from 'node:child_process';
import { mkdtempSync, rmSync } from 'node:fs';
import { tmpdir } from 'node:os';
import { join } from 'node:path';
import { performance } from 'node:perf_hooks';
import { fileURLToPath } from 'node:url';
import type { BenchResult, BenchRow } from './bench-result.ts';

const program = join(fileURLToPath(import.meta.url), '../../cli.js');
const targetS = 2;
const runs = 3;

export async function run(): Promise<BenchResult> {
  const folder = mkdtempSync(join(tmpdir(), 'flylarder-bench-'));
  try {
    const nodeS = median(() => seconds(['-e', '0'], [0]));
    const row = (name: string, s: number): BenchRow => ({
      what: `flylarder ${name}`,
      figure: `${s.toFixed(2)} s`,
      baseline: `node -e 0: ${nodeS.toFixed(3)} s`,
      ratio: s / nodeS,
      target: `at most ${targetS} s${s <= targetS ? '' : ' (MISSED)'}`,
    });
    const demo = seconds([program, 'demo', '--data', folder], [0]);
    const answers = ['today', 'forecast', 'plan'].map((name) =>
      row(
        name,
        median(() => seconds([program, name, '--data', folder], [0, 1])),
      ),
    );
    return { title: `Doors: the demo household, cold, median of ${runs}`, rows: [row('demo', demo), ...answers] };
  } finally {
    rmSync(folder, { recursive: true, force: true });
  }
}

/** Seconds that a Node process takes; throws when its exit status is not among those allowed. */
function seconds(args: string[], allowed: number[]): number {
  const startedAt = performance.now();
  const { status, stderr } = spawnSync(process.execPath, args, { encoding: 'utf8' });
  if (status === null || !allowed.includes(status))
    throw new Error(`node ${args.join(' ')}: status ${status}\n${stderr}`);
  return (performance.now() - startedAt) / 1000;
}

function median(measure: () => number): number {
  const all = Array.from({ length: runs }, measure).sort((a, b) => a - b);
  return all[Math.floor(runs / 2)] as number;
}
