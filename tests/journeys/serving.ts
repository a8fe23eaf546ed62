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
  const started = await start(folder, ['serve', ...args], /http:\/\/localhost:\d+\//);
  const address = (/http:\/\/localhost:\d+\//.exec(started.printed()) as RegExpExecArray)[0];
  return { address, ...started };
}

/** Runs the program until it is ended; resolves when it has printed that it is ready. */
export async function start(folder: string, args: string[], ready: RegExp): Promise<Omit<Serving, 'address'>> {
  const child = spawn(process.execPath, [program, ...args], { cwd: folder, stdio: ['ignore', 'pipe', 'pipe'] });
  running.add(child);
  let printed = '';
  for (const stream of [child.stdout, child.stderr]) stream.setEncoding('utf8').on('data', (text) => (printed += text));
  while (!ready.test(printed)) {
    if (child.exitCode !== null) throw new Error(`${args[0]} ended with ${child.exitCode}: ${printed}`);
    await Promise.race([once(child.stdout, 'data'), once(child, 'exit')]);
  }
  return { process: child, printed: () => printed };
}

/** Ends the server with a signal; resolves to its exit code, null when the signal killed it. */
export async function end(
  { process: child }: Pick<Serving, 'process'>,
  signal: NodeJS.Signals,
): Promise<number | null> {
  const exited = once(child, 'exit');
  child.kill(signal);
  return (await exited)[0] as number | null;
}
