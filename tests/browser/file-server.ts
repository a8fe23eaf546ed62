/** A plain file server for the built page: it knows nothing of Flylarder and remembers what was asked for. */
import { readFile } from 'node:fs/promises';
import { createServer, type IncomingMessage, type ServerResponse } from 'node:http';
import type { AddressInfo } from 'node:net';
import { extname, join, normalize } from 'node:path';
import { gzipSync } from 'node:zlib';

const typeOf: Record<string, string> = {
  '.html': 'text/html; charset=utf-8',
  '.js': 'text/javascript',
  '.css': 'text/css',
  '.svg': 'image/svg+xml',
  '.woff2': 'font/woff2',
  '.webmanifest': 'application/manifest+json',
};

export interface FileServer {
  /** A folder of a larger site: nothing may depend on lying at its root. */
  address: string;
  /** Paths in the folder, in the order in which they were asked for. */
  asked: string[];
  close(): Promise<void>;
}

export async function serveFiles(folder: string): Promise<FileServer> {
  const asked: string[] = [];
  const server = createServer((request, response) => void answer(request, response, folder, asked));
  await new Promise<void>((resolve) => server.listen(0, '127.0.0.1', resolve));
  return {
    address: `http://localhost:${(server.address() as AddressInfo).port}/keeping/`,
    asked,
    close: async () => {
      server.closeAllConnections();
      await new Promise((resolve) => server.close(resolve));
    },
  };
}

async function answer(request: IncomingMessage, response: ServerResponse, folder: string, asked: string[]) {
  const path = new URL(request.url ?? '/', 'http://localhost').pathname.replace(/^\/keeping\//, '/');
  const file = normalize(path.replace(/\/$/, '/index.html'));
  try {
    const body = await readFile(join(folder, file));
    asked.push(file);
    const isText = !file.endsWith('.woff2');
    // What has a digest in its name never changes.
    const cache = file.startsWith('/assets/') ? 'public, max-age=31536000, immutable' : 'no-cache';
    const headers = { 'content-type': typeOf[extname(file)] ?? 'text/plain', 'cache-control': cache };
    if (isText) response.writeHead(200, { ...headers, 'content-encoding': 'gzip' }).end(gzipSync(body));
    else response.writeHead(200, headers).end(body);
  } catch {
    response.writeHead(404).end();
  }
}
