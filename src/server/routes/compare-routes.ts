/** The routes that set plans side by side: one change each, what rules cost, and what changed since. */
import { z } from '@hono/zod-openapi';
import {
  changeForms,
  compare,
  compareAnswer,
  parseChanges,
  planChanges,
  planChangesAnswer,
  planGap,
  planGapAnswer,
  type Question,
  rulePrices,
  rulePricesAnswer,
  solverOf,
} from '../../app/index.ts';
import type { Facts } from '../../logbook/index.ts';
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
      const { since, ...query } = c.req.valid('query');
      const before = context.household.facts(since);
      const changes = (facts: Facts, question: Question) => planChanges(before, facts, since, question);
      return c.json(await answered(context, `plan-changes ${since}`, query, changes), 200);
    },
  );
  api.openapi(compareRoute, async (c) => {
    const { what, ...query } = c.req.valid('query');
    const changes = what === undefined ? null : parseChanges(what);
    if (changes && !changes.ok) return c.json({ problems: changes.problems }, 400);
    const answer = await answered(context, `compare ${what ?? ''}`, query, (facts, question) =>
      compare(facts, { ...question, ...(changes ? { changes: changes.value } : {}) }),
    );
    return answer.ok ? c.json(answer.value, 200) : c.json({ problems: answer.problems }, 400);
  });
  api.openapi(
    answerRoute(
      '/compare/rules',
      'What each rule costs in a quarter, and the second-best plan',
      horizonQuery,
      rulePricesAnswer,
    ),
    async (c) => c.json(await answered(context, 'rule-prices', c.req.valid('query'), rulePrices), 200),
  );
  api.openapi(
    answerRoute(
      '/plan/bounds',
      "How near the best a quarter's plan is, and where its cups go",
      horizonQuery,
      planGapAnswer,
    ),
    async (c) => {
      // The solver is large, and nothing else needs it.
      const solve = solverOf(await (await import('highs')).default());
      const gap = (facts: Facts, question: Question) => planGap(facts, question, solve);
      return c.json(await answered(context, 'plan-bounds', c.req.valid('query'), gap), 200);
    },
  );
}
