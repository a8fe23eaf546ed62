/** Who recorded what, when and from where, as a page; for those who may do everything. */
import type { Context } from 'hono';
import { html } from 'hono/html';
import { entryInWords } from '../../app/index.ts';
import type { ReadReceipts, Receipt } from '../../store/receipts.ts';
import { pageDay, pageLanguage, pageText } from '../text/page-text.ts';
import { plainPage } from './plain-page.ts';

const rows = 100;

/** @param back the path of the page that leads here. */
export async function auditPage(context: Context, receipts: ReadReceipts, back: string) {
  const asked = Number(context.req.query('before') ?? Number.MAX_SAFE_INTEGER);
  const before = Number.isSafeInteger(asked) && asked > 0 ? asked : Number.MAX_SAFE_INTEGER;
  const found = await receipts(before, rows);
  const last = found.at(-1)?.cursor;
  const text = pageText(context);
  const body = html`<ol>${found.map((each) => line(context, each))}</ol>
${found.length === rows ? html`<p><a href="/network/audit?before=${last}">${text.older}</a></p>` : ''}
<p><a href="${back}">${text.back}</a></p>`;
  return plainPage(context, text.auditTitle, body);
}

function line(context: Context, { entry, person, address, receivedAt }: Receipt) {
  const text = pageText(context);
  const sender = person === null ? text.onServer : text.sender(person, address ?? '?');
  const said = entryInWords(entry, { language: pageLanguage(context) });
  return html`<li>${receivedAt ?? entry.recordedAt}: ${sender}, ${text.signed(entry.by)}<br>${pageDay(context, entry.on)}: ${said}</li>`;
}
