/** What signing in with a password and with a passkey share: how often one may try, and which household. */
import type { Membership } from '../../store/postgres/index.ts';
import type { PageText } from '../text/en.ts';
import { type AttemptLimit, attemptLimit } from '../access/attempt-limit.ts';

const minuteMs = 60_000;

export interface SignInLimits {
  byAddress: AttemptLimit;
  byName: AttemptLimit;
}

export function signInLimits(nowMs: () => number): SignInLimits {
  return {
    byAddress: attemptLimit(20, 200, minuteMs, nowMs),
    byName: attemptLimit(10, 200, 15 * minuteMs, nowMs),
  };
}

/** The household asked for, or the only one; else what to tell a person who has proved who they are. */
export function chosenHousehold(
  memberships: Membership[],
  asked: string,
  text: PageText,
): { ok: true; household: string } | { ok: false; wrong: string } {
  const chosen =
    asked === '' && memberships.length === 1 ? memberships[0] : memberships.find((m) => m.household === asked);
  if (chosen) return { ok: true, household: chosen.household };
  if (memberships.length === 0) {
    return { ok: false, wrong: text.noHousehold };
  }
  return { ok: false, wrong: text.nameHousehold(memberships.map(({ household }) => household).join(', ')) };
}
