/** The application apart from its port: who may ask, the API, the page. */
import type { Worker } from 'node:worker_threads';
import { type Context, Hono, type MiddlewareHandler } from 'hono';
import { HTTPException } from 'hono/http-exception';
import type { EntrySources, ReadReceipts } from '../store/receipts.ts';
import { StoreFault } from '../store/store.ts';
import { deviceAccess } from './access/device-access.ts';
import { loopbackAccess } from './access/loopback-access.ts';
import { type Network, networkNames } from './access/network.ts';
import { pairingPages } from './access/pairing-pages.ts';
import { api } from './api.ts';
import type { ApiContext } from './api-context.ts';
import type { LiveHousehold } from './live-household.ts';
import { problemResponse } from './problem-answer.ts';
import { ReckoningFault } from './reckoning/reckoner-thread.ts';
import { type KnownNames, loopbackOnly, requestGuard } from './request-guard.ts';
import type { LiveSensors } from './sensors/live-sensors.ts';
import { securityHeaders } from './security-headers.ts';
import type { Shell } from './shell.ts';
import { staticFiles } from './static-files.ts';

export interface ApplicationOptions {
  shell: Shell;
  version: string;
  /** The folder with the built page. */
  webFolder: string;
  /** Who sends what, told to the store while it keeps it. */
  sources?: EntrySources;
  /** Who recorded what, as the store has it. */
  receipts?: ReadReceipts;
  /** Starts a thread that runs `reckonFor`; left out, answers are reckoned in the thread that serves requests. */
  reckoner?: () => Worker;
  /** Where sensors' readings go; without it none are taken. */
  sensors?: LiveSensors;
}

/** @param network where paired devices are let in too; without it, only this computer's own user is. */
export function application(household: LiveHousehold, options: ApplicationOptions, network?: Network): Hono {
  const app = guarded(network ? networkNames(network) : loopbackOnly, network ? deviceAccess(network) : loopbackAccess);
  if (network) app.route('/network', pairingPages(network, options.receipts));
  addHousehold(app, household, options);
  return app;
}

/** An application that answers with faults alone until routes are added. */
export function guarded(names: KnownNames, access: MiddlewareHandler, ...first: MiddlewareHandler[]): Hono {
  const app = new Hono();
  app.onError(fault);
  app.use(...first, securityHeaders, requestGuard(names));
  app.use(async (context, next) => (context.req.path.startsWith('/network/') ? next() : access(context, next)));
  return app;
}

/** The household's API, and the page for everything else. */
export function addHousehold(
  app: Hono,
  household: LiveHousehold,
  options: ApplicationOptions & Pick<ApiContext, 'accountPage'>,
): void {
  const { shell, version, sensors = null, sources, receipts, accountPage } = options;
  const given = {
    ...(sources && { sources }),
    ...(receipts && { receipts }),
    ...(accountPage !== undefined && { accountPage }),
  };
  app.route('/api/v1', api({ household, shell, version, sensors, ...given }));
  app.all('/api/*', noSuchRoute);
  app.get('*', staticFiles(options.webFolder));
}

export function noSuchRoute(context: Context): Response {
  return problemResponse(context, 404, [
    {
      where: `${context.req.method} ${context.req.path}`,
      found: 'no such route',
      expected: 'a route of /api/v1/openapi.json',
    },
  ]);
}

/** A fault is said without its insides; those go to the log of this process. */
export function fault(error: Error, context: Context): Response {
  if (error instanceof StoreFault || error instanceof ReckoningFault)
    return problemResponse(context, 503, [error.problem]);
  // The router's own refusals, such as a body that is not JSON.
  if (error instanceof HTTPException && error.status < 500) {
    return problemResponse(context, 400, [
      { where: 'body', found: error.message.slice(0, 100), expected: 'a body as the description names it' },
    ]);
  }
  console.error(error);
  const expected = 'an answer: this is a fault of the program';
  return problemResponse(context, 500, [{ where: context.req.path, found: 'a fault', expected }]);
}
