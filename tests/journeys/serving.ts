/** Starts the built server in a folder of its own and stops it, or kills it. */
import { type ChildProcess, spawn } from 'node:child_process';
import { once } from 'node:events';
import { afterEach } from 'vitest';
import { program } from './command-line.ts';

export interface Serving {
  address: string;
  process: ChildProcess;
  /** What it has printed so far. */
  printed(): string;
}

const running = new Set<ChildProcess>();

/** A test that failed half-way leaves no server behind. */
afterEach(() => {
  for (const child of running) child.kill('SIGKILL');
  running.clear();
});

/** Resolves when the server has printed its address. */
export async function serve(folder: string, args: string[] = ['--port', '0']): Promise<Serving> {
  const child = spawn(process.execPath, [program, 'serve', ...args], {
    cwd: folder,
    stdio: ['ignore', 'pipe', 'pipe'],
  });
  running.add(child);
  let printed = '';
  for (const stream of [child.stdout, child.stderr]) stream.setEncoding('utf8').on('data', (text) => (printed += text));
  while (!/http:\/\/localhost:\d+\//.test(printed)) {
    if (child.exitCode !== null) throw new Error(`serve ended with ${child.exitCode}: ${printed}`);
    await Promise.race([once(child.stdout, 'data'), once(child, 'exit')]);
  }
  const address = (/http:\/\/localhost:\d+\//.exec(printed) as RegExpExecArray)[0];
  return { address, process: child, printed: () => printed };
}

/** Ends the server with a signal; resolves to its exit code, null when the signal killed it. */
export async function end({ process: child }: Serving, signal: NodeJS.Signals): Promise<number | null> {
  const exited = once(child, 'exit');
  child.kill(signal);
  return (await exited)[0] as number | null;
}
