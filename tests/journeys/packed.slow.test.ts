import { spawnSync } from 'node:child_process';
import { readdirSync } from 'node:fs';
import { join } from 'node:path';
import { fileURLToPath } from 'node:url';
import { describe, expect, it } from 'vitest';
import { emptyFolder } from './command-line.ts';

const project = fileURLToPath(new URL('../..', import.meta.url));
const quiet = ['--no-audit', '--no-fund', '--loglevel=error'];

function run(folder: string, command: string, ...args: string[]) {
  const { FLYLARDER_DATA: _, DATABASE_URL: __, ...env } = process.env;
  return spawnSync(command, args, { cwd: folder, encoding: 'utf8', env });
}

describe('the packed tarball', () => {
  it('runs in an empty folder, and brings nothing but the program and its page', () => {
    const folder = emptyFolder();
    const packed = run(project, 'npm', 'pack', '--ignore-scripts', '--pack-destination', folder, ...quiet);
    expect(packed.status, packed.stderr).toBe(0);
    const tarball = readdirSync(folder).find((file) => file.endsWith('.tgz')) as string;
    const installed = run(folder, 'npm', 'install', '--prefix', folder, ...quiet, join(folder, tarball));
    expect(installed.status, installed.stderr).toBe(0);
    const files = readdirSync(join(folder, 'node_modules', 'flylarder'));
    expect(files.sort()).toEqual(expect.arrayContaining(['LICENSE', 'README.md', 'bin', 'dist', 'package.json']));
    expect(files).not.toContain('src');
    expect(readdirSync(join(folder, 'node_modules', 'flylarder', 'dist'))).toEqual(
      expect.arrayContaining(['cli.js', 'chunks', 'web']),
    );
    expect(run(folder, 'npx', 'flylarder', 'demo').status).toBe(0);
    const today = run(folder, 'npx', 'flylarder', 'today');
    expect([0, 1]).toContain(today.status);
    expect(today.stdout).toMatch(/flies wanted today/);
  });
});
