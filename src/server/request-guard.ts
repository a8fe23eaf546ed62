/**
 * Only this server's own page and programs are answered. A foreign name in Host is a site that points
 * its own name here (DNS rebinding); a foreign Origin is a page elsewhere that writes in the keeper's name.
 */
import type { MiddlewareHandler } from 'hono';
import { isEncrypted } from './access/caller.ts';
import { problemResponse } from './problem-answer.ts';

export interface KnownNames {
  /** Is this, without its port, a name of this server? */
  isKnown(hostName: string): boolean;
  /** What is said to whoever used another. */
  expected: string;
  /** The origin under which a proxy shows this server to browsers, such as https://flies.example.org */
  publicOrigin?: string;
}

const loopbackNames = new Set(['localhost', '127.0.0.1', '[::1]']);
const readingMethods = new Set(['GET', 'HEAD', 'OPTIONS']);

export const loopbackOnly: KnownNames = { isKnown: isLoopbackName, expected: 'localhost or 127.0.0.1' };

export function isLoopbackName(hostName: string): boolean {
  return loopbackNames.has(hostName);
}

export function requestGuard(names: KnownNames): MiddlewareHandler {
  return async (context, next) => {
    const host = context.req.header('host') ?? '';
    if (!names.isKnown(hostName(host))) return refused(context, 'Host', host, names.expected);
    const origin = context.req.header('origin');
    const own = `${isEncrypted(context) ? 'https' : 'http'}://${host}`;
    if (origin !== undefined && origin !== own && origin !== names.publicOrigin) {
      return refused(context, 'Origin', origin, names.publicOrigin ?? own);
    }
    const site = context.req.header('sec-fetch-site');
    if (!readingMethods.has(context.req.method) && site !== undefined && site !== 'same-origin' && site !== 'none') {
      return refused(context, 'Sec-Fetch-Site', site, 'same-origin');
    }
    return next();
  };
}

/** The name in a Host header, without its port. */
export function hostName(host: string): string {
  return host.replace(/:\d+$/, '').toLowerCase();
}

function refused(context: Parameters<MiddlewareHandler>[0], where: string, found: string, expected: string): Response {
  return problemResponse(context, 403, [{ where, found: found === '' ? 'nothing' : found.slice(0, 100), expected }]);
}
