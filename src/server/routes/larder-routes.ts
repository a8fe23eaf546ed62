/** The routes for what is in the kitchen: stock, recipes, an ingredient's weight. */
import { createRoute, z } from '@hono/zod-openapi';
import { larder, larderAnswer, recipeBook, recipeBookAnswer, weighed } from '../../app/index.ts';
import type { Api, ApiContext } from '../api-context.ts';
import { problemResponses } from '../problem-answer.ts';
import { askedOf } from './household-question.ts';
import { numberText } from './number-query.ts';
import { dayText } from './question-query.ts';

const larderRoute = createRoute({
  method: 'get',
  path: '/larder',
  summary: 'What is on hand, how many cups it lasts for, and the medium that is left',
  request: {
    query: z.strictObject({
      on: dayText.optional(),
      recipe: z.string().optional(),
      mediumMassG: numberText('In each cup').optional(),
    }),
  },
  responses: {
    200: { description: 'The stock', content: { 'application/json': { schema: larderAnswer } } },
    ...problemResponses,
  },
});

const recipesRoute = createRoute({
  method: 'get',
  path: '/recipes',
  summary: "The household's recipes and those to start with",
  request: { query: z.strictObject({ on: dayText.optional() }) },
  responses: {
    200: { description: 'The recipes', content: { 'application/json': { schema: recipeBookAnswer } } },
    ...problemResponses,
  },
});

const weightRoute = createRoute({
  method: 'get',
  path: '/weight',
  summary: 'Grams of an ingredient measured by spoons, cups or millilitres',
  request: {
    query: z.strictObject({
      ingredient: z.string(),
      amount: numberText('Of the measure'),
      measure: z.string().openapi({ example: 'us-tbsp' }),
    }),
  },
  responses: {
    200: {
      description: 'The weight and the sum',
      content: {
        'application/json': {
          schema: z.object({
            massG: z.number(),
            lowG: z.number(),
            highG: z.number(),
            arithmetic: z.string(),
            source: z.string().nullable(),
          }),
        },
      },
    },
    ...problemResponses,
  },
});

export function addLarderRoutes(api: Api, context: ApiContext): void {
  api.openapi(larderRoute, (c) => {
    const { facts, question } = askedOf(context, c.req.valid('query'));
    const answer = larder(facts, question);
    return answer.ok ? c.json(answer.value, 200) : c.json({ problems: answer.problems }, 400);
  });
  api.openapi(recipesRoute, (c) => {
    const { facts } = askedOf(context, c.req.valid('query'));
    return c.json(recipeBook(facts), 200);
  });
  api.openapi(weightRoute, (c) => {
    const answer = weighed(c.req.valid('query'));
    if (!answer.ok) return c.json({ problems: answer.problems }, 400);
    const { amount: massG, low: lowG, high: highG, arithmetic, source } = answer.value;
    return c.json({ massG, lowG, highG, arithmetic, source }, 200);
  });
}
