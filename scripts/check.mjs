/**
 * `npm run check`: everything that can be said of the sources without running them, and the tests of
 * the house's shape. Each check is one line; the output of a failed one follows it.
 */
import { existsSync } from 'node:fs';
import { join } from 'node:path';
import { pathToFileURL } from 'node:url';
import { projectFolder, runCommand } from './run-command.mjs';

const sourceChecks = [
  ['types of the pure rooms', 'tsc', ['-p', 'tsconfig.pure.json']],
  ['types of the Node rooms and tests', 'tsc', ['-p', 'tsconfig.node.json']],
  ['types of the page', 'svelte-check', ['--tsconfig', './tsconfig.web.json', '--fail-on-warnings'], 'src/web/main.ts'],
  ['lint', 'oxlint', ['--type-aware']],
  ['format', 'biome', ['format', '.']],
  ['import directions', 'depcruise', ['--config', '.dependency-cruiser.mjs', 'src']],
];
const architectureTests = ['shape of the house', 'vitest', ['run', 'tests/architecture']];

/** Runs the checks one after another. Resolves to how many passed and failed. */
export async function runChecks({ withArchitecture }) {
  const counts = { passed: 0, failed: 0 };
  for (const [name, command, args, needs] of withArchitecture ? [...sourceChecks, architectureTests] : sourceChecks) {
    if (needs && !existsSync(join(projectFolder, needs))) continue;
    const startedAt = Date.now();
    const { code, output } = await runCommand(command, args);
    const seconds = ((Date.now() - startedAt) / 1000).toFixed(1);
    console.log(`${code === 0 ? 'ok    ' : 'FAILED'} ${name} (${seconds} s)`);
    if (code !== 0) console.log(output);
    counts[code === 0 ? 'passed' : 'failed']++;
  }
  return counts;
}

if (import.meta.url === pathToFileURL(process.argv[1]).href) {
  const { failed } = await runChecks({ withArchitecture: true });
  process.exitCode = failed === 0 ? 0 : 1;
}
