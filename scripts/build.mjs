/**
 * Builds dist/ when a source is newer than it: the command line and benches by Vite for Node, the page
 * by Vite for the browser. `--force` builds anyway.
 */
import { existsSync, readdirSync, rmSync, statSync, utimesSync, writeFileSync } from 'node:fs';
import { join } from 'node:path';
import { pathToFileURL } from 'node:url';
import { installPackages } from './packages.mjs';
import { projectFolder, runCommand } from './run-command.mjs';

const inProject = (path) => join(projectFolder, path);
const nodeSources = ['src', 'data', 'bench', 'vite.node.config.ts', 'vite.licences.ts', 'package-lock.json'];
const webSources = ['src', 'data', 'vite.web.config.ts', 'vite.licences.ts', 'package-lock.json'];

/** Builds what is stale. Ends the program with the builder's own words when a build fails. */
export async function build({ force = false } = {}) {
  await buildPart('the command line', 'vite.node.config.ts', 'dist/node.built', nodeSources, force, () => {
    for (const stale of ['dist/chunks', 'dist/bench']) rmSync(inProject(stale), { recursive: true, force: true });
  });
  if (existsSync(inProject('vite.web.config.ts'))) {
    await buildPart('the page', 'vite.web.config.ts', 'dist/web.built', webSources, force, () => {});
  }
}

async function buildPart(name, config, stamp, sources, force, clear) {
  const startedAt = new Date();
  if (!force && !isStale(stamp, sources)) return;
  console.log(`Building ${name} ...`);
  clear();
  const { code, output } = await runCommand('vite', ['build', '--config', config, '--logLevel', 'warn']);
  if (code !== 0) {
    console.error(output);
    console.error(`Building ${name} failed (vite build --config ${config}).`);
    process.exit(3);
  }
  // The stamp carries the time the build began: a source saved meanwhile is newer.
  writeFileSync(inProject(stamp), '');
  utimesSync(inProject(stamp), startedAt, startedAt);
}

function isStale(stamp, sources) {
  if (!existsSync(inProject(stamp))) return true;
  const builtAt = statSync(inProject(stamp)).mtimeMs;
  return sources.some((source) => existsSync(inProject(source)) && newestChange(inProject(source)) > builtAt);
}

/** The latest change of a file or of anything in a folder, its own entry list included. */
function newestChange(path) {
  const state = statSync(path);
  if (!state.isDirectory()) return path.endsWith('.test.ts') ? 0 : state.mtimeMs;
  return readdirSync(path).reduce((latest, entry) => Math.max(latest, newestChange(join(path, entry))), state.mtimeMs);
}

if (import.meta.url === pathToFileURL(process.argv[1]).href) {
  await installPackages();
  await build({ force: process.argv.includes('--force') });
}
