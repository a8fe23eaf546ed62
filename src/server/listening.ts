/** Opens ports for an application and closes them. */
import { createServer as createSecureServer } from 'node:https';
import type { AddressInfo } from 'node:net';
import { createAdaptorServer, type ServerType } from '@hono/node-server';
import type { Hono } from 'hono';

export interface Listener {
  port: number;
  /** Ends open connections and resolves when none is left. */
  close(): Promise<void>;
}

export interface ListenOptions {
  /** Such as 127.0.0.1; 0.0.0.0 is every address of this computer. */
  address: string;
  /** 0 takes any free port. */
  port: number;
  /** With it, HTTPS. */
  certificate?: { chain: string; key: string };
}

/** Rejects with the system's error when the port is taken. */
export async function listen(app: Hono, { address, port, certificate }: ListenOptions): Promise<Listener> {
  const server = certificate
    ? createAdaptorServer({
        fetch: app.fetch,
        createServer: createSecureServer,
        serverOptions: { cert: certificate.chain, key: certificate.key },
      })
    : createAdaptorServer({ fetch: app.fetch });
  const opened = await new Promise<number>((resolve, reject) => {
    server.once('error', reject);
    server.listen(port, address, () => resolve((server.address() as AddressInfo).port));
  });
  return { port: opened, close: () => closed(server) };
}

async function closed(server: ServerType): Promise<void> {
  const done = new Promise((resolve) => server.close(resolve));
  if ('closeAllConnections' in server) server.closeAllConnections();
  await done;
}
