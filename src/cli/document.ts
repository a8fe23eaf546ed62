/** A document for a printer or another program: to a file, or to standard output. */
import { writeFile } from 'node:fs/promises';
import { failed, ok, type Result } from '../foundation/index.ts';
import { type ExitStatus, exitStatus } from './exit-status.ts';
import { fileFault } from './file-fault.ts';
import type { Options } from './options.ts';
import { printLines } from './text/print.ts';

/** `what` names it when it was written to a file. */
export async function writeDocument(text: string, what: string, { out }: Options): Promise<Result<ExitStatus>> {
  if (out === undefined) {
    process.stdout.write(text.endsWith('\n') ? text : `${text}\n`);
    return ok(exitStatus.done);
  }
  try {
    await writeFile(out, text);
  } catch (error) {
    return failed({ where: '--out', found: `${out}: ${fileFault(error)}`, expected: 'a file that can be written' });
  }
  printLines([`${what} written to ${out}`]);
  return ok(exitStatus.done);
}
