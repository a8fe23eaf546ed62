/** The routes that set plans side by side: one change each, what rules cost, and what changed since. */
import { z } from '@hono/zod-openapi';
import {
  changeForms,
  compareAnswer,
  parseChanges,
  planChangesAnswer,
  planGapAnswer,
  rulePricesAnswer,
} from '../../app/index.ts';
import type { Api, ApiContext } from '../api-context.ts';
import { answerRoute } from './answer-routes.ts';
import { answered } from './household-question.ts';
import { dayText, horizonQuery } from './question-query.ts';

/** `what` is a list such as `animals:1.25,warmer:2`; the usual changes when left out. */
const compareRoute = answerRoute(
  '/compare',
  'The plan as it is beside plans with one change each, in the same simulated worlds',
  horizonQuery.extend({
    what: z
      .string()
      .max(1000)
      .optional()
      .openapi({ description: `A list of changes: ${changeForms.join(', ')}` }),
  }),
  compareAnswer,
);

export function addCompareRoutes(api: Api, context: ApiContext): void {
  api.openapi(
    answerRoute(
      '/plan/changes',
      'Which firm jobs changed since the plan of an earlier day, and why',
      horizonQuery.extend({ since: dayText }),
      planChangesAnswer,
    ),
    async (c) => {
      return c.json(await answered(context, 'plan-changes', c.req.valid('query')), 200);
    },
  );
  api.openapi(compareRoute, async (c) => {
    const { what, ...query } = c.req.valid('query');
    const changes = what === undefined ? null : parseChanges(what);
    if (changes && !changes.ok) return c.json({ problems: changes.problems }, 400);
    const asked = changes ? { ...query, changes: changes.value } : query;
    const answer = await answered(context, 'compare', asked);
    return answer.ok ? c.json(answer.value, 200) : c.json({ problems: answer.problems }, 400);
  });
  api.openapi(
    answerRoute(
      '/compare/rules',
      'What each rule costs in a quarter, and the second-best plan',
      horizonQuery,
      rulePricesAnswer,
    ),
    async (c) => c.json(await answered(context, 'rule-prices', c.req.valid('query')), 200),
  );
  api.openapi(
    answerRoute(
      '/plan/bounds',
      "How near the best a quarter's plan is, and where its cups go",
      horizonQuery,
      planGapAnswer,
    ),
    async (c) => c.json(await answered(context, 'plan-bounds', c.req.valid('query')), 200),
  );
}
