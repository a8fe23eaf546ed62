/**
 * What happened, one JSON object a line, for whatever gathers the lines; and the same counted. A line has
 * the path without its query (keys of calendars are there), and no cookie, body or password.
 */
import type { MiddlewareHandler } from 'hono';
import type { Metrics } from './metrics.ts';

export interface LogLine {
  at: string;
  method: string;
  path: string;
  status: number;
  ms: number;
  address: string;
}

export function requestLog(
  write: (line: LogLine) => void,
  metrics: Metrics,
  now: () => string,
  addressOf: (context: Parameters<MiddlewareHandler>[0]) => string,
): MiddlewareHandler {
  return async (context, next) => {
    const from = performance.now();
    await next();
    const ms = performance.now() - from;
    const { status } = context.res;
    metrics.answered(context.req.method, status, ms / 1000);
    const { method, path } = context.req;
    write({ at: now(), method, path: path.slice(0, 200), status, ms: Math.round(ms), address: addressOf(context) });
  };
}
