/** A facility's server: several households on one PostgreSQL, people with accounts. */
import type { FacilityOptions } from './facility/facility.ts';
import type { WorkerOptions } from './facility/workers/worker.ts';
import { type Listener, listen } from './listening.ts';

export interface FacilityServerOptions extends FacilityOptions {
  /** Such as 127.0.0.1, or 0.0.0.0 in a container. */
  listenAddress: string;
  /** 0 takes any free port. */
  port: number;
  /** Port of /metrics and /healthz on the same address; none when left out. */
  metricsPort?: number;
}

export interface RunningFacility {
  port: number;
  metricsPort: number | null;
  stop(): Promise<void>;
}

/** Rejects with the system's error when a port is taken. What is native is loaded only here. */
export async function startFacility(options: FacilityServerOptions): Promise<RunningFacility> {
  // What reads certificates demands this of the language before its own first line runs.
  await import('reflect-metadata');
  const { facilityApplication } = await import('./facility/facility-application.ts');
  const { app, watch, hear, close } = facilityApplication(options);
  await hear();
  const address = options.listenAddress;
  const main = await listen(app, { address, port: options.port });
  const others: Listener[] = [];
  const stop = async () => {
    await close();
    await Promise.all([main, ...others].map((each) => each.close()));
  };
  try {
    if (options.metricsPort !== undefined) others.push(await listen(watch, { address, port: options.metricsPort }));
  } catch (error) {
    await stop();
    throw error;
  }
  return { port: main.port, metricsPort: others[0]?.port ?? null, stop };
}

export interface WorkerServerOptions extends WorkerOptions {
  listenAddress: string;
  /** Port of /metrics and /healthz; none when left out. */
  metricsPort?: number;
}

export interface RunningWorker {
  metricsPort: number | null;
  stop(): Promise<void>;
}

/** A worker, watched on a port of its own. Rejects with the system's error when that is taken. */
export async function startWatchedWorker(options: WorkerServerOptions): Promise<RunningWorker> {
  const { startWorker } = await import('./facility/workers/worker.ts');
  const { workerWatch } = await import('./facility/watch.ts');
  const worker = await startWorker(options);
  const { listenAddress: address, metricsPort: port } = options;
  try {
    const watch = port === undefined ? null : await listen(workerWatch(worker), { address, port });
    const stop = async () => {
      await worker.stop();
      await watch?.close();
    };
    return { metricsPort: watch?.port ?? null, stop };
  } catch (error) {
    await worker.stop();
    throw error;
  }
}

/** A password as it is kept: argon2id. */
export async function hashedPassword(password: string): Promise<string> {
  return (await import('./facility/password.ts')).hashPassword(password);
}

export const leastPasswordLength = 10;
