/** A worker of a facility: works the households' answers out before anyone asks. */
import { failed, ok, type Result } from '../../foundation/index.ts';
import { startWatchedWorker } from '../../server/index.ts';
import type { Command, CommandInput } from '../command.ts';
import { type ExitStatus, exitStatus } from '../exit-status.ts';
import { databaseUrl } from '../household.ts';
import { reckonerThread } from '../reckoner-thread.ts';
import { newEntryId, now, todayIn } from '../shell.ts';
import { stopAsked } from '../stop-asked.ts';
import { printLines } from '../text/print.ts';
import { flylarderVersion } from '../version.ts';

export const command: Command = {
  usage: 'flylarder work [OPTIONS]',
  about: `Works for the processes of \`serve --accounts\` on the same database: when a
logbook has grown, and when a household's day begins, it learns anew and works
out the day, the forecast, the plan and with it the calendar, so that they are
there when someone asks. Any number may run, on any computers; Ctrl-C ends it
after the job under way. Each job is one JSON object on standard error.`,
  options: ['database', 'listen', 'metrics-port'],
  mostWords: 0,
  run: work,
};

async function work({ options }: CommandInput): Promise<Result<ExitStatus>> {
  const url = databaseUrl(options);
  if (url === undefined) {
    return failed({ where: 'work', found: 'no database', expected: '--database URL, or DATABASE_URL' });
  }
  const { openPostgres } = await import('../../store/postgres/index.ts');
  const logbooks = await openPostgres(url, { connections: 4 });
  try {
    const { 'metrics-port': metricsPort, listen: listenAddress = '127.0.0.1' } = options;
    const worker = await startWatchedWorker({
      logbooks,
      databaseUrl: url,
      shell: { todayIn, now, newEntryId },
      version: flylarderVersion,
      reckoner: () => reckonerThread(null),
      log: (line) => console.error(JSON.stringify(line)),
      listenAddress,
      ...(metricsPort !== undefined && { metricsPort }),
    }).catch((error: NodeJS.ErrnoException) => {
      if (error.code === 'EADDRINUSE' || error.code === 'EACCES' || error.code === 'EADDRNOTAVAIL') return null;
      throw error;
    });
    if (!worker) {
      const found = `${listenAddress}, port ${metricsPort}, which cannot be opened`;
      return failed({ where: '--metrics-port', found, expected: 'a free port' });
    }
    const watched = worker.metricsPort === null ? '' : ` Metrics: port ${worker.metricsPort}, /metrics and /healthz.`;
    printLines([`Working.${watched} Ctrl-C stops it.`]);
    await stopAsked();
    await worker.stop();
    return ok(exitStatus.done);
  } finally {
    await logbooks.close();
  }
}
