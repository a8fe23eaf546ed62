/** A person's own page: their passkeys, where they are signed in, their calendar's link. */
import type { Context, Hono } from 'hono';
import { html } from 'hono/html';
import type { ListedSession, Passkey } from '../../store/postgres/index.ts';
import type { ReadReceipts } from '../../store/receipts.ts';
import { auditPage } from '../access/audit-page.ts';
import { type Markup, plainPage } from '../access/plain-page.ts';
import { newToken } from '../access/token.ts';
import type { Facility } from './facility.ts';
import { type Entrant, entrantOf } from './sessions.ts';

export const passkeyScript = '/network/passkeys/script.js';

/** Under /network. */
export function accountPages(pages: Hono, facility: Facility): void {
  const forEntrant =
    (answer: (context: Context, entrant: Entrant) => Promise<Response>) => async (context: Context) => {
      const entrant = await entrantOf(facility, context);
      return entrant ? answer(context, entrant) : context.redirect('/network/sign-in', 303);
    };
  pages.get(
    '/account',
    forEntrant((c, entrant) => accountPage(c, facility, entrant)),
  );
  // Where the page sends whoever wants a calendar link, whichever kind of server it is.
  pages.get('/calendar', (c) => c.redirect('/network/account', 303));
  pages.post(
    '/calendar',
    forEntrant((c, entrant) => calendarPage(c, facility, entrant)),
  );
  pages.get(
    '/audit',
    forEntrant(async (c, { caller, household }) => {
      if (caller.role !== 'keeper') return plainPage(c, 'Who recorded what', html`<p>For keepers only.</p>`, 403);
      const receipts: ReadReceipts = (before, limit) => facility.options.logbooks.receipts(household, before, limit);
      return auditPage(c, receipts, '/network/account');
    }),
  );
  pages.post(
    '/account/remove-passkey',
    forEntrant(async (c, { account }) => {
      const passkey = String((await c.req.parseBody())['passkey'] ?? '');
      await facility.options.logbooks.passkeys.remove(passkey, account);
      return c.redirect('/network/account', 303);
    }),
  );
  pages.post(
    '/account/end-session',
    forEntrant(async (c, { account }) => {
      await facility.accounts.closeSession(String((await c.req.parseBody())['session'] ?? ''), account);
      return c.redirect('/network/account', 303);
    }),
  );
}

async function accountPage(context: Context, facility: Facility, { account, session, caller, household }: Entrant) {
  const [keys, sessions] = await Promise.all([
    facility.options.logbooks.passkeys.list(account),
    facility.accounts.sessions(account),
  ]);
  const body = html`<p>${caller.name}, ${caller.role} of ${household}.</p>
<form class="inline" method="post" action="/network/calendar"><button class="quiet">New calendar link</button></form>
<form class="inline" method="post" action="/network/sign-out"><button class="quiet">Sign out</button></form>
<h2>Passkeys</h2>
<p>With a passkey you sign in by this device's own lock, without a password. The password stays good.</p>
${keys.length === 0 ? html`<p>None yet.</p>` : html`<ul>${keys.map(keyItem)}</ul>`}
<form id="passkey-add" hidden>
<label>Name of the new key <input name="name" required maxlength="80" autocomplete="off" placeholder="my phone"></label>
<button>Add a passkey</button>
</form>
<p class="wrong" role="alert" id="passkey-wrong" hidden></p>
<h2>Signed in</h2>
<ul>${sessions.map((each) => sessionItem(each, session))}</ul>
${caller.role === 'keeper' ? html`<p><a href="/network/audit">Who recorded what</a></p>` : ''}
<p><a href="/">Back to the page</a></p>`;
  return plainPage(context, 'Your account', body, 200, passkeyScript);
}

const dayOf = (at: Date) => at.toISOString().slice(0, 10);

function keyItem({ passkey, name, addedAt, usedAt }: Passkey): Markup {
  return html`<li><strong>${name}</strong>, added ${dayOf(addedAt)}, ${usedAt ? `last used ${dayOf(usedAt)}` : 'not used yet'}<br>
<form class="inline" method="post" action="/network/account/remove-passkey">
<input type="hidden" name="passkey" value="${passkey}"><button class="quiet">Remove ${name}</button></form></li>`;
}

function sessionItem({ session, household, browser, address, openedAt, seenAt }: ListedSession, own: string): Markup {
  const end = html`<form class="inline" method="post" action="/network/account/end-session">
<input type="hidden" name="session" value="${session}"><button class="quiet">Sign it out</button></form>`;
  return html`<li><strong>${browser}</strong> at ${address}, in ${household} since ${dayOf(openedAt)}, last here ${dayOf(seenAt)}<br>
${session === own ? html`(this one)` : end}</li>`;
}

async function calendarPage(context: Context, facility: Facility, { account, household }: Entrant) {
  const { id, text, secretHash } = newToken();
  await facility.accounts.setCalendarLink(id, account, household, secretHash);
  const base = facility.publicUrl ?? new URL(context.req.url).origin;
  const body = html`<p class="address">${String(new URL('/api/v1/calendar.ics', base))}?key=${text}</p>
<p>Whoever has this link can read the plan. It is shown once; a new one ends it. A calendar service that cannot
reach this server needs the file <a href="/api/v1/calendar.ics">calendar.ics</a> instead.</p>
<p><a href="/network/account">Back</a></p>`;
  return plainPage(context, 'Calendar link', body);
}
