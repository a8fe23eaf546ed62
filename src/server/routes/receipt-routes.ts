/** Who recorded what, when and from where; for keepers. */
import { createRoute, z } from '@hono/zod-openapi';
import { entryInWords } from '../../app/index.ts';
import { callerOf } from '../access/caller.ts';
import type { Api, ApiContext } from '../api-context.ts';
import { writeProblemResponses } from '../problem-answer.ts';
import { wholeNumberText } from './number-query.ts';
import { telling } from './question-query.ts';

const receipt = z.object({
  cursor: z.int(),
  id: z.string(),
  on: z.string(),
  kind: z.string(),
  sentence: z.string(),
  by: z.string().openapi({ description: 'Whom the entry names' }),
  person: z.string().nullable().openapi({ description: 'Who sent it; null on the server itself' }),
  address: z.string().nullable(),
  receivedAt: z.string().nullable(),
});

const receiptsRoute = createRoute({
  method: 'get',
  path: '/receipts',
  summary: 'Who recorded what, when and from where, newest first; for keepers',
  request: {
    query: z.strictObject({
      before: wholeNumberText(1, Number.MAX_SAFE_INTEGER, 'Only entries before this cursor').optional(),
      ...telling,
      limit: wholeNumberText(1, 1000, 'At most so many; 100 when left out').optional(),
    }),
  },
  responses: {
    200: { description: 'The receipts', content: { 'application/json': { schema: z.array(receipt) } } },
    ...writeProblemResponses,
  },
});

/** Only where receipts are kept. */
export function addReceiptRoutes(api: Api, { receipts }: ApiContext): void {
  if (!receipts) return;
  api.openapi(receiptsRoute, async (c) => {
    if (callerOf(c).role !== 'keeper') {
      return c.json({ problems: [{ where: 'receipts', found: 'no keeper', expected: 'a keeper to ask' }] }, 403);
    }
    const { before = Number.MAX_SAFE_INTEGER, limit = 100, ...asked } = c.req.valid('query');
    const found = (await receipts(before, limit)).map(({ cursor, entry, person, address, receivedAt }) => {
      const { id, on, kind, by } = entry;
      return { cursor, id, on, kind, sentence: entryInWords(entry, asked), by, person, address, receivedAt };
    });
    return c.json(found, 200);
  });
}
