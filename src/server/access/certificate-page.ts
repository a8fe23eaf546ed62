/** The page that leads through installing the household's authority on a phone. */
import type { Hono } from 'hono';
import { html } from 'hono/html';
import type { Network } from './network.ts';
import { plainPage } from './plain-page.ts';
import type { PageText } from '../text/en.ts';
import { pageText } from '../text/page-text.ts';

export function certificatePage(pages: Hono, network: Network): void {
  pages.get('/authority.crt', (c) => {
    const { authority } = network.addresses;
    if (!authority) return c.notFound();
    return c.body(authority.pem, 200, {
      'Content-Type': 'application/x-x509-ca-cert',
      'Content-Disposition': 'attachment; filename="flylarder.crt"',
    });
  });
  pages.get('/certificate', (c) => plainPage(c, pageText(c).certificateTitle, instructions(pageText(c), network)));
}

function instructions(text: PageText, { addresses: { authority, https } }: Network) {
  if (!authority) return html`<p>${text.certificateAtProxy}</p>`;
  const systems = text.installing.map(([system, steps]) => html`<strong>${system}</strong> ${steps}<br>`);
  return html`<p>${text.certificateLead}</p>
<ol>
<li><a href="/network/authority.crt">${text.downloadCertificate}</a></li>
<li>${systems}</li>
<li>${text.fingerprint}<br><span class="address">${authority.fingerprint}</span></li>
<li>${text.thenOpen} ${https.map((address) => html`<a href="${address}">${address}</a> `)}</li>
</ol>
<p>${text.undoCertificate}</p>`;
}
