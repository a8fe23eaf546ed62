/**
 * Only this computer's own page and programs are answered. A foreign name in Host is a site that points
 * its own name here (DNS rebinding); a foreign Origin is a page elsewhere that writes in the keeper's name.
 */
import type { MiddlewareHandler } from 'hono';
import { problemResponse } from './problem-answer.ts';

const loopbackNames = new Set(['localhost', '127.0.0.1', '[::1]']);
const readingMethods = new Set(['GET', 'HEAD', 'OPTIONS']);

export const requestGuard: MiddlewareHandler = async (context, next) => {
  const host = context.req.header('host') ?? '';
  if (!loopbackNames.has(hostName(host))) return refused(context, 'Host', host, 'localhost or 127.0.0.1');
  const origin = context.req.header('origin');
  if (origin !== undefined && origin !== `http://${host}`) return refused(context, 'Origin', origin, `http://${host}`);
  const site = context.req.header('sec-fetch-site');
  if (!readingMethods.has(context.req.method) && site !== undefined && site !== 'same-origin' && site !== 'none') {
    return refused(context, 'Sec-Fetch-Site', site, 'same-origin');
  }
  return next();
};

/** The name in a Host header, without its port. */
function hostName(host: string): string {
  return host.replace(/:\d+$/, '').toLowerCase();
}

function refused(context: Parameters<MiddlewareHandler>[0], where: string, found: string, expected: string): Response {
  return problemResponse(context, 403, [{ where, found: found === '' ? 'nothing' : found.slice(0, 100), expected }]);
}
