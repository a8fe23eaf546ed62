/** The routes that answer about the household: today, forecast, plan. */
import { createRoute, z } from '@hono/zod-openapi';
import {
  changeForms,
  compare,
  compareAnswer,
  forecast,
  forecastAnswer,
  hindcast,
  hindcastAnswer,
  learned,
  learnedAnswer,
  parseChanges,
  plan,
  planAnswer,
  planChanges,
  planChangesAnswer,
  type Question,
  rulePrices,
  rulePricesAnswer,
  today,
  todayAnswer,
} from '../../app/index.ts';
import type { Facts } from '../../logbook/index.ts';
import type { Api, ApiContext } from '../api-context.ts';
import { problemResponses } from '../problem-answer.ts';
import { answered } from './household-question.ts';
import { wholeNumberText } from './number-query.ts';
import { dayText, horizonQuery, questionQuery } from './question-query.ts';

/** `nothing` answers as if no cup were started or bought from now on. */
const forecastQuery = horizonQuery.extend({ starts: z.enum(['policy', 'nothing']).optional() });

/** `weeks` back. */
const hindcastQuery = questionQuery
  .omit({ scenarios: true })
  .extend({ weeks: wholeNumberText(1, 52, 'Weeks to look back; 13 when left out').optional() });

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

export function addAnswerRoutes(api: Api, context: ApiContext): void {
  api.openapi(
    answerRoute('/today', 'What to do today, and the state of each living cup', questionQuery, todayAnswer),
    async (c) => c.json(await answered(context, 'today', c.req.valid('query'), today), 200),
  );
  api.openapi(
    answerRoute('/forecast', 'Flies wanted, emerging and on hand on each coming day', forecastQuery, forecastAnswer),
    async (c) => c.json(await answered(context, 'forecast', c.req.valid('query'), forecast), 200),
  );
  api.openapi(
    answerRoute('/plan', 'The dated jobs that keep the supply unbroken', horizonQuery, planAnswer),
    async (c) => c.json(await answered(context, 'plan', c.req.valid('query'), plan), 200),
  );
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
      '/learned',
      "Each strain's pace, yield and failures as the logbook has taught them",
      questionQuery,
      learnedAnswer,
    ),
    async (c) => c.json(await answered(context, 'learned', c.req.valid('query'), learned), 200),
  );
  addHindcastRoute(api, context);
}

/** Looking back needs the entries themselves: when each was written. */
function addHindcastRoute(api: Api, context: ApiContext): void {
  api.openapi(
    answerRoute('/hindcast', 'What was forecast in past weeks, and what came', hindcastQuery, hindcastAnswer),
    async (c) => {
      const entries = context.household.known();
      return c.json(
        await answered(context, 'hindcast', c.req.valid('query'), (_, question) => hindcast(entries, question)),
        200,
      );
    },
  );
}

function answerRoute<Query extends z.ZodObject, Answer extends z.ZodType>(
  path: string,
  summary: string,
  query: Query,
  answer: Answer,
) {
  return createRoute({
    method: 'get',
    path,
    summary,
    request: { query },
    responses: {
      200: { description: summary, content: { 'application/json': { schema: answer } } },
      ...problemResponses,
    },
  });
}
