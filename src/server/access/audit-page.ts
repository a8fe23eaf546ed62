/** Who recorded what, when and from where, as a page; for those who may do everything. */
import type { Context } from 'hono';
import { html } from 'hono/html';
import { entrySentence, type Names } from '../../logbook/index.ts';
import type { ReadReceipts, Receipt } from '../../store/receipts.ts';
import { plainPage } from './plain-page.ts';

const rows = 100;

/** @param back the path of the page that leads here. */
export async function auditPage(context: Context, receipts: ReadReceipts, back: string) {
  const asked = Number(context.req.query('before') ?? Number.MAX_SAFE_INTEGER);
  const before = Number.isSafeInteger(asked) && asked > 0 ? asked : Number.MAX_SAFE_INTEGER;
  const found = await receipts(before, rows);
  const last = found.at(-1)?.cursor;
  const body = html`<ol>${found.map(line)}</ol>
${found.length === rows ? html`<p><a href="/network/audit?before=${last}">Older</a></p>` : ''}
<p><a href="${back}">Back</a></p>`;
  return plainPage(context, 'Who recorded what', body);
}

const noNames: Names = {};

function line({ entry, person, address, receivedAt }: Receipt) {
  const sender = person === null ? 'on the server itself' : `${person} from ${address}`;
  return html`<li>${receivedAt ?? entry.recordedAt}: ${sender}, signed "${entry.by}"<br>${entry.on}: ${entrySentence(entry, noNames)}</li>`;
}
