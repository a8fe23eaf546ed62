/** The routes about work on one cup: its end done right, wet and dry. No household is needed. */
import { createRoute, z } from '@hono/zod-openapi';
import { cupEnding, cupEndingAnswer, moisture, moistureAnswer } from '../../app/index.ts';
import type { Api } from '../api-context.ts';
import { problemResponses } from '../problem-answer.ts';
import { numberText, yesNoText } from './number-query.ts';

const language = z.enum(['en', 'de']).optional();

const endingRoute = createRoute({
  method: 'get',
  path: '/cup-ending',
  summary: 'The end of a cup step by step, and what of it may be used again',
  request: {
    query: z.strictObject({ reason: z.string(), isWashable: yesNoText('Left out: yes').optional(), language }),
  },
  responses: {
    200: { description: 'The steps', content: { 'application/json': { schema: cupEndingAnswer } } },
    ...problemResponses,
  },
});

const moistureRoute = createRoute({
  method: 'get',
  path: '/moisture',
  summary: 'Whether a cup is too wet or too dry, by touch or by weight, and how to rescue it',
  request: {
    query: z.strictObject({
      touch: z.string().optional(),
      firstDayMassG: numberText('The whole cup on its first day').optional(),
      nowMassG: numberText('The whole cup now').optional(),
      mediumMassG: numberText('The medium put into it').optional(),
      hasLarvae: yesNoText('Left out: yes').optional(),
      language,
    }),
  },
  responses: {
    200: { description: 'What it is and what helps', content: { 'application/json': { schema: moistureAnswer } } },
    ...problemResponses,
  },
});

export function addCupWorkRoutes(api: Api): void {
  api.openapi(endingRoute, (c) => {
    const answer = cupEnding(c.req.valid('query'));
    return answer.ok ? c.json(answer.value, 200) : c.json({ problems: answer.problems }, 400);
  });
  api.openapi(moistureRoute, (c) => {
    const answer = moisture(c.req.valid('query'));
    return answer.ok ? c.json(answer.value, 200) : c.json({ problems: answer.problems }, 400);
  });
}
