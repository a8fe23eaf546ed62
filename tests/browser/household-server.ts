/** A household of its own for every test: the built program on an empty folder and a free port. */
import { type ChildProcess, spawn } from 'node:child_process';
import { mkdtempSync, rmSync } from 'node:fs';
import { tmpdir } from 'node:os';
import { join } from 'node:path';
import { test as base } from '@playwright/test';

export const test = base.extend({
  // Playwright reads from this pattern which other fixtures are needed.
  baseURL: async ({ browserName: _ }, use) => {
    const household = mkdtempSync(join(tmpdir(), 'flylarder-browser-'));
    const program = spawn(process.execPath, ['bin/flylarder.mjs', 'serve', '--data', household, '--port', '0']);
    try {
      await use(await addressOf(program));
    } finally {
      const ended = new Promise((resolve) => program.once('exit', resolve));
      program.kill('SIGINT');
      await ended;
      rmSync(household, { recursive: true, force: true });
    }
  },
});

/** The address that the program prints when it listens. */
function addressOf(program: ChildProcess): Promise<string> {
  return new Promise((resolve, reject) => {
    let said = '';
    const listen = (part: Buffer): void => {
      said += part;
      const address = /http:\/\/\S+/.exec(said)?.[0];
      if (address) resolve(address);
    };
    program.stdout?.on('data', listen);
    program.stderr?.on('data', listen);
    program.once('exit', (code) => reject(new Error(`serve ended with ${code}: ${said}`)));
  });
}
