/** Keeping a device's copy of the logbook in step: what it has, what it sends, what it lacks. */
import { createRoute, type z } from '@hono/zod-openapi';
import { bodyLimit } from 'hono/body-limit';
import {
  answerOffer,
  answerPull,
  answerPush,
  offerReply,
  offerRequest,
  pullReply,
  pullRequest,
  pushReply,
  pushRequest,
  storeEpoch,
} from '../../sync/index.ts';
import type { Api, ApiContext } from '../api-context.ts';
import { problemResponse, problemResponses } from '../problem-answer.ts';

const mostBodyBytes = 4 * 1024 * 1024;

export function addSyncRoutes(api: Api, { household, shell }: ApiContext): void {
  const { store } = household;
  const epoch = () => storeEpoch(store, shell.newEntryId);
  api.use('/sync/*', limited);
  api.openapi(route('offer', 'Which of these entries are not here yet', offerRequest, offerReply), async (c) =>
    c.json(await answerOffer(store, await epoch(), c.req.valid('json')), 200),
  );
  api.openapi(
    route('push', 'Take these entries; each is refused or kept by itself', pushRequest, pushReply),
    async (c) => {
      const reply = await answerPush(store, await epoch(), c.req.valid('json').entries);
      await household.catchUp();
      return c.json(reply, 200);
    },
  );
  api.openapi(route('pull', 'The entries after a cursor', pullRequest, pullReply), async (c) =>
    c.json(await answerPull(store, await epoch(), c.req.valid('json')), 200),
  );
}

const limited = bodyLimit({
  maxSize: mostBodyBytes,
  onError: (c) =>
    problemResponse(c, 413, [
      { where: 'body', found: 'a body that is too large', expected: `at most ${mostBodyBytes} bytes` },
    ]),
});

function route<Request extends z.ZodType, Reply extends z.ZodType>(
  name: string,
  summary: string,
  request: Request,
  reply: Reply,
) {
  return createRoute({
    method: 'post',
    path: `/sync/${name}`,
    summary,
    request: { body: { required: true, content: { 'application/json': { schema: request } } } },
    responses: {
      200: { description: summary, content: { 'application/json': { schema: reply } } },
      ...problemResponses,
    },
  });
}
