/** Serves the page and the HTTP interface, on this computer or its network, until it is told to stop. */
import { dirname, join } from 'node:path';
import { fileURLToPath } from 'node:url';
import { failed, ok, type Result } from '../../foundation/index.ts';
import { EntrySources, type ReadReceipts } from '../../store/receipts.ts';
import { dailyBackup } from '../../store/sqlite/index.ts';
import type { Store } from '../../store/store.ts';
import { type RunningServer, type ServerOptions, startServer } from '../../server/index.ts';
import type { Command } from '../command.ts';
import { type ExitStatus, exitStatus } from '../exit-status.ts';
import { databaseUrl, householdFolder, householdPlace, withStore } from '../household.ts';
import { cacheFolder } from '../household-command.ts';
import type { Options } from '../options.ts';
import { reckonerThread } from '../reckoner-thread.ts';
import { newEntryId, now, todayIn } from '../shell.ts';
import { stopAsked } from '../stop-asked.ts';
import { networkLines } from '../text/network-text.ts';
import { printLines } from '../text/print.ts';
import { flylarderVersion } from '../version.ts';

const usualPort = 4180;
const usualHttpsPort = 4443;
const hourMs = 3_600_000;
/** Ports tried after the usual one before any free one is taken. */
const nextPorts = 9;

export const command: Command = {
  usage: 'flylarder serve [OPTIONS]',
  about: `Serves the page and the HTTP interface (/api/v1) on this computer only, and
prints the address. Ctrl-C stops it. With --lan, paired devices of the home
network are let in too: over HTTP, and over HTTPS with a certificate made here.
With --accounts, people sign in to their household of a database.`,
  options: [
    'data',
    'database',
    'household',
    'port',
    'lan',
    'https-port',
    'public-url',
    'accounts',
    'listen',
    'metrics-port',
  ],
  mostWords: 0,
  run: serve,
};

async function serve({ options }: { options: Options }): Promise<Result<ExitStatus>> {
  if (options.accounts) {
    const { serveFacility } = await import('../serve-facility.ts');
    return serveFacility(
      options,
      { shell, version: flylarderVersion, webFolder: webFolder(), reckoner: () => reckonerThread(null) },
      stopAsked,
    );
  }
  const network = networkAsked(options);
  if (!network.ok) return network;
  const sources = new EntrySources();
  const serveStore = async (store: Store, receipts: ReadReceipts): Promise<Result<ExitStatus>> => {
    const kind = {
      store,
      sources,
      receipts,
      shell,
      version: flylarderVersion,
      webFolder: webFolder(),
      reckoner: () => reckonerThread(cacheFolder(options)),
      ...network.value,
      ...sensorFolder(options),
    };
    const server = await startOnPort(options.port, kind);
    if (!server.ok) return server;
    printLines([
      `Flylarder is at ${server.value.address}`,
      `Household: ${householdPlace(options)}`,
      ...(server.value.network ? networkLines(server.value.network) : []),
      'Ctrl-C stops it.',
    ]);
    // The first page that is opened finds the day worked out.
    setImmediate(() => void fetch(`${server.value.address}api/v1/today`).catch(() => {}));
    const backups = databaseUrl(options) === undefined ? keepDailyCopies(householdFolder(options)) : undefined;
    await stopAsked();
    clearInterval(backups);
    await server.value.stop();
    return ok(exitStatus.done);
  };
  return withStore(options, serveStore, sources);
}

/** Sensors are registered in the household's folder. */
function sensorFolder(options: Options): Pick<ServerOptions, 'sensorFolder'> {
  return databaseUrl(options) === undefined ? { sensorFolder: householdFolder(options) } : {};
}

/** What `startServer` is given when the network was asked for. */
function networkAsked(options: Options): Result<Pick<ServerOptions, 'network'>> {
  const publicUrl = options['public-url'];
  if (!options.lan && publicUrl === undefined) return ok({});
  if (databaseUrl(options) !== undefined) {
    const expected = 'a folder: devices are paired with the household of a folder';
    return failed({ where: '--lan', found: 'a database', expected });
  }
  const folder = householdFolder(options);
  const httpsPort = options['https-port'] ?? usualHttpsPort;
  const onlyProxy = !options.lan;
  return ok({ network: { folder, httpsPort, onlyProxy, ...(publicUrl === undefined ? {} : { publicUrl }) } });
}

const shell = { todayIn, now, newEntryId };

/** The page is built beside the program. */
function webFolder(): string {
  return join(dirname(fileURLToPath(import.meta.url)), '..', 'web');
}

/** The port asked for, or the usual one and then others while those are taken. */
async function startOnPort(
  asked: number | undefined,
  options: Omit<ServerOptions, 'port'>,
): Promise<Result<RunningServer>> {
  const usual = Array.from({ length: 1 + nextPorts }, (_, i) => usualPort + i);
  for (const port of asked === undefined ? [...usual, 0] : [asked]) {
    const server = await startServer({ ...options, port }).catch((error: NodeJS.ErrnoException) => {
      if (error.code === 'EADDRINUSE' || error.code === 'EACCES') return null;
      throw error;
    });
    if (server) return ok(server);
  }
  const expected = 'a free port that this user may open; --port 0 takes any';
  const found = `${asked ?? usualPort}${options.network ? ` or ${options.network.httpsPort}` : ''}, which cannot be opened`;
  return failed({ where: options.network ? '--port or --https-port' : '--port', found, expected });
}

/** The day's copy, now and whenever a new day has begun. A copy that fails is said, and nothing else stops. */
function keepDailyCopies(folder: string): NodeJS.Timeout {
  const copy = () => {
    try {
      dailyBackup(folder, todayIn('UTC'));
    } catch (error) {
      console.error(`The daily copy failed: ${error instanceof Error ? error.message : error}`);
    }
  };
  copy();
  return setInterval(copy, hourMs);
}
