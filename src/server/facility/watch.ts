/** /healthz and /metrics, for a port that strangers do not reach. */
import { Hono } from 'hono';
import { fault } from '../application.ts';
import type { Facility } from './facility.ts';
import type { Metrics } from './metrics.ts';
import { openMetricsType } from './open-metrics.ts';
import type { Worker } from './workers/worker.ts';

/** Of a process that answers people. */
export function facilityWatch({ accounts }: Facility, metrics: Metrics): Hono {
  return watch(
    async () => void (await accounts.session('0')),
    async () => metrics.text(),
  );
}

/** Of a worker; it is well when it can see its queue. */
export function workerWatch(worker: Worker): Hono {
  return watch(async () => void (await worker.metrics()), worker.metrics);
}

function watch(demandHealth: () => Promise<void>, metrics: () => Promise<string>): Hono {
  const app = new Hono();
  app.onError(fault);
  app.get('/healthz', async (c) => {
    await demandHealth();
    return c.json({ status: 'ok' });
  });
  app.get('/metrics', async (c) => c.body(await metrics(), 200, { 'Content-Type': openMetricsType }));
  return app;
}
