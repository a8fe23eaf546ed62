/**
 * Signing in with a passkey (Web Authentication level 2, by the SimpleWebAuthn library): the browser proves
 * that it has a key which it made for this server alone; the key never leaves the person's device.
 */
import 'reflect-metadata';
import {
  type AuthenticationResponseJSON,
  generateAuthenticationOptions,
  generateRegistrationOptions,
  type RegistrationResponseJSON,
  verifyAuthenticationResponse,
  verifyRegistrationResponse,
} from '@simplewebauthn/server';
import type { Context } from 'hono';
import type { Passkey } from '../../store/postgres/index.ts';
import { isEncrypted } from '../access/caller.ts';
import type { Facility } from './facility.ts';
import type { Entrant } from './sessions.ts';

/** How long a person may take to touch their key. */
const challengeMs = 300_000;
const mostPasskeys = 20;

/** What a browser needs to make a key for the person. */
export async function newKeyOptions(facility: Facility, context: Context, { account, caller }: Entrant) {
  const { passkeys } = facility.options.logbooks;
  const known = await passkeys.list(account);
  const options = await generateRegistrationOptions({
    rpName: 'Flylarder',
    rpID: placeOf(facility, context).name,
    userName: caller.name,
    userID: new Uint8Array(Buffer.from(account)),
    excludeCredentials: known.map(({ passkey }) => ({ id: passkey })),
    authenticatorSelection: { residentKey: 'required', userVerification: 'required' },
  });
  await remember(facility, options.challenge, account);
  return options;
}

/** Keeps the key that the browser has made. False when its proof does not hold. */
export async function addKey(
  facility: Facility,
  context: Context,
  { account }: Entrant,
  name: string,
  response: RegistrationResponseJSON,
): Promise<boolean> {
  const { passkeys } = facility.options.logbooks;
  const { name: expectedRPID, origin: expectedOrigin } = placeOf(facility, context);
  const expectedChallenge = (challenge: string) => taken(facility, challenge, account);
  const { verified, registrationInfo } = await verifyRegistrationResponse({
    response,
    expectedChallenge,
    expectedOrigin,
    expectedRPID,
  });
  if (!verified || (await passkeys.list(account)).length >= mostPasskeys) return false;
  const { id, publicKey, counter, transports = [] } = registrationInfo.credential;
  const addedAt = new Date(facility.nowMs());
  const kept = { passkey: id, account, name, publicKey: Buffer.from(publicKey), counter, transports };
  return passkeys.add({ ...kept, addedAt, usedAt: null });
}

/** What a browser needs to prove that it has a key of this server's; whose it is, it tells itself. */
export async function signInOptions(facility: Facility, context: Context) {
  const rpID = placeOf(facility, context).name;
  const options = await generateAuthenticationOptions({ rpID, userVerification: 'required' });
  await remember(facility, options.challenge, null);
  return options;
}

/** The account whose key the browser has proved to have, or null. */
export async function accountOfKey(
  facility: Facility,
  context: Context,
  response: AuthenticationResponseJSON,
): Promise<string | null> {
  const { passkeys } = facility.options.logbooks;
  const known = await passkeys.find(response.id);
  if (!known) return null;
  const { name: expectedRPID, origin: expectedOrigin } = placeOf(facility, context);
  const { verified, authenticationInfo } = await verifyAuthenticationResponse({
    response,
    expectedChallenge: (challenge) => taken(facility, challenge, null),
    expectedOrigin,
    expectedRPID,
    credential: credentialOf(known),
  });
  if (!verified) return null;
  await passkeys.used(known.passkey, authenticationInfo.newCounter, new Date(facility.nowMs()));
  return known.account;
}

function credentialOf({ passkey, publicKey, counter, transports }: Passkey) {
  return { id: passkey, publicKey: new Uint8Array(publicKey), counter, transports };
}

/** A key belongs to a name; the page must come from under it. */
function placeOf({ publicUrl }: Facility, context: Context): { name: string; origin: string } {
  const scheme = isEncrypted(context) ? 'https' : 'http';
  const url = new URL(publicUrl ?? `${scheme}://${context.req.header('host') ?? 'localhost'}`);
  return { name: url.hostname, origin: url.origin };
}

function remember(facility: Facility, challenge: string, account: string | null): Promise<void> {
  const now = facility.nowMs();
  const { passkeys } = facility.options.logbooks;
  return passkeys.setChallenge(challenge, account, new Date(now), new Date(now + challengeMs));
}

function taken(facility: Facility, challenge: string, account: string | null): Promise<boolean> {
  return facility.options.logbooks.passkeys.takeChallenge(challenge, account, new Date(facility.nowMs()));
}
