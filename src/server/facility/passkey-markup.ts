/** What a page needs so that its buttons for passkeys work, and can say what went wrong. */
import { html } from 'hono/html';
import type { PageText } from '../text/en.ts';

export const passkeyScript = '/network/passkeys/script.js';

/** The line for what went wrong; it carries the words of the page's language for the program. */
export function passkeyWrong(text: PageText) {
  return html`<p class="wrong" role="alert" id="passkey-wrong" hidden data-cancelled="${text.keyCancelled}" data-is-here="${text.keyIsHere}" data-not-taken="${text.notTaken}"></p>`;
}
