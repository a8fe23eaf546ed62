/** The application on a store in memory, with a page of two files, for tests. */
import { mkdirSync, mkdtempSync, rmSync, writeFileSync } from 'node:fs';
import { tmpdir } from 'node:os';
import { join } from 'node:path';
import { day } from '../foundation/index.ts';
import { entryIdMaker } from '../logbook/index.ts';
import { openMemoryStore } from '../store/memory/index.ts';
import { application } from './application.ts';
import { LiveHousehold } from './live-household.ts';

export const webFolder = mkdtempSync(join(tmpdir(), 'flylarder-web-'));
mkdirSync(join(webFolder, 'assets'));
writeFileSync(join(webFolder, 'index.html'), '<!doctype html><title>Flylarder</title>');
writeFileSync(join(webFolder, 'assets', 'a-1234.js'), 'export {};');

export function removePage(): void {
  rmSync(webFolder, { recursive: true, force: true });
}

let time = 0;
export const shell = {
  todayIn: () => day('2026-11-25'),
  now: () => '2026-11-25T12:00:00.000Z',
  newEntryId: entryIdMaker({ now: () => ++time, randomBytes: (n) => new Uint8Array(n) }),
};

export interface ApplicationUnderTest {
  household: LiveHousehold;
  /** As a browser on this computer sends it. */
  request(path: string, init?: RequestInit): Promise<Response>;
}

export async function applicationUnderTest(): Promise<ApplicationUnderTest> {
  const household = await LiveHousehold.open(openMemoryStore());
  const app = application(household, { shell, version: '0.0.0', webFolder });
  return {
    household,
    request: async (path, init = {}) => {
      const headers = { host: 'localhost:4180', ...(init.headers as Record<string, string>) };
      return app.request(path, { ...init, headers }, {});
    },
  };
}
