/** A household's server: on the loopback address, or on the home network too. */
import type { Store } from '../store/store.ts';
import { isPrivate, localName, networkAddresses } from './access/local-names.ts';
import { type Network, network, type NetworkOptions } from './access/network.ts';
import { application, type ApplicationOptions } from './application.ts';
import { LiveHousehold } from './live-household.ts';
import { type Listener, listen } from './listening.ts';
import { ReckonerThreads } from './reckoning/reckoner-threads.ts';
import { LiveSensors } from './sensors/live-sensors.ts';

export interface ServerOptions extends ApplicationOptions {
  store: Store;
  /** 0 takes any free port. */
  port: number;
  /** Opens the household to paired devices of the network. */
  network?: NetworkOptions & {
    httpsPort: number;
    /** A proxy on this computer is the only way in: no other address is opened. */
    onlyProxy: boolean;
  };
  /** The household's folder, where sensors are registered; without it none are heard. */
  sensorFolder?: string;
}

export interface RunningServer {
  /** Such as http://localhost:4180/ */
  address: string;
  /** Present when it is open to the network. */
  network: Network | null;
  /** Ends open connections and resolves when none is left. The store stays open. */
  stop(): Promise<void>;
}

const loopback = '127.0.0.1';
const everyAddress = '0.0.0.0';

/** Rejects with the system's error when a port is taken. */
export async function startServer(options: ServerOptions): Promise<RunningServer> {
  const reckoners = options.reckoner && new ReckonerThreads(options.reckoner);
  const household = await LiveHousehold.open(options.store, reckoners && { reckoners });
  const sensors = options.sensorFolder === undefined ? null : await sensorsOf(options.sensorFolder, household, options);
  const open = options.network && network(options.network, options.shell);
  const app = application(household, sensors ? { ...options, sensors } : options, open);
  const listeners = [
    await listen(app, { address: open && !options.network?.onlyProxy ? everyAddress : loopback, port: options.port }),
  ];
  const stop = async () => {
    await sensors?.stop();
    await household.close();
    await reckoners?.stop();
    await Promise.all(listeners.map((each) => each.close()));
  };
  const { port } = listeners[0] as Listener;
  if (open && options.network) {
    try {
      const secure = await openSecurely(app, open, options.network.httpsPort);
      if (secure) listeners.push(secure);
    } catch (error) {
      await stop();
      throw error;
    }
    open.addresses.http = [...networkAddresses(), localName()].map((name) => `http://${name}:${port}/`);
  }
  return { address: `http://localhost:${port}/`, network: open ?? null, stop };
}

async function sensorsOf(folder: string, household: LiveHousehold, { shell }: ServerOptions): Promise<LiveSensors> {
  const sensors = new LiveSensors(folder, household, shell);
  await sensors.start();
  return sensors;
}

/** HTTPS under the household's own certificate; not behind a proxy, which brings one of its own. */
async function openSecurely(
  app: ReturnType<typeof application>,
  { folder, publicUrl, shell, addresses }: Network,
  port: number,
): Promise<Listener | null> {
  if (publicUrl !== undefined) return null;
  // The maker of certificates is loaded only where one is needed.
  // It demands this of the language before its own first line runs.
  await import('reflect-metadata');
  const { localCertificate } = await import('./access/local-certificate.ts');
  // The authority vouches for home networks only: one foreign name would spoil the whole certificate.
  const reached = [...networkAddresses().filter(isPrivate), localName()];
  const certificate = await localCertificate(folder, ['localhost', loopback, ...reached], Date.parse(shell.now()));
  const listener = await listen(app, { address: everyAddress, port, certificate });
  addresses.https = reached.map((name) => `https://${name}:${listener.port}/`);
  addresses.authority = { pem: certificate.authority, fingerprint: certificate.fingerprint };
  return listener;
}
