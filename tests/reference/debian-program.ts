/** Programs that the checks need from Debian: installed when they are missing and that is allowed, else a clear failure. */
import { spawnSync } from 'node:child_process';

/** Runs `probe`; when it fails, installs `packageName` (as root) and tries again. Throws when it stays missing. */
export function needsDebian(packageName: string, probe: readonly [string, ...string[]]): void {
  if (!hasDebian(packageName, probe)) {
    throw new Error(`This check needs Debian's ${packageName}: sudo apt-get install ${packageName}`);
  }
}

/** Whether `probe` runs, after installing `packageName` where that is needed and allowed. */
export function hasDebian(packageName: string, probe: readonly [string, ...string[]]): boolean {
  if (works(probe)) return true;
  if (process.getuid?.() === 0) {
    const options = { env: { ...process.env, DEBIAN_FRONTEND: 'noninteractive' }, timeout: 240_000 };
    spawnSync('apt-get', ['install', '-q', '-y', '--no-install-recommends', packageName], options);
    if (works(probe)) return true;
    spawnSync('apt-get', ['update', '-q'], options);
    spawnSync('apt-get', ['install', '-q', '-y', '--no-install-recommends', packageName], options);
  }
  return works(probe);
}

function works([command, ...args]: readonly [string, ...string[]]): boolean {
  return spawnSync(command, args, { stdio: 'ignore' }).status === 0;
}
