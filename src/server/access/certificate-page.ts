/** The page that leads through installing the household's authority on a phone. */
import type { Hono } from 'hono';
import { html } from 'hono/html';
import type { Network } from './network.ts';
import { plainPage } from './plain-page.ts';

export function certificatePage(pages: Hono, network: Network): void {
  pages.get('/authority.crt', (c) => {
    const { authority } = network.addresses;
    if (!authority) return c.notFound();
    return c.body(authority.pem, 200, {
      'Content-Type': 'application/x-x509-ca-cert',
      'Content-Disposition': 'attachment; filename="flylarder.crt"',
    });
  });
  pages.get('/certificate', (c) => plainPage(c, 'HTTPS for this device', instructions(network)));
}

function instructions({ addresses: { authority, https } }: Network) {
  if (!authority) {
    return html`<p>HTTPS is the business of the proxy in front of this server. Open its address.</p>`;
  }
  return html`<p>Everything works over plain HTTP except three things that browsers keep for HTTPS: use without
the network, the camera, and installing the page on the home screen. The computer has made a certificate
authority of its own for them. It can vouch only for addresses of home networks, never for a site of the
internet, and its key stays in the household's folder.</p>
<ol>
<li><a href="/network/authority.crt">Download the certificate</a>.</li>
<li><strong>iPhone, iPad:</strong> open Settings, Profile Downloaded, Install. Then General, About,
Certificate Trust Settings: switch it on.<br>
<strong>Android:</strong> open Settings, search for "CA certificate", choose Install anyway, and pick the file.<br>
<strong>Firefox on a computer:</strong> Settings, Certificates, Authorities, Import.<br>
<strong>Windows, macOS, Chromium:</strong> open the file and put it with the trusted root authorities.</li>
<li>Compare the SHA-256 fingerprint before you agree:<br><span class="address">${authority.fingerprint}</span></li>
<li>Open ${https.map((address) => html`<a href="${address}">${address}</a> `)} and pair there once more.</li>
</ol>
<p>To undo it, remove "Flylarder of this household" from the same place. The names of buttons differ between
versions of these systems.</p>`;
}
