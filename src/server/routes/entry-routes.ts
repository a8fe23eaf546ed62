/** The logbook itself over HTTP: read as JSON Lines after a cursor, written as a batch, whole or not at all. */
import { createRoute, z } from '@hono/zod-openapi';
import { bodyLimit } from 'hono/body-limit';
import { streamText } from 'hono/streaming';
import { canonicalText, entryJsonSchemas } from '../../logbook/index.ts';
import { appendAs } from '../access/append-as.ts';
import { callerOf } from '../access/caller.ts';
import type { Api, ApiContext } from '../api-context.ts';
import { readBatch } from '../entry-batch.ts';
import { problemResponse, problemResponses, problemsOf, writeProblemResponses } from '../problem-answer.ts';

const mostBodyBytes = 16 * 1024 * 1024;
const jsonLines = 'application/x-ndjson';

const writeRoute = createRoute({
  method: 'post',
  path: '/entries',
  summary: 'Record entries: all of them or none',
  description:
    'An entry without id, recordedAt and by is completed here. An entry that is there already is passed over, so a batch may be sent again.',
  request: {
    body: {
      required: true,
      content: {
        'application/json': { schema: z.object({ entries: z.array(z.looseObject({ kind: z.string() })).min(1) }) },
        [jsonLines]: { schema: z.string() },
      },
    },
  },
  responses: {
    201: {
      description: 'Safely kept',
      content: {
        'application/json': {
          schema: z.object({ added: z.int(), alreadyThere: z.int(), cursor: z.int(), ids: z.array(z.string()) }),
        },
      },
    },
    ...writeProblemResponses,
    413: { ...problemResponses[400], description: `The body is larger than ${mostBodyBytes} bytes` },
    415: { ...problemResponses[400], description: `The body is neither application/json nor ${jsonLines}` },
  },
});

const readQuery = z.strictObject({
  after: z
    .string()
    .regex(/^\d{1,15}$/, { error: 'a cursor: a whole number' })
    .transform(Number)
    .optional()
    .openapi({ type: 'integer', minimum: 0, description: 'Only entries after this cursor' }),
});

const readRoute = createRoute({
  method: 'get',
  path: '/entries',
  summary: 'The logbook as JSON Lines, oldest first; the header Flylarder-Cursor says how far it goes',
  request: { query: readQuery },
  responses: {
    200: { description: 'One entry a line', content: { [jsonLines]: { schema: z.string() } } },
    ...problemResponses,
  },
});

const tooLarge = bodyLimit({
  maxSize: mostBodyBytes,
  onError: (c) =>
    problemResponse(c, 413, [
      {
        where: 'body',
        found: 'a body that is too large',
        expected: `at most ${mostBodyBytes} bytes; send several batches`,
      },
    ]),
});

export function addEntryRoutes(api: Api, context: ApiContext): void {
  const { household } = context;
  api.openAPIRegistry.registerPath(writeRoute);
  api.post('/entries', tooLarge, async (c) => {
    const batch = await readBatch(c.req, context.shell, callerOf(c).name);
    if (!batch.ok) return problemResponse(c, batch.problems[0]?.where === 'Content-Type' ? 415 : 400, batch.problems);
    const { entries, where } = batch.value;
    const kept = await appendAs(context, callerOf(c), entries, where);
    if (!kept.ok) return problemResponse(c, kept.status, kept.problems);
    return c.json({ ...kept.report, cursor: household.lastCursor, ids: entries.map(({ id }) => id) }, 201);
  });

  api.openAPIRegistry.registerPath(readRoute);
  api.get('/entries', (c) => {
    const query = readQuery.safeParse(c.req.query());
    if (!query.success) return problemResponse(c, 400, problemsOf(query.error, 'query', c.req.query()));
    const { after = 0 } = query.data;
    const last = household.lastCursor;
    c.header('Content-Type', jsonLines);
    c.header('Flylarder-Cursor', String(last));
    return streamText(c, async (stream) => {
      for await (const { cursor, entry } of household.store.entries(after)) {
        if (cursor > last || stream.aborted) return;
        await stream.write(`${canonicalText(entry)}\n`);
      }
    });
  });

  api.get('/entry-schemas', (c) => c.json(entryJsonSchemas()));
}
