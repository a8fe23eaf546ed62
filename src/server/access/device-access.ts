/** On the home network only paired devices are answered; the computer itself needs nothing. */
import type { Context, MiddlewareHandler } from 'hono';
import { getCookie, setCookie } from 'hono/cookie';
import { problemResponse } from '../problem-answer.ts';
import { sensorPath } from '../sensors/sensor-register.ts';
import { isEncrypted, remoteAddress, setCaller } from './caller.ts';
import type { Device } from './devices.ts';
import { isFromHere } from './loopback-access.ts';
import type { Network } from './network.ts';

export const deviceCookie = 'flylarder_device';
/** Browsers keep a cookie for 400 days at most; it is renewed with every page that is opened. */
const cookieSeconds = 400 * 86_400;
const calendarPath = '/api/v1/calendar.ics';

export function deviceAccess(network: Network): MiddlewareHandler {
  return async (context, next) => {
    const { path } = context.req;
    const address = remoteAddress(context);
    if (isOwnUser(network, context)) {
      setCaller(context, { name: 'http', role: 'keeper', address, credential: null });
      return next();
    }
    const device = deviceOf(network, context);
    if (device) {
      network.devices.seen(device, network.shell.now());
      const standing = {
        holds: async () => network.devices.isPaired(device.id),
        onChange: (changed: () => void) => network.devices.onChange(device.id, changed),
      };
      setCaller(context, { name: device.name, role: 'keeper', address, credential: device.id, standing });
      if (path === '/') giveToken(network, context, getCookie(context, deviceCookie) as string);
      return next();
    }
    // A sensor shows its own token to the one route that it may use, and may do nothing else.
    if (path === sensorPath && context.req.method === 'POST') {
      setCaller(context, { name: 'sensor', role: 'reader', address, credential: null });
      return next();
    }
    if (path === '/') return context.redirect('/network/pair', 303);
    // The page's own files are the same for everyone; the household is behind /api.
    if (!path.startsWith('/api/')) return next();
    return problemResponse(context, 401, [
      { where: 'this device', found: 'no pairing', expected: 'a device paired at /network/pair' },
    ]);
  };
}

export function isOwnUser({ publicUrl }: Network, context: Context): boolean {
  return publicUrl === undefined && isFromHere(context);
}

/** The device that the cookie names, or for a calendar program the key in its address. */
function deviceOf({ devices }: Network, context: Context): Device | null {
  const { path, method } = context.req;
  const paired = devices.withToken(getCookie(context, deviceCookie));
  if (paired || path !== calendarPath || method !== 'GET') return paired;
  return devices.withCalendarKey(context.req.query('key'));
}

export function giveToken({ publicUrl }: Network, context: Context, token: string): void {
  setCookie(context, deviceCookie, token, {
    httpOnly: true,
    sameSite: 'Strict',
    path: '/',
    maxAge: cookieSeconds,
    secure: isEncrypted(context) || publicUrl?.startsWith('https:') === true,
  });
}
