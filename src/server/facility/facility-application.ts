/** The application of a facility: people sign in, and each session sees its own household alone. */
import { type Context, Hono, type MiddlewareHandler } from 'hono';
import { setCaller } from '../access/caller.ts';
import { guarded } from '../application.ts';
import { problemResponse } from '../problem-answer.ts';
import { isLoopbackName, type KnownNames } from '../request-guard.ts';
import { staticFiles } from '../static-files.ts';
import { Facility, type FacilityOptions } from './facility.ts';
import { Metrics } from './metrics.ts';
import { requestLog } from './request-log.ts';
import { addressOf, type Entrant, entrantOf, entrantOfLink } from './sessions.ts';
import { signInPages } from './sign-in-pages.ts';
import { facilityWatch } from './watch.ts';

export interface FacilityApplication {
  app: Hono;
  /** /healthz and /metrics, for a port that strangers do not reach. */
  watch: Hono;
  /** Begins to hear of sessions that end in other processes. */
  hear(): Promise<void>;
  close(): Promise<void>;
}

export function facilityApplication(options: FacilityOptions): FacilityApplication {
  const facility = new Facility(options);
  const metrics = new Metrics(() => facility.openHouseholds);
  const log = requestLog(options.log ?? (() => {}), metrics, options.shell.now, (c) => addressOf(facility, c));
  const app = guarded(facilityNames(options), access(facility), log);
  app.route('/network', signInPages(facility));
  app.all('/api/*', async (c) => {
    const { household } = entrants.get(c.req.raw) as Entrant;
    const { app: inside } = await facility.household(household);
    return inside.fetch(c.req.raw, c.env);
  });
  app.get('*', staticFiles(options.webFolder));
  const watch = facilityWatch(facility, metrics);
  return { app, watch, hear: () => facility.hear(), close: () => facility.close() };
}

/** Where the guard leaves for the router which household a request belongs to. */
const entrants = new WeakMap<Request, Entrant>();

function access(facility: Facility): MiddlewareHandler {
  return async (context, next) => {
    const { path } = context.req;
    // The page's own files are the same for everyone; households are behind /api.
    if (path !== '/' && !path.startsWith('/api/')) return next();
    const entrant = (await entrantOf(facility, context)) ?? (await byLink(facility, context));
    if (entrant) {
      setCaller(context, entrant.caller);
      entrants.set(context.req.raw, entrant);
      return next();
    }
    if (path === '/') return context.redirect('/network/sign-in', 303);
    return problemResponse(context, 401, [
      { where: 'this request', found: 'no session', expected: 'a session opened at /network/sign-in' },
    ]);
  };
}

async function byLink(facility: Facility, context: Context): Promise<Entrant | null> {
  const { path, method } = context.req;
  return path === '/api/v1/calendar.ics' && method === 'GET' ? entrantOfLink(facility, context) : null;
}

function facilityNames({ publicUrl }: FacilityOptions): KnownNames {
  const url = publicUrl === undefined ? null : new URL(publicUrl);
  return {
    isKnown: (name) => isLoopbackName(name) || name === url?.hostname,
    expected: url?.host ?? 'localhost or 127.0.0.1',
    ...(url && { publicOrigin: url.origin }),
  };
}
