import { spawnSync } from 'node:child_process';
import { readFileSync } from 'node:fs';
import { fileURLToPath } from 'node:url';
import { expect, it } from 'vitest';

const folder = fileURLToPath(new URL('./learning-jags/', import.meta.url));
const hasJags = spawnSync('Rscript', ['-e', 'library(rjags)']).status === 0;

/** quantity -> mean, sd. */
function read(csv: string): Map<string, { mean: number; sd: number }> {
  const rows = csv.trim().split('\n').slice(1);
  return new Map(rows.map((r) => r.split(',')).map((r) => [r[0] as string, { mean: Number(r[1]), sd: Number(r[2]) }]));
}

/** Where JAGS is not installed, the kept output is at least whole. */
it(hasJags ? 'JAGS gives the kept posterior again' : 'the kept posterior is whole (JAGS is not installed)', () => {
  const kept = read(readFileSync(`${folder}posterior.csv`, 'utf8'));
  expect(kept.size).toBe(15);
  if (!hasJags) return;
  const run = spawnSync('Rscript', ['run.R', '20000'], { cwd: folder, encoding: 'utf8' });
  expect(run.stderr).toBe('');
  for (const [quantity, fresh] of read(run.stdout)) {
    const old = kept.get(quantity) as { mean: number; sd: number };
    // About 5,000 independent draws: four standard errors are .06 sd.
    expect(Math.abs(fresh.mean - old.mean) / old.sd, quantity).toBeLessThan(0.06);
  }
}, 300_000);
