/** A password from the keyboard without showing it, or the first line of a standard input that is none. */
import { createInterface } from 'node:readline/promises';
import { Writable } from 'node:stream';

export async function askedSecret(question: string): Promise<string> {
  const { stdin } = process;
  if (stdin.isTTY) process.stderr.write(question);
  const silent = new Writable({ write: (_, __, done) => done() });
  const lines = createInterface({ input: stdin, output: silent, terminal: stdin.isTTY === true });
  try {
    for await (const line of lines) return line;
    return '';
  } finally {
    lines.close();
    if (stdin.isTTY) process.stderr.write('\n');
  }
}
