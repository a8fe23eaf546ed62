/**
 * The page's own files. They are listed once at the start, so that a request can only name a file of
 * the list. Files under assets/ carry a hash of their content in their name and never change.
 */
import { createHash } from 'node:crypto';
import { readdirSync, readFileSync } from 'node:fs';
import { readFile } from 'node:fs/promises';
import { extname, join, relative, sep } from 'node:path';
import type { Context, Handler } from 'hono';

const mediaTypes: Record<string, string> = {
  '.html': 'text/html; charset=utf-8',
  '.js': 'text/javascript; charset=utf-8',
  '.css': 'text/css; charset=utf-8',
  '.json': 'application/json',
  '.webmanifest': 'application/manifest+json',
  '.svg': 'image/svg+xml',
  '.png': 'image/png',
  '.ico': 'image/x-icon',
  '.woff2': 'font/woff2',
  '.wasm': 'application/wasm',
  '.txt': 'text/plain; charset=utf-8',
  '.map': 'application/json',
};

interface StaticFile {
  file: string;
  etag: string;
  type: string;
  cache: string;
}

/** Answers GET with the file of `folder` that the path names; other paths without an extension get the page. */
export function staticFiles(folder: string): Handler {
  const files = listFiles(folder);
  return async (context) => {
    const path = context.req.path;
    const found =
      files.get(path === '/' ? '/index.html' : path) ?? (extname(path) === '' ? files.get('/index.html') : undefined);
    return found ? send(context, found) : context.text(files.size === 0 ? 'The page is not built.' : 'Not found.', 404);
  };
}

async function send(context: Context, { file, etag, type, cache }: StaticFile): Promise<Response> {
  const headers = { 'Content-Type': type, 'Cache-Control': cache, ETag: etag };
  if (context.req.header('if-none-match') === etag) return context.body(null, 304, headers);
  return context.body(await readFile(file), 200, headers);
}

function listFiles(folder: string): Map<string, StaticFile> {
  const files = new Map<string, StaticFile>();
  for (const entry of entriesOf(folder)) {
    const file = join(folder, entry);
    const path = `/${entry.split(sep).join('/')}`;
    files.set(path, {
      file,
      etag: `"${createHash('sha256').update(readFileSync(file)).digest('base64url').slice(0, 22)}"`,
      type: mediaTypes[extname(entry)] ?? 'application/octet-stream',
      cache: path.startsWith('/assets/') ? 'public, max-age=31536000, immutable' : 'no-cache',
    });
  }
  return files;
}

/** Every file below `folder`; none when there is no such folder. */
function entriesOf(folder: string): string[] {
  try {
    const all = readdirSync(folder, { recursive: true, withFileTypes: true });
    return all.filter((entry) => entry.isFile()).map((entry) => relative(folder, join(entry.parentPath, entry.name)));
  } catch {
    return [];
  }
}
