/** The routes that say what is there: the facts of the logbook, and whether the server is well. */
import { createRoute, z } from '@hono/zod-openapi';
import { callerOf, roles } from '../access/caller.ts';
import type { Api, ApiContext } from '../api-context.ts';
import { problemResponses } from '../problem-answer.ts';
import { dayText } from './question-query.ts';

const health = createRoute({
  method: 'get',
  path: '/health',
  summary: 'Is the server well, and how much does its logbook hold',
  responses: {
    200: {
      description: 'It is',
      content: {
        'application/json': {
          schema: z.object({
            status: z.literal('ok'),
            version: z.string(),
            entries: z.int(),
            cursor: z.int(),
            today: z.string(),
          }),
        },
      },
    },
  },
});

const callerRoute = createRoute({
  method: 'get',
  path: '/caller',
  summary: 'Who is asking, what they may do, and where they see to their access',
  responses: {
    200: {
      description: 'The caller',
      content: {
        'application/json': {
          schema: z.object({ name: z.string(), role: z.enum(roles), accountPage: z.string().nullable() }),
        },
      },
    },
  },
});

const factsRoute = createRoute({
  method: 'get',
  path: '/facts',
  summary: 'What the logbook says, after amendments',
  request: { query: z.strictObject({ until: dayText.optional() }) },
  responses: {
    200: { description: 'The facts', content: { 'application/json': { schema: z.looseObject({}) } } },
    ...problemResponses,
  },
});

export function addStateRoutes(api: Api, { household, shell, version, accountPage }: ApiContext): void {
  api.openapi(callerRoute, (c) => {
    const { name, role } = callerOf(c);
    return c.json({ name, role, accountPage: accountPage ?? null }, 200);
  });
  api.openapi(health, (c) =>
    c.json(
      {
        status: 'ok' as const,
        version,
        entries: household.count,
        cursor: household.lastCursor,
        today: shell.todayIn(household.facts().household.timeZone),
      },
      200,
    ),
  );
  api.openapi(factsRoute, (c) => c.json({ ...household.facts(c.req.valid('query').until) }, 200));
}
