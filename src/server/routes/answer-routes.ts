/** The routes that answer about the household: today, forecast, plan. */
import { createRoute, z } from '@hono/zod-openapi';
import { forecast, forecastAnswer, plan, planAnswer, type Question, today, todayAnswer } from '../../app/index.ts';
import type { Facts } from '../../logbook/index.ts';
import type { Api, ApiContext } from '../api-context.ts';
import { problemResponses } from '../problem-answer.ts';
import { horizonQuery, questionQuery } from './question-query.ts';

/** `nothing` answers as if no cup were started or bought from now on. */
const forecastQuery = horizonQuery.extend({ starts: z.enum(['policy', 'nothing']).optional() });

export function addAnswerRoutes(api: Api, context: ApiContext): void {
  api.openapi(
    answerRoute('/today', 'What to do today, and the state of each living cup', questionQuery, todayAnswer),
    (c) => c.json(answered(context, 'today', c.req.valid('query'), today), 200),
  );
  api.openapi(
    answerRoute('/forecast', 'Flies wanted, emerging and on hand on each coming day', forecastQuery, forecastAnswer),
    (c) => c.json(answered(context, 'forecast', c.req.valid('query'), forecast), 200),
  );
  api.openapi(answerRoute('/plan', 'The dated jobs that keep the supply unbroken', horizonQuery, planAnswer), (c) =>
    c.json(answered(context, 'plan', c.req.valid('query'), plan), 200),
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

/** A day before today is answered as it was known to have happened by then. */
function answered<Query extends Partial<Question>, Answer>(
  { household, shell }: ApiContext,
  name: string,
  query: Query,
  ask: (facts: Facts, question: Query & Question) => Answer,
): Answer {
  const now = shell.todayIn(household.facts().household.timeZone);
  const question: Query & Question = { ...query, on: query.on ?? now, seed: query.seed ?? 1 };
  const facts = household.facts(question.on < now ? question.on : undefined);
  return household.answer(`${name} ${JSON.stringify(question)}`, () => ask(facts, question));
}
