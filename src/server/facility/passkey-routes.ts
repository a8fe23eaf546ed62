/** The routes that the buttons for passkeys call. Each answer is JSON; `wrong` is what to tell the person. */
import { type Context, Hono } from 'hono';
import { z } from 'zod';
import webAuthnScript from '../../../node_modules/@simplewebauthn/browser/dist/bundle/index.umd.min.js?raw';
import { pageText } from '../text/page-text.ts';
import type { Facility } from './facility.ts';
import pageScript from './passkey-page.js?raw';
import { accountOfKey, addKey, newKeyOptions, signInOptions } from './passkeys.ts';
import { addressOf, entrantOf, openSession } from './sessions.ts';
import { chosenHousehold, type SignInLimits } from './signing-in.ts';

/** Under /network/passkeys. */
export function passkeyRoutes(facility: Facility, limits: SignInLimits): Hono {
  const routes = new Hono();
  routes.get('/script.js', (c) =>
    c.body(`${webAuthnScript}\n${pageScript}`, 200, {
      'Content-Type': 'text/javascript; charset=utf-8',
      'Cache-Control': 'no-cache',
    }),
  );
  routes.post('/sign-in-options', async (c) =>
    limits.byAddress.mayTry(addressOf(facility, c))
      ? c.json(await signInOptions(facility, c))
      : wrong(c, 429, pageText(c).tooManyTries),
  );
  routes.post('/sign-in', (c) => signIn(c, facility));
  routes.post('/add-options', async (c) => {
    const entrant = await entrantOf(facility, c);
    return entrant ? c.json(await newKeyOptions(facility, c, entrant)) : signedOut(c);
  });
  routes.post('/add', (c) => add(c, facility));
  return routes;
}

/** The library checks the parts of a response; here it only has to be one. */
const proof = z.looseObject({ id: z.string().max(2000), response: z.looseObject({}) });
const signInBody = z.object({ response: proof, household: z.string().max(80) });
const addBody = z.object({ response: proof, name: z.string().trim().min(1).max(80) });

type SignInResponse = Parameters<typeof accountOfKey>[2];
type NewKeyResponse = Parameters<typeof addKey>[4];

async function signIn(context: Context, facility: Facility): Promise<Response> {
  const body = signInBody.safeParse(await jsonOf(context));
  const response = body.success ? (body.data.response as unknown as SignInResponse) : null;
  const account = response && (await orNull(accountOfKey(facility, context, response)));
  if (!account) return wrong(context, 401, pageText(context).keyUnknown);
  const memberships = await facility.accounts.memberships(account);
  const chosen = chosenHousehold(memberships, body.data?.household ?? '', pageText(context));
  if (!chosen.ok) return wrong(context, 400, chosen.wrong);
  await openSession(facility, context, account, chosen.household);
  return context.json({});
}

async function add(context: Context, facility: Facility): Promise<Response> {
  const entrant = await entrantOf(facility, context);
  if (!entrant) return signedOut(context);
  const body = addBody.safeParse(await jsonOf(context));
  if (!body.success) return wrong(context, 400, pageText(context).keyNameMissing);
  const response = body.data.response as unknown as NewKeyResponse;
  const isKept = await orNull(addKey(facility, context, entrant, body.data.name, response));
  return isKept ? context.json({}) : wrong(context, 400, pageText(context).keyNotAdded);
}

/** The library throws at any proof that does not hold; the database's own faults go on. */
async function orNull<T>(checked: Promise<T>): Promise<T | null> {
  try {
    return await checked;
  } catch (error) {
    if (error instanceof Error && error.name === 'StoreFault') throw error;
    return null;
  }
}

async function jsonOf(context: Context): Promise<unknown> {
  return context.req.json().catch(() => null);
}

function signedOut(context: Context): Response {
  return wrong(context, 401, pageText(context).sessionEnded);
}

function wrong(context: Context, status: 400 | 401 | 429, text: string): Response {
  return context.json({ wrong: text }, status);
}
