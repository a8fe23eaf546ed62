/** A person's own page: their passkeys, where they are signed in, their calendar's link. */
import type { Context, Hono } from 'hono';
import { html } from 'hono/html';
import type { ListedSession, Passkey } from '../../store/postgres/index.ts';
import type { ReadReceipts } from '../../store/receipts.ts';
import { auditPage } from '../access/audit-page.ts';
import { type Markup, plainPage } from '../access/plain-page.ts';
import { pageDay, pageText } from '../text/page-text.ts';
import { newToken } from '../access/token.ts';
import type { Facility } from './facility.ts';
import { passkeyScript, passkeyWrong } from './passkey-markup.ts';
import { type Entrant, entrantOf } from './sessions.ts';

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
      const text = pageText(c);
      if (caller.role !== 'keeper') return plainPage(c, text.auditTitle, html`<p>${text.forKeepers}</p>`, 403);
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
  const text = pageText(context);
  const body = html`<p>${text.whoYouAre(caller.name, text.roles[caller.role], household)}</p>
<form class="inline" method="post" action="/network/calendar"><button class="quiet">${text.newCalendarLink}</button></form>
<form class="inline" method="post" action="/network/sign-out"><button class="quiet">${text.signOut}</button></form>
<h2>${text.passkeys}</h2>
<p>${text.passkeysLead}</p>
${keys.length === 0 ? html`<p>${text.noneYet}</p>` : html`<ul>${keys.map((key) => keyItem(context, key))}</ul>`}
<form id="passkey-add" hidden>
<label>${text.keyName} <input name="name" required maxlength="80" autocomplete="off" placeholder="${text.keyNameSuch}"></label>
<button>${text.addKey}</button>
</form>
${passkeyWrong(text)}
<h2>${text.signedIn}</h2>
<ul>${sessions.map((each) => sessionItem(context, each, session))}</ul>
${caller.role === 'keeper' ? html`<p><a href="/network/audit">${text.auditTitle}</a></p>` : ''}
<p><a href="/">${text.backToPage}</a></p>`;
  return plainPage(context, text.accountTitle, body, 200, passkeyScript);
}

function keyItem(context: Context, { passkey, name, addedAt, usedAt }: Passkey): Markup {
  const text = pageText(context);
  const used = usedAt ? text.keyUsed(pageDay(context, usedAt)) : text.keyUnused;
  return html`<li><strong>${name}</strong>, ${text.keyAdded(pageDay(context, addedAt))}, ${used}<br>
<form class="inline" method="post" action="/network/account/remove-passkey">
<input type="hidden" name="passkey" value="${passkey}"><button class="quiet">${text.remove(name)}</button></form></li>`;
}

function sessionItem(context: Context, listed: ListedSession, own: string): Markup {
  const { session, household, browser, address, openedAt, seenAt } = listed;
  const text = pageText(context);
  const where = text.sessionAt(address, household, pageDay(context, openedAt), pageDay(context, seenAt));
  const end = html`<form class="inline" method="post" action="/network/account/end-session">
<input type="hidden" name="session" value="${session}"><button class="quiet">${text.signItOut}</button></form>`;
  return html`<li><strong>${browser}</strong> ${where}<br>
${session === own ? html`(${text.thisOne})` : end}</li>`;
}

async function calendarPage(context: Context, facility: Facility, { account, household }: Entrant) {
  const { id, text: key, secretHash } = newToken();
  await facility.accounts.setCalendarLink(id, account, household, secretHash);
  const text = pageText(context);
  const base = facility.publicUrl ?? new URL(context.req.url).origin;
  const body = html`<p class="address">${String(new URL('/api/v1/calendar.ics', base))}?key=${key}</p>
<p>${text.linkIsSecret} ${text.linkOutside} <a href="/api/v1/calendar.ics">calendar.ics</a></p>
<p><a href="/network/account">${text.back}</a></p>`;
  return plainPage(context, text.calendarTitle, body);
}
