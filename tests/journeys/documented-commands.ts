/** The commands that the pages print for a keeper to type, and how they are run. */
import { spawnSync } from 'node:child_process';
import { readFileSync } from 'node:fs';
import { join } from 'node:path';
import { fileURLToPath } from 'node:url';
import { type Outcome, program } from './command-line.ts';

const project = fileURLToPath(new URL('../..', import.meta.url));

/** The commands of a page's blocks marked `sh`, in order; a line that ends in a backslash goes on in the next. */
export function commandsOf(page: string): string[] {
  const blocks = readFileSync(join(project, page), 'utf8').matchAll(/^```sh\n(.*?)^```/gms);
  return [...blocks].flatMap(([, block]) =>
    (block as string)
      .replaceAll('\\\n', ' ')
      .split('\n')
      .filter((line) => line.trim() !== '' && !line.startsWith('#')),
  );
}

/** Runs a printed command by the shell in `folder`, with the built program in place of `npx flylarder`. */
export function runPrinted(folder: string, command: string): Outcome {
  const { FLYLARDER_DATA: _, DATABASE_URL: __, ...env } = process.env;
  const line = command.replace(/^npx flylarder/, `'${process.execPath}' '${program}'`);
  const done = spawnSync('sh', ['-c', line], { cwd: folder, env, encoding: 'utf8', input: '', maxBuffer: 1 << 28 });
  return { status: done.status, out: done.stdout, err: done.stderr };
}
