/** The pages for people: signing in and out, their account, and who recorded what. */
import { type Context, Hono } from 'hono';
import { bodyLimit } from 'hono/body-limit';
import { html } from 'hono/html';
import { plainPage, styleSheet } from '../access/plain-page.ts';
import { pageText } from '../text/page-text.ts';
import { accountPages } from './account-pages.ts';
import type { Facility } from './facility.ts';
import { passkeyScript, passkeyWrong } from './passkey-markup.ts';
import { passkeyRoutes } from './passkey-routes.ts';
import { mostPasswordLength, passwordFits } from './password.ts';
import { addressOf, closeSession, openSession } from './sessions.ts';
import { chosenHousehold, type SignInLimits, signInLimits } from './signing-in.ts';

/** Under /network. */
export function signInPages(facility: Facility): Hono {
  const pages = new Hono();
  const limits = signInLimits(() => facility.nowMs());
  pages.use(bodyLimit({ maxSize: 16_384 }));
  pages.get('/style.css', styleSheet);
  // Where a page that was shut out sends its person, whichever kind of server it is.
  pages.get('/enter', (c) => c.redirect('/network/sign-in', 303));
  pages.get('/sign-in', (c) => signInForm(c));
  pages.post('/sign-in', (c) => signIn(c, facility, limits));
  pages.post('/sign-out', async (c) => {
    await closeSession(facility.accounts, c);
    return c.redirect('/network/sign-in', 303);
  });
  pages.route('/passkeys', passkeyRoutes(facility, limits));
  accountPages(pages, facility);
  return pages;
}

async function signIn(context: Context, facility: Facility, limits: SignInLimits) {
  const form = await context.req.parseBody();
  const text = (field: string) => String(form[field] ?? '');
  const [name, password] = [text('name').trim().slice(0, 80), text('password')];
  if (!limits.byAddress.mayTry(addressOf(facility, context)) || !limits.byName.mayTry(name)) {
    return signInForm(context, pageText(context).tooManyTries, 429);
  }
  const account = password.length > mostPasswordLength ? null : await facility.accounts.named(name);
  const fits = await passwordFits(password.slice(0, mostPasswordLength), account?.passwordHash ?? null);
  if (!account || !fits) return signInForm(context, pageText(context).doNotFit, 401);
  const memberships = await facility.accounts.memberships(account.account);
  const chosen = chosenHousehold(memberships, text('household'), pageText(context));
  if (!chosen.ok) return signInForm(context, chosen.wrong, 400);
  await openSession(facility, context, account.account, chosen.household);
  return context.redirect('/', 303);
}

function signInForm(context: Context, wrong?: string, status: 200 | 400 | 401 | 429 = 200) {
  const text = pageText(context);
  const body = html`${wrong === undefined ? '' : html`<p class="wrong" role="alert">${wrong}</p>`}
<form method="post" action="/network/sign-in">
<label>${text.name} <input name="name" required maxlength="80" autocomplete="username" autocapitalize="none" spellcheck="false"></label>
<label>${text.password} <input name="password" type="password" required autocomplete="current-password"></label>
<label>${text.householdIfSeveral} <input name="household" maxlength="80" autocomplete="off"></label>
<button>${text.signIn}</button>
</form>
<form id="passkey-sign-in" hidden><button class="quiet">${text.signInPasskey}</button></form>
${passkeyWrong(text)}`;
  return plainPage(context, text.signIn, body, status, passkeyScript);
}
