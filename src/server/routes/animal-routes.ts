/** The routes about the animals: need and feedings, rations, flies by weight. */
import { createRoute, z } from '@hono/zod-openapi';
import {
  animalsAnswer,
  flyPot,
  flyPotAnswer,
  hatchRange,
  hatchRanges,
  ration,
  rationAnswer,
  starterRation,
  starterRations,
} from '../../app/index.ts';
import type { Api, ApiContext } from '../api-context.ts';
import { problemResponses } from '../problem-answer.ts';
import { answered, askedOf } from './household-question.ts';
import { numberText, wholeNumberText } from './number-query.ts';
import { dayText, horizonQuery } from './question-query.ts';

function answerRoute<Query extends z.ZodObject, Answer extends z.ZodType>(
  path: string,
  summary: string,
  query: Query,
  schema: Answer,
) {
  return createRoute({
    method: 'get',
    path,
    summary,
    request: { query },
    responses: { 200: { description: summary, content: { 'application/json': { schema } } }, ...problemResponses },
  });
}

const animalsRoute = answerRoute(
  '/animals',
  "What the animals want by day, strain and group, the week's feedings, food quality and weights",
  horizonQuery.omit({ scenarios: true }),
  animalsAnswer,
);

const rationsRoute = answerRoute(
  '/rations',
  'Starter rations by kind of animal, from husbandry practice',
  z.strictObject({}),
  z.array(starterRation),
);

const hatchesRoute = answerRoute(
  '/hatches',
  'Young that an egg case may give, by species',
  z.strictObject({}),
  z.array(hatchRange),
);

const rationRoute = answerRoute(
  '/ration',
  'A ration for one kind of animal: practice beside a reckoning from energy',
  z.strictObject({
    animal: z.string().openapi({ example: 'dart-frog-medium' }),
    on: dayText.optional(),
    massG: numberText('Of one animal').optional(),
    temperatureC: numberText('That it lives in').optional(),
    count: wholeNumberText(0, 1_000_000_000, 'Animals').optional(),
    growthGPerDay: numberText('Gained a day by one animal').optional(),
    flyShare: numberText('Share of the diet that is flies').optional(),
    strain: z.string().optional(),
  }),
  rationAnswer,
);

const potRoute = answerRoute(
  '/fly-pot',
  'Flies in a pot by its weight with and without them',
  z.strictObject({
    strain: z.string(),
    on: dayText.optional(),
    fullMg: numberText('The pot with the flies'),
    emptyMg: numberText('The pot without'),
    scaleStepMg: numberText('Smallest step of the scale'),
    rearedC: numberText('Where the flies grew up').optional(),
  }),
  flyPotAnswer,
);

export function addAnimalRoutes(api: Api, context: ApiContext): void {
  api.openapi(animalsRoute, async (c) => c.json(await answered(context, 'animals', c.req.valid('query')), 200));
  api.openapi(rationsRoute, (c) => c.json(starterRations(), 200));
  api.openapi(hatchesRoute, (c) => c.json(hatchRanges(), 200));
  api.openapi(rationRoute, (c) => {
    const { facts, question } = askedOf(context, c.req.valid('query'));
    const answer = ration(facts, question);
    return answer.ok ? c.json(answer.value, 200) : c.json({ problems: answer.problems }, 400);
  });
  api.openapi(potRoute, (c) => {
    const { facts, question } = askedOf(context, c.req.valid('query'));
    const answer = flyPot(facts, question);
    return answer.ok ? c.json(answer.value, 200) : c.json({ problems: answer.problems }, 400);
  });
}
