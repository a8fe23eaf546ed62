/** Runs the built command line as a keeper would, in a folder of its own. */
import { spawnSync } from 'node:child_process';
import { existsSync, mkdtempSync, rmSync } from 'node:fs';
import { tmpdir } from 'node:os';
import { join } from 'node:path';
import { fileURLToPath } from 'node:url';
import { afterAll, afterEach } from 'vitest';

export const program = fileURLToPath(new URL('../../bin/flylarder.mjs', import.meta.url));

if (!existsSync(fileURLToPath(new URL('../../dist/cli.js', import.meta.url)))) {
  throw new Error('The journeys run the built program: npm run build');
}

export interface Outcome {
  status: number | null;
  out: string;
  err: string;
}

const folders: string[] = [];

/** An empty folder that is removed after the test. */
export function emptyFolder(): string {
  const folder = mkdtempSync(join(tmpdir(), 'flylarder-journey-'));
  folders.push(folder);
  return folder;
}

/** An empty folder for all tests of a file, which only read what the first of them made. */
export function folderOfFile(): string {
  const folder = mkdtempSync(join(tmpdir(), 'flylarder-journey-'));
  afterAll(() => rmSync(folder, { recursive: true, force: true }));
  return folder;
}

afterEach(() => {
  for (const folder of folders.splice(0)) rmSync(folder, { recursive: true, force: true });
});

/** Runs `flylarder ARGS` in `folder`, with `input` on its standard input. */
export function flylarder(folder: string, args: string[], input: string | Buffer = ''): Outcome {
  const { FLYLARDER_DATA: _, DATABASE_URL: __, ...env } = process.env;
  const done = spawnSync(process.execPath, [program, ...args], {
    cwd: folder,
    input,
    env: { ...env, TZ: 'UTC' },
    encoding: 'utf8',
    maxBuffer: 1 << 28,
  });
  return { status: done.status, out: done.stdout, err: done.stderr };
}
