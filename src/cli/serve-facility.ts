/** `serve --accounts`: people sign in, each to their household of one database. */
import type { Worker } from 'node:worker_threads';
import { failed, ok, type Result } from '../foundation/index.ts';
import { startFacility } from '../server/index.ts';
import { openPostgres } from '../store/postgres/index.ts';
import { type ExitStatus, exitStatus } from './exit-status.ts';
import { databaseUrl } from './household.ts';
import type { Options } from './options.ts';
import { newEntryId, now, todayIn } from './shell.ts';
import { printLines } from './text/print.ts';

interface Program {
  shell: { todayIn: typeof todayIn; now: typeof now; newEntryId: typeof newEntryId };
  version: string;
  webFolder: string;
  reckoner: () => Worker;
}

const usualPort = 4180;

/** @param stopAsked resolves when the server is to stop. */
export async function serveFacility(
  options: Options,
  program: Program,
  stopAsked: () => Promise<void>,
): Promise<Result<ExitStatus>> {
  const url = databaseUrl(options);
  if (url === undefined) {
    return failed({ where: '--accounts', found: 'no database', expected: '--database URL, or DATABASE_URL' });
  }
  const logbooks = await openPostgres(url);
  try {
    const { 'public-url': publicUrl, 'metrics-port': metricsPort, listen, port = usualPort } = options;
    const facility = await startFacility({
      ...program,
      logbooks,
      listenAddress: listen ?? '127.0.0.1',
      port,
      log: (line) => console.error(JSON.stringify(line)),
      ...(publicUrl !== undefined && { publicUrl }),
      ...(metricsPort !== undefined && { metricsPort }),
    }).catch((error: NodeJS.ErrnoException) => {
      if (error.code === 'EADDRINUSE' || error.code === 'EACCES' || error.code === 'EADDRNOTAVAIL') return null;
      throw error;
    });
    if (!facility) {
      const found = `${listen ?? '127.0.0.1'}, port ${port}${metricsPort === undefined ? '' : ` or ${metricsPort}`}`;
      return failed({ where: 'serve', found: `${found}, which cannot be opened`, expected: 'a free port' });
    }
    printLines([
      `Flylarder is at http://localhost:${facility.port}/`,
      ...(facility.metricsPort === null ? [] : [`Metrics: port ${facility.metricsPort}, /metrics and /healthz`]),
      'People sign in; `flylarder accounts` lists them. Ctrl-C stops it.',
    ]);
    await stopAsked();
    await facility.stop();
    return ok(exitStatus.done);
  } finally {
    await logbooks.close();
  }
}
