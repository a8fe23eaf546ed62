/**
 * `npm run bench [-- name ...]`: builds, runs the benches one after another, each in a process of its own,
 * and ends with one table: figure, named baseline of the same run, ratio, target. `--short` takes small sizes
 * (about ten minutes for all); `--table` runs nothing and tells the last rows of every bench again.
 */
import { existsSync, mkdirSync, readdirSync, readFileSync } from 'node:fs';
import { join } from 'node:path';
import { benchTable } from './bench-table.mjs';
import { build } from './build.mjs';
import { installPackages, requireNode } from './packages.mjs';
import { projectFolder, runCommand } from './run-command.mjs';

/** Sizes of the short form, by bench; the profile comes last in either form. */
const shortSizes = {
  planner: { FLYLARDER_HOUSEHOLDS: '1-1' },
  'closed-loop': { FLYLARDER_HOUSEHOLDS: '1-1', FLYLARDER_WEEKS: '6' },
  learning: { FLYLARDER_HOUSEHOLDS: '6' },
  store: { FLYLARDER_BENCH_ENTRIES: '20000' },
  memory: { FLYLARDER_BENCH_ENTRIES: '20000', FLYLARDER_BENCH_CUPS: '100' },
};
const last = 'profile';

const asked = process.argv.slice(2).filter((word) => !word.startsWith('--'));
const options = process.argv.slice(2).filter((word) => word.startsWith('--'));
const folder = join(projectFolder, 'dist', 'bench');
const rowsFolder = join(folder, 'rows');

requireNode();
refuse(
  options.filter((word) => !['--short', '--table'].includes(word)),
  'option',
  ['--short', '--table'],
);
if (!options.includes('--table')) await measure();
tellTable();

async function measure() {
  await installPackages();
  await build();
  const all = benches();
  refuse(
    asked.filter((name) => !all.includes(name)),
    'bench',
    all,
  );
  mkdirSync(rowsFolder, { recursive: true });
  for (const name of all.filter((each) => asked.length === 0 || asked.includes(each))) await measureOne(name);
}

/** Names of the built benches. */
function benches() {
  const names = existsSync(folder) ? readdirSync(folder).filter((file) => file.endsWith('.js')) : [];
  return names.map((file) => file.slice(0, -3)).sort((a, b) => (a === last ? 1 : 0) - (b === last ? 1 : 0));
}

async function measureOne(name) {
  const began = Date.now();
  const env = options.includes('--short') ? (shortSizes[name] ?? {}) : {};
  const child = [join('scripts', 'run-bench.mjs'), join(folder, `${name}.js`), join(rowsFolder, `${name}.json`)];
  const { code } = await runCommand(process.execPath, child, { show: true, env });
  console.log(
    `${name}: ${code === 0 ? '' : `ended with exit code ${code}, `}${Math.round((Date.now() - began) / 1000)} s`,
  );
  if (code !== 0) process.exitCode = 1;
}

/** One table of the rows asked for: those just measured, or the last of every bench. */
function tellTable() {
  const kept = existsSync(rowsFolder) ? readdirSync(rowsFolder).map((file) => file.slice(0, -5)) : [];
  const shown = kept.filter((name) => asked.length === 0 || asked.includes(name));
  const ordered = shown.sort((a, b) => (a === last ? 1 : 0) - (b === last ? 1 : 0));
  console.log(benchTable(ordered.map((name) => JSON.parse(readFileSync(join(rowsFolder, `${name}.json`), 'utf8')))));
}

function refuse(unknown, what, known) {
  if (unknown.length === 0) return;
  console.error(`No ${what} named ${unknown.join(', ')}; there are: ${known.join(', ')}.`);
  process.exit(2);
}
