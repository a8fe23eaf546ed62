/** A paired device's own page for its calendar's private link: a new one, or none any more. */
import type { Context, Hono } from 'hono';
import { getCookie } from 'hono/cookie';
import { html } from 'hono/html';
import { deviceCookie, isOwnUser } from './device-access.ts';
import type { Device } from './devices.ts';
import { pageText } from '../text/page-text.ts';
import type { Network } from './network.ts';
import { type Markup, plainPage } from './plain-page.ts';

/** `/calendar`, under /network. */
export function calendarPages(pages: Hono, network: Network): void {
  pages.get('/calendar', (c) => ofDevice(network, c, () => calendarPage(c, '')));
  pages.post('/calendar', (c) =>
    ofDevice(network, c, ({ id }) => {
      const key = network.devices.renewCalendarKey(id);
      return calendarPage(c, key === null ? '' : calendarLink(c, network, key));
    }),
  );
  pages.post('/calendar/end', (c) =>
    ofDevice(network, c, ({ id }) => {
      network.devices.endCalendarKey(id);
      return calendarPage(c, html`<p role="status">${pageText(c).linkEnded}</p>`);
    }),
  );
}

/** The computer itself has its list of devices; a device that is not paired is paired first. */
function ofDevice(
  network: Network,
  context: Context,
  answer: (device: Device) => Response | Promise<Response>,
): Response | Promise<Response> {
  if (isOwnUser(network, context)) return context.redirect('/network/devices', 303);
  const device = network.devices.withToken(getCookie(context, deviceCookie));
  return device ? answer(device) : context.redirect('/network/pair', 303);
}

function calendarPage(context: Context, news: Markup | '') {
  const text = pageText(context);
  const body = html`${news}
<p>${text.linkLead}</p>
<form class="inline" method="post" action="/network/calendar"><button>${text.newCalendarLink}</button></form>
<form class="inline" method="post" action="/network/calendar/end"><button class="quiet">${text.endLink}</button></form>
<p>${text.linkOutside} <a href="/api/v1/calendar.ics">calendar.ics</a></p>
<p><a href="/">${text.backToPage}</a></p>`;
  return plainPage(context, text.calendarTitle, body);
}

/** Shown once; only a digest of the key is kept. */
export function calendarLink(context: Context, { addresses, publicUrl }: Network, key: string): Markup {
  const text = pageText(context);
  const base = publicUrl ?? addresses.http[0] ?? 'http://localhost:4180/';
  return html`<h2>${text.calendarTitle}</h2>
<p class="address">${String(new URL('/api/v1/calendar.ics', base))}?key=${key}</p>
<p>${text.linkOnce}</p>`;
}
