/** The routes that answer about the household: today, forecast, plan. */
import { createRoute, z } from '@hono/zod-openapi';
import { forecastAnswer, hindcastAnswer, learnedAnswer, planAnswer, todayAnswer } from '../../app/index.ts';
import type { Api, ApiContext } from '../api-context.ts';
import { problemResponses } from '../problem-answer.ts';
import { answered } from './household-question.ts';
import { wholeNumberText } from './number-query.ts';
import { horizonQuery, questionQuery } from './question-query.ts';

/** `nothing` answers as if no cup were started or bought from now on. */
const forecastQuery = horizonQuery.extend({ starts: z.enum(['policy', 'nothing']).optional() });

/** `weeks` back. */
const hindcastQuery = questionQuery
  .omit({ scenarios: true })
  .extend({ weeks: wholeNumberText(1, 52, 'Weeks to look back; 13 when left out').optional() });

export function addAnswerRoutes(api: Api, context: ApiContext): void {
  api.openapi(
    answerRoute('/today', 'What to do today, and the state of each living cup', questionQuery, todayAnswer),
    async (c) => c.json(await answered(context, 'today', c.req.valid('query')), 200),
  );
  api.openapi(
    answerRoute('/forecast', 'Flies wanted, emerging and on hand on each coming day', forecastQuery, forecastAnswer),
    async (c) => c.json(await answered(context, 'forecast', c.req.valid('query')), 200),
  );
  api.openapi(
    answerRoute('/plan', 'The dated jobs that keep the supply unbroken', horizonQuery, planAnswer),
    async (c) => c.json(await answered(context, 'plan', c.req.valid('query')), 200),
  );
  api.openapi(
    answerRoute(
      '/learned',
      "Each strain's pace, yield and failures as the logbook has taught them",
      questionQuery,
      learnedAnswer,
    ),
    async (c) => c.json(await answered(context, 'learned', c.req.valid('query')), 200),
  );
  api.openapi(
    answerRoute('/hindcast', 'What was forecast in past weeks, and what came', hindcastQuery, hindcastAnswer),
    async (c) => c.json(await answered(context, 'hindcast', c.req.valid('query')), 200),
  );
}

export function answerRoute<Query extends z.ZodObject, Answer extends z.ZodType>(
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
