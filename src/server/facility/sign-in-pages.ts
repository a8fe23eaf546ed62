/** The pages for people: signing in and out, the calendar's link, and who recorded what. */
import { type Context, Hono } from 'hono';
import { bodyLimit } from 'hono/body-limit';
import { html } from 'hono/html';
import type { Membership } from '../../store/postgres/index.ts';
import { type AttemptLimit, attemptLimit } from '../access/attempt-limit.ts';
import { plainPage, styleSheet } from '../access/plain-page.ts';
import { newToken } from '../access/token.ts';
import { auditPage } from './audit-page.ts';
import type { Facility } from './facility.ts';
import { mostPasswordLength, passwordFits } from './password.ts';
import { addressOf, closeSession, entrantOf, openSession } from './sessions.ts';

const minuteMs = 60_000;

interface Limits {
  byAddress: AttemptLimit;
  byName: AttemptLimit;
}

/** Under /network. */
export function signInPages(facility: Facility): Hono {
  const pages = new Hono();
  const nowMs = () => facility.nowMs();
  const limits = {
    byAddress: attemptLimit(20, 200, minuteMs, nowMs),
    byName: attemptLimit(10, 200, 15 * minuteMs, nowMs),
  };
  pages.use(bodyLimit({ maxSize: 8192 }));
  pages.get('/style.css', styleSheet);
  // Where a page that was shut out sends its person, whichever kind of server it is.
  pages.get('/enter', (c) => c.redirect('/network/sign-in', 303));
  pages.get('/sign-in', (c) => signInForm(c));
  pages.post('/sign-in', (c) => signIn(c, facility, limits));
  pages.post('/sign-out', async (c) => {
    await closeSession(facility.accounts, c);
    return c.redirect('/network/sign-in', 303);
  });
  pages.get('/account', (c) => accountPage(c, facility));
  pages.post('/calendar', (c) => calendarPage(c, facility));
  pages.get('/audit', (c) => auditPage(c, facility));
  return pages;
}

async function signIn(context: Context, facility: Facility, limits: Limits) {
  const form = await context.req.parseBody();
  const text = (field: string) => String(form[field] ?? '');
  const [name, password] = [text('name').trim().slice(0, 80), text('password')];
  if (!limits.byAddress.mayTry(addressOf(facility, context)) || !limits.byName.mayTry(name)) {
    return signInForm(context, 'Too many tries. Wait some minutes.', 429);
  }
  const account = password.length > mostPasswordLength ? null : await facility.accounts.named(name);
  const fits = await passwordFits(password.slice(0, mostPasswordLength), account?.passwordHash ?? null);
  if (!account || !fits) return signInForm(context, 'Name and password do not fit.', 401);
  const memberships = await facility.accounts.memberships(account.account);
  const asked = text('household');
  const chosen =
    asked === '' && memberships.length === 1 ? memberships[0] : memberships.find((m) => m.household === asked);
  if (!chosen) return signInForm(context, whichHousehold(memberships), 400);
  await openSession(facility, context, account.account, chosen.household);
  return context.redirect('/', 303);
}

/** Only said to someone whose password fits. */
function whichHousehold(memberships: Membership[]): string {
  if (memberships.length === 0) return 'This account belongs to no household. Ask a keeper.';
  return `Name the household: ${memberships.map(({ household }) => household).join(', ')}.`;
}

function signInForm(context: Context, wrong?: string, status: 200 | 400 | 401 | 429 = 200) {
  const body = html`${wrong === undefined ? '' : html`<p class="wrong" role="alert">${wrong}</p>`}
<form method="post" action="/network/sign-in">
<label>Name <input name="name" required maxlength="80" autocomplete="username" autocapitalize="none" spellcheck="false"></label>
<label>Password <input name="password" type="password" required autocomplete="current-password"></label>
<label>Household, if you belong to several <input name="household" maxlength="80" autocomplete="off"></label>
<button>Sign in</button>
</form>`;
  return plainPage(context, 'Sign in', body, status);
}

async function accountPage(context: Context, facility: Facility) {
  const entrant = await entrantOf(facility, context);
  if (!entrant) return context.redirect('/network/sign-in', 303);
  const { caller, household } = entrant;
  const body = html`<p>${caller.name}, ${caller.role} of ${household}.</p>
<form class="inline" method="post" action="/network/calendar"><button class="quiet">New calendar link</button></form>
<form class="inline" method="post" action="/network/sign-out"><button class="quiet">Sign out</button></form>
${caller.role === 'keeper' ? html`<p><a href="/network/audit">Who recorded what</a></p>` : ''}
<p><a href="/">Back to the page</a></p>`;
  return plainPage(context, 'Your account', body);
}

async function calendarPage(context: Context, facility: Facility) {
  const entrant = await entrantOf(facility, context);
  if (!entrant) return context.redirect('/network/sign-in', 303);
  const { id, text, secretHash } = newToken();
  const account = entrant.caller.credential as string;
  await facility.accounts.setCalendarLink(id, account, entrant.household, secretHash);
  const base = facility.publicUrl ?? new URL(context.req.url).origin;
  const body = html`<p class="address">${String(new URL('/api/v1/calendar.ics', base))}?key=${text}</p>
<p>Whoever has this link can read the plan. It is shown once; a new one ends it. A calendar service that cannot
reach this server needs the file <a href="/api/v1/calendar.ics">calendar.ics</a> instead.</p>
<p><a href="/network/account">Back</a></p>`;
  return plainPage(context, 'Calendar link', body);
}
