/** The pages that let a device in: on the device, the code is typed; on the computer, it is shown. */
import { type Context, Hono, type MiddlewareHandler } from 'hono';
import { bodyLimit } from 'hono/body-limit';
import { html, raw } from 'hono/html';
import { renderSVG } from 'uqr';
import type { ReadReceipts } from '../../store/receipts.ts';
import { attemptLimit } from './attempt-limit.ts';
import { auditPage } from './audit-page.ts';
import { remoteAddress } from './caller.ts';
import { calendarLink, calendarPages } from './calendar-page.ts';
import { certificatePage } from './certificate-page.ts';
import { giveToken, isOwnUser } from './device-access.ts';
import type { Device } from './devices.ts';
import { type Invitation, invite, redeem } from './invitation.ts';
import { pageDay, pageText } from '../text/page-text.ts';
import type { Network } from './network.ts';
import { type Markup, plainPage, styleSheet } from './plain-page.ts';

const minuteMs = 60_000;
/** Wrong codes a minute: of one device, and of all together. */
const [mostTries, mostTriesOfAll] = [6, 30];

/** Under /network. */
export function pairingPages(network: Network, receipts?: ReadReceipts): Hono {
  const pages = new Hono();
  const limit = attemptLimit(mostTries, mostTriesOfAll, minuteMs, () => Date.parse(network.shell.now()));
  pages.use(bodyLimit({ maxSize: 4096 }));
  pages.get('/style.css', styleSheet);
  // Where a page that was shut out sends its keeper, whichever kind of server it is.
  pages.get('/enter', (c) => c.redirect('/network/pair', 303));
  pages.get('/pair', (c) => pairForm(c, c.req.query('code') ?? ''));
  pages.post('/pair', async (c) => {
    if (!limit.mayTry(remoteAddress(c))) return pairForm(c, '', pageText(c).tooManyTries, 429);
    const form = await c.req.parseBody();
    const [code, name] = [String(form['code'] ?? '').slice(0, 40), String(form['name'] ?? '').trim()];
    if (name === '') return pairForm(c, code, pageText(c).nameMissing, 400);
    if (!redeem(network.folder, code, Date.parse(network.shell.now()))) {
      return pairForm(c, '', pageText(c).codeWrong, 403);
    }
    giveToken(network, c, network.devices.add(name, network.shell.now()));
    return c.redirect('/', 303);
  });
  calendarPages(pages, network);
  certificatePage(pages, network);
  devicePages(pages, network, receipts);
  return pages;
}

function pairForm(context: Context, code: string, wrong?: string, status: 200 | 400 | 403 | 429 = 200) {
  const text = pageText(context);
  const body = html`<p>${text.pairLead}</p>
${wrong === undefined ? '' : html`<p class="wrong" role="alert">${wrong}</p>`}
<form method="post" action="/network/pair">
<label>${text.code} <input name="code" value="${code}" required autocomplete="off" autocapitalize="characters" spellcheck="false"></label>
<label>${text.deviceName} <input name="name" required maxlength="80" autocomplete="off" placeholder="${text.deviceNameSuch}"></label>
<button>${text.pairTitle}</button>
</form>`;
  return plainPage(context, text.pairTitle, body, status);
}

/** Only on the computer itself. */
function devicePages(pages: Hono, network: Network, receipts?: ReadReceipts): void {
  const ownUser: MiddlewareHandler = async (c, next) =>
    isOwnUser(network, c)
      ? next()
      : plainPage(c, pageText(c).devicesTitle, html`<p>${pageText(c).devicesElsewhere}</p>`, 403);
  pages.use('/devices', ownUser);
  pages.use('/devices/*', ownUser);
  pages.use('/audit', ownUser);
  if (receipts) pages.get('/audit', (c) => auditPage(c, receipts, '/network/devices'));
  pages.get('/devices', (c) => devicesPage(c, network));
  pages.post('/devices/invite', (c) =>
    devicesPage(c, network, invited(c, network, invite(network.folder, Date.parse(network.shell.now())))),
  );
  pages.post('/devices/:id{[0-9a-f]+}/revoke', (c) => {
    if (c.req.param('id').length === 16) network.devices.revoke(c.req.param('id'));
    return c.redirect('/network/devices', 303);
  });
  pages.post('/devices/:id{[0-9a-f]+}/calendar', (c) => {
    const key = c.req.param('id').length === 16 ? network.devices.renewCalendarKey(c.req.param('id')) : null;
    if (key === null) return c.redirect('/network/devices', 303);
    return devicesPage(c, network, calendarLink(c, network, key));
  });
}

function devicesPage(context: Context, network: Network, news: Markup | '' = '') {
  const devices = network.devices.list();
  const text = pageText(context);
  const list = devices.map((device) => deviceItem(context, device));
  const body = html`${news}
<form method="post" action="/network/devices/invite"><button>${text.letIn}</button></form>
<h2>${text.paired}</h2>
${devices.length === 0 ? html`<p>${text.noneYet}</p>` : html`<ul>${list}</ul>`}
<p>${text.linkIsSecret} ${text.linkOutside} <a href="/api/v1/calendar.ics">calendar.ics</a></p>
<p><a href="/network/audit">${text.auditTitle}</a></p>
<h2>${text.offlineTitle}</h2>
<p>${text.offline} <a href="/network/certificate">${text.offlineHow}</a></p>
<p><a href="/">${text.backToPage}</a></p>`;
  return plainPage(context, text.devicesTitle, body);
}

function deviceItem(context: Context, { id, name, pairedAt, lastSeenAt }: Device): Markup {
  const text = pageText(context);
  const days = text.pairedSince(pageDay(context, pairedAt), pageDay(context, lastSeenAt));
  return html`<li><strong>${name}</strong>, ${days}<br>
<form class="inline" method="post" action="/network/devices/${id}/calendar"><button class="quiet">${text.newCalendarLink}</button></form>
<form class="inline" method="post" action="/network/devices/${id}/revoke"><button class="quiet">${text.shutOut}</button></form></li>`;
}

function invited(context: Context, network: Network, { code }: Invitation): Markup {
  const text = pageText(context);
  const address = pairAddress(network, code);
  return html`<h2>${text.letIn}</h2>
<p class="code">${code}</p>
<p>${text.goodOnce}</p>
${raw(renderSVG(address, { border: 2 }))}
<p class="address">${address}</p>`;
}

/** Where a device goes to be paired. */
export function pairAddress({ addresses, publicUrl }: Network, code: string): string {
  const base = publicUrl ?? addresses.http[0] ?? 'http://localhost:4180/';
  return `${new URL('/network/pair', base)}?code=${code}`;
}
