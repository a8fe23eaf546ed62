/** Folders for tests, removed after each test; and waiting until closed databases are let go. */
import { setFlagsFromString } from 'node:v8';
import { runInNewContext } from 'node:vm';
import { mkdtempSync, rmSync } from 'node:fs';
import { tmpdir } from 'node:os';
import { join } from 'node:path';
import { afterEach } from 'vitest';

const folders: string[] = [];

export function temporaryFolder(): string {
  const made = mkdtempSync(join(tmpdir(), 'logbook-'));
  folders.push(made);
  return made;
}

afterEach(() => {
  for (const made of folders.splice(0)) rmSync(made, { recursive: true, force: true });
});

/** The driver lets go of a closed database when its last statement is collected, a little later. */
export async function collectGarbage(): Promise<void> {
  setFlagsFromString('--expose-gc');
  (runInNewContext('gc') as () => void)();
  await new Promise((done) => setTimeout(done, 50));
}
