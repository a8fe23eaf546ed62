/** Who recorded what, when and from where; for keepers. */
import type { Context } from 'hono';
import { html } from 'hono/html';
import { entrySentence, type Names } from '../../logbook/index.ts';
import type { Receipt } from '../../store/postgres/index.ts';
import { plainPage } from '../access/plain-page.ts';
import type { Facility } from './facility.ts';
import { entrantOf } from './sessions.ts';

const rows = 100;

export async function auditPage(context: Context, facility: Facility) {
  const entrant = await entrantOf(facility, context);
  if (!entrant) return context.redirect('/network/sign-in', 303);
  if (entrant.caller.role !== 'keeper')
    return plainPage(context, 'Who recorded what', html`<p>For keepers only.</p>`, 403);
  const asked = Number(context.req.query('before') ?? Number.MAX_SAFE_INTEGER);
  const before = Number.isSafeInteger(asked) && asked > 0 ? asked : Number.MAX_SAFE_INTEGER;
  const receipts = await facility.options.logbooks.receipts(entrant.household, before, rows);
  const last = receipts.at(-1)?.cursor;
  const body = html`<ol>${receipts.map(line)}</ol>
${receipts.length === rows ? html`<p><a href="/network/audit?before=${last}">Older</a></p>` : ''}
<p><a href="/network/account">Back</a></p>`;
  return plainPage(context, 'Who recorded what', body);
}

const noNames: Names = {};

function line({ entry, person, address, receivedAt }: Receipt) {
  const sender = person === null ? 'on the server itself' : `${person} from ${address}`;
  return html`<li>${receivedAt ?? entry.recordedAt}: ${sender}, signed "${entry.by}"<br>${entry.on}: ${entrySentence(entry, noNames)}</li>`;
}
