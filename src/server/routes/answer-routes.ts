/** The routes that answer about the household: today, forecast, plan. */
import { createRoute, z } from '@hono/zod-openapi';
import { forecast, forecastAnswer, learned, plan, planAnswer, today, todayAnswer } from '../../app/index.ts';
import type { Api, ApiContext } from '../api-context.ts';
import { problemResponses } from '../problem-answer.ts';
import { answered } from './household-question.ts';
import { horizonQuery, questionQuery } from './question-query.ts';

const factor = z.object({ p05: z.number(), p50: z.number(), p95: z.number() });
const learnedAnswer = z.array(
  z.object({
    strain: z.string(),
    cups: z.int(),
    pace: factor,
    yields: factor,
    failure: z.object({ mean: z.number(), p05: z.number(), p95: z.number() }),
    lessons: z.array(
      z.object({
        topic: z.string(),
        text: z.string(),
        value: z.number(),
        low: z.number(),
        high: z.number(),
        cups: z.int(),
        comparison: z
          .object({
            first: z.string(),
            second: z.string(),
            chanceMore: z.number(),
            cupsUntilClear: z.int().nullable(),
          })
          .optional(),
      }),
    ),
    strays: z.array(
      z.object({
        id: z.string(),
        label: z.string(),
        offCourse: z
          .object({
            what: z.string(),
            chance: z.number(),
            direction: z.string(),
            causes: z.array(z.object({ cause: z.string(), check: z.string(), noted: z.boolean() })),
            suppliedFliesIn14Days: z.number(),
          })
          .nullable(),
        doubtful: z.array(
          z.object({ ageDays: z.number(), found: z.string(), expected: z.string(), chanceWrong: z.number() }),
        ),
      }),
    ),
  }),
);

/** `nothing` answers as if no cup were started or bought from now on. */
const forecastQuery = horizonQuery.extend({ starts: z.enum(['policy', 'nothing']).optional() });

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
      '/learned',
      "Each strain's pace, yield and failures as the logbook has taught them",
      questionQuery,
      learnedAnswer,
    ),
    async (c) => c.json(await answered(context, 'learned', c.req.valid('query'), learned), 200),
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
