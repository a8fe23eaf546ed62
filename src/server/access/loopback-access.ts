/** Who reaches the loopback address is this computer's own user: nothing to prove. */
import type { Context, MiddlewareHandler } from 'hono';
import { hostName, isLoopbackName } from '../request-guard.ts';
import { isLoopback, remoteAddress, setCaller } from './caller.ts';

export const loopbackAccess: MiddlewareHandler = async (context, next) => {
  setCaller(context, { name: 'http', role: 'keeper', address: remoteAddress(context), credential: null });
  return next();
};

const forwardingHeaders = ['forwarded', 'x-forwarded-for', 'x-forwarded-host', 'x-real-ip', 'via'];

/** From this computer itself, and not through a proxy on it that speaks for others. */
export function isFromHere(context: Context): boolean {
  return (
    isLoopback(remoteAddress(context)) &&
    isLoopbackName(hostName(context.req.header('host') ?? '')) &&
    !forwardingHeaders.some((name) => context.req.header(name) !== undefined)
  );
}
