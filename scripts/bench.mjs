/**
 * `npm run bench [name ...]`: builds, runs the benches one after another and prints one table. Each
 * figure stands beside the same work done by a named baseline in the same run, and their ratio.
 */
import { existsSync, readdirSync } from 'node:fs';
import { join } from 'node:path';
import { pathToFileURL } from 'node:url';
import { build } from './build.mjs';
import { installPackages, requireNode } from './packages.mjs';
import { projectFolder } from './run-command.mjs';

requireNode();
await installPackages();
await build();

const folder = join(projectFolder, 'dist', 'bench');
const all = existsSync(folder) ? readdirSync(folder).filter((file) => file.endsWith('.js')) : [];
const asked = process.argv.slice(2);
const unknown = asked.filter((name) => !all.includes(`${name}.js`));
if (unknown.length > 0) {
  console.error(`No bench named ${unknown.join(', ')}; there are: ${all.map((file) => file.slice(0, -3)).join(', ')}.`);
  process.exit(2);
}

for (const file of all.filter((name) => asked.length === 0 || asked.includes(name.slice(0, -3)))) {
  const bench = await import(pathToFileURL(join(folder, file)).href);
  if (typeof bench.run === 'function') print(await bench.run());
}

function print({ title, rows }) {
  const head = ['what', 'figure', 'baseline', 'ratio', 'target'];
  const lines = [head, ...rows.map((row) => head.map((key) => cell(row[key])))];
  const widths = head.map((_, i) => Math.max(...lines.map((line) => line[i].length)));
  console.log(`\n${title}`);
  for (const [i, line] of lines.entries()) {
    console.log(
      line
        .map((text, column) => text.padEnd(widths[column]))
        .join('  ')
        .trimEnd(),
    );
    if (i === 0) console.log(widths.map((width) => '-'.repeat(width)).join('  '));
  }
}

/** Numbers to three figures; text as it is. */
function cell(value) {
  if (value === undefined || value === null) return '';
  return typeof value === 'number' ? String(Number(value.toPrecision(3))) : String(value);
}
