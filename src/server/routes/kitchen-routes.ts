/** The routes for the kitchen's stock and costs: shopping, the ledger. */
import { createRoute, z } from '@hono/zod-openapi';
import { ledgerAnswer, shopping, shoppingAnswer } from '../../app/index.ts';
import type { Api, ApiContext } from '../api-context.ts';
import { problemResponses } from '../problem-answer.ts';
import { answered, askedOf } from './household-question.ts';
import { dayText, questionQuery } from './question-query.ts';

const oneSeed = questionQuery.omit({ scenarios: true });

const shoppingRoute = createRoute({
  method: 'get',
  path: '/shopping',
  summary: 'When to mix, wash and shop for the planned starts, and the list that lasts until a day',
  request: { query: oneSeed.extend({ until: dayText.optional(), recipe: z.string().optional() }) },
  responses: {
    200: { description: 'Jobs and list', content: { 'application/json': { schema: shoppingAnswer } } },
    ...problemResponses,
  },
});

const ledgerRoute = createRoute({
  method: 'get',
  path: '/ledger',
  summary: 'Costs and yield week by week, from the logbook',
  request: { query: oneSeed },
  responses: {
    200: { description: 'The ledger', content: { 'application/json': { schema: ledgerAnswer } } },
    ...problemResponses,
  },
});

export function addKitchenRoutes(api: Api, context: ApiContext): void {
  api.openapi(shoppingRoute, async (c) => {
    const { until, recipe, ...query } = c.req.valid('query');
    const { facts, question } = askedOf(context, query);
    // The jobs are the plan's whatever it promises: one scenario is enough.
    const { jobs } = await answered(context, 'plan', { ...query, scenarios: 1 });
    const answer = shopping(facts, jobs, {
      on: question.on,
      ...(until === undefined ? {} : { until }),
      ...(recipe === undefined ? {} : { recipe }),
    });
    return answer.ok ? c.json(answer.value, 200) : c.json({ problems: answer.problems }, 400);
  });
  api.openapi(ledgerRoute, async (c) => c.json(await answered(context, 'ledger', c.req.valid('query')), 200));
}
