/** Signing in with a name and a password; the session is a random secret in a cookie. */
import type { Context } from 'hono';
import { deleteCookie, getCookie, setCookie } from 'hono/cookie';
import type { KeptLink, PostgresAccounts } from '../../store/postgres/index.ts';
import { type Caller, isEncrypted, remoteAddress, type Standing } from '../access/caller.ts';
import { newToken, secretFits, tokenParts } from '../access/token.ts';
import { browserName } from './browser-name.ts';
import type { Facility } from './facility.ts';

const cookieName = 'flylarder_session';
const dayMs = 86_400_000;
/** A session ends when it was not used for so long, and in any case some time after it was opened. */
const [mostIdleMs, mostAgeMs] = [30 * dayMs, 180 * dayMs];
const seenEveryMs = 3_600_000;

/** A caller, and the household of their session. */
export interface Entrant {
  caller: Caller;
  household: string;
  account: string;
  /** The session's id; empty for a link's. */
  session: string;
}

/** Who the cookie belongs to and what they may do now; null when it is good no more. */
export async function entrantOf(facility: Facility, context: Context): Promise<Entrant | null> {
  const parts = tokenParts(getCookie(context, cookieName));
  const kept = parts && (await facility.accounts.session(parts.id));
  if (!parts || !kept || !secretFits(parts.secret, kept.secretHash)) return null;
  const now = facility.nowMs();
  if (now - kept.seenAt.getTime() > mostIdleMs || now - kept.openedAt.getTime() > mostAgeMs) {
    await facility.accounts.closeSession(parts.id);
    return null;
  }
  if (now - kept.seenAt.getTime() > seenEveryMs) await facility.accounts.sessionSeen(parts.id, new Date(now));
  const { account, household } = kept;
  const holds = async () =>
    (await facility.accounts.session(parts.id)) !== null && (await facility.accounts.role(account, household)) !== null;
  return entrant(facility, kept, context, { session: parts.id, standing: standingOf(facility, account, holds) });
}

/** Who the key in a calendar's address belongs to. */
export async function entrantOfLink(facility: Facility, context: Context): Promise<Entrant | null> {
  const parts = tokenParts(context.req.query('key'));
  const kept = parts && (await facility.accounts.calendarLink(parts.id));
  return parts && kept && secretFits(parts.secret, kept.secretHash) ? entrant(facility, kept, context) : null;
}

async function entrant(
  facility: Facility,
  { account, name, household }: KeptLink,
  context: Context,
  { session = '', standing }: { session?: string; standing?: Standing } = {},
): Promise<Entrant | null> {
  const role = await facility.accounts.role(account, household);
  if (role === null) return null;
  const caller = { name, role, address: addressOf(facility, context), credential: account };
  return { household, account, session, caller: standing ? { ...caller, standing } : caller };
}

/** Whether the session still holds, and word of it when it may have ended. */
function standingOf(facility: Facility, account: string, holds: () => Promise<boolean>): Standing {
  return { holds, onChange: (changed) => facility.accessEnded.listen(account, changed) };
}

export async function openSession(facility: Facility, context: Context, account: string, household: string) {
  const { id, text, secretHash } = newToken();
  const now = new Date(facility.nowMs());
  await facility.accounts.sweepSessions(new Date(now.getTime() - mostIdleMs), new Date(now.getTime() - mostAgeMs));
  const kept = { account, household, secretHash, openedAt: now, seenAt: now };
  const browser = browserName(context.req.header('user-agent') ?? '');
  await facility.accounts.openSession(id, kept, { address: addressOf(facility, context), browser });
  setCookie(context, cookieName, text, {
    httpOnly: true,
    sameSite: 'Strict',
    path: '/',
    maxAge: mostIdleMs / 1000,
    secure: isEncrypted(context) || facility.publicUrl?.startsWith('https:') === true,
  });
}

export async function closeSession(accounts: PostgresAccounts, context: Context): Promise<void> {
  const parts = tokenParts(getCookie(context, cookieName));
  const kept = parts && (await accounts.session(parts.id));
  if (parts && kept && secretFits(parts.secret, kept.secretHash)) await accounts.closeSession(parts.id);
  deleteCookie(context, cookieName, { path: '/' });
}

/** Behind a proxy, the address that it says the request came from: the last one, which it wrote itself. */
export function addressOf({ publicUrl }: Facility, context: Context): string {
  const forwarded = context.req.header('x-forwarded-for')?.split(',').at(-1)?.trim();
  return (publicUrl !== undefined && forwarded ? forwarded : remoteAddress(context)).slice(0, 64);
}
