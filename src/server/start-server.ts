/** Listens on this computer's loopback address and answers with the API and the page. */
import type { AddressInfo } from 'node:net';
import { createAdaptorServer, type ServerType } from '@hono/node-server';
import { type Context, Hono } from 'hono';
import { HTTPException } from 'hono/http-exception';
import { type Store, StoreFault } from '../store/store.ts';
import { api } from './api.ts';
import { LiveHousehold } from './live-household.ts';
import { problemResponse } from './problem-answer.ts';
import { requestGuard } from './request-guard.ts';
import { securityHeaders } from './security-headers.ts';
import type { Shell } from './shell.ts';
import { staticFiles } from './static-files.ts';

export interface ServerOptions {
  store: Store;
  shell: Shell;
  version: string;
  /** The folder with the built page. */
  webFolder: string;
  /** 0 takes any free port. */
  port: number;
}

export interface RunningServer {
  /** Such as http://localhost:4180/ */
  address: string;
  /** Ends open connections and resolves when none is left. The store stays open. */
  stop(): Promise<void>;
}

const loopback = '127.0.0.1';

/** Rejects with the system's error when the port is taken. */
export async function startServer(options: ServerOptions): Promise<RunningServer> {
  const household = await LiveHousehold.open(options.store);
  const server = createAdaptorServer({ fetch: application(household, options).fetch });
  const port = await listening(server, options.port);
  return { address: `http://localhost:${port}/`, stop: () => stopped(server, household) };
}

/** The application apart from its port, for tests. */
export function application(household: LiveHousehold, options: Omit<ServerOptions, 'port' | 'store'>): Hono {
  const app = new Hono();
  app.use(securityHeaders, requestGuard);
  app.route('/api/v1', api({ household, shell: options.shell, version: options.version }));
  app.all('/api/*', (c) =>
    problemResponse(c, 404, [
      { where: `${c.req.method} ${c.req.path}`, found: 'no such route', expected: 'a route of /api/v1/openapi.json' },
    ]),
  );
  app.get('*', staticFiles(options.webFolder));
  app.onError((error, c) => fault(error, c));
  return app;
}

/** A fault is said without its insides; those go to the log of this process. */
function fault(error: Error, context: Context): Response {
  if (error instanceof StoreFault) return problemResponse(context, 503, [error.problem]);
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

function listening(server: ServerType, port: number): Promise<number> {
  return new Promise((resolve, reject) => {
    server.once('error', reject);
    server.listen(port, loopback, () => resolve((server.address() as AddressInfo).port));
  });
}

async function stopped(server: ServerType, household: LiveHousehold): Promise<void> {
  const closed = new Promise((resolve) => server.close(resolve));
  await household.close();
  if ('closeAllConnections' in server) server.closeAllConnections();
  await closed;
}
