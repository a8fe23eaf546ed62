/** Keeping a device's copy of the logbook in step: what it has, what it sends, what it lacks. */
import { createRoute, type z } from '@hono/zod-openapi';
import { bodyLimit } from 'hono/body-limit';
import { checkEntry } from '../../logbook/index.ts';
import type { Store } from '../../store/store.ts';
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
  type Refusal,
  storeEpoch,
} from '../../sync/index.ts';
import { type Caller, callerOf } from '../access/caller.ts';
import { roleProblem } from '../access/role-rules.ts';
import { sentBy } from '../access/sent-by.ts';
import type { Api, ApiContext } from '../api-context.ts';
import { problemResponse, problemResponses } from '../problem-answer.ts';

const mostBodyBytes = 4 * 1024 * 1024;

export function addSyncRoutes(api: Api, context: ApiContext): void {
  const { household, shell } = context;
  const { store } = household;
  const epoch = () => storeEpoch(store, shell.newEntryId);
  api.use('/sync/*', limited);
  api.openapi(route('offer', 'Which of these entries are not here yet', offerRequest, offerReply), async (c) =>
    c.json(await answerOffer(store, await epoch(), c.req.valid('json')), 200),
  );
  api.openapi(
    route('push', 'Take these entries; each is refused or kept by itself', pushRequest, pushReply),
    async (c) => {
      const caller = callerOf(c);
      const { allowed, refused } = await divided(caller, c.req.valid('json').entries, store);
      const sent = allowed.flatMap((value) => (hasId(value) ? [value] : []));
      const reply = await sentBy(context, caller, sent, async () => answerPush(store, await epoch(), allowed));
      await household.catchUp();
      return c.json({ ...reply, refused: [...refused, ...reply.refused] }, 200);
    },
  );
  api.openapi(route('pull', 'The entries after a cursor', pullRequest, pullReply), async (c) =>
    c.json(await answerPull(store, await epoch(), c.req.valid('json')), 200),
  );
}

/** What this caller may write, and what not with the reason; what is no entry is left to the answer. */
async function divided(caller: Caller, values: readonly unknown[], store: Store) {
  const allowed: unknown[] = [];
  const refused: Refusal[] = [];
  for (const value of values) {
    const entry = caller.role === 'keeper' ? null : checkEntry(value, 'entry');
    const problem = entry?.ok ? await roleProblem(caller, entry.value, store) : null;
    if (entry?.ok && problem) refused.push({ id: entry.value.id, problems: [problem] });
    else allowed.push(value);
  }
  return { allowed, refused };
}

function hasId(value: unknown): value is { id: string } {
  return typeof value === 'object' && value !== null && 'id' in value && typeof value.id === 'string';
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
