/** The routes about lines: pedigrees and warnings, mixing two strains, whether a line is clean. */
import { createRoute, z } from '@hono/zod-openapi';
import {
  cleanLine,
  cleanLineAnswer,
  linesAnswer,
  lineWarning,
  mixing,
  mixingAnswer,
  strainBookAnswer,
  winged,
} from '../../app/index.ts';
import type { Api, ApiContext } from '../api-context.ts';
import { problemResponses } from '../problem-answer.ts';
import { answered, askedOf } from './household-question.ts';
import { numberText, wholeNumberText } from './number-query.ts';
import { dayText, telling } from './question-query.ts';

const good = <Answer extends z.ZodType>(description: string, schema: Answer) => ({
  200: { description, content: { 'application/json': { schema } } },
  ...problemResponses,
});

const linesRoute = createRoute({
  method: 'get',
  path: '/lines',
  summary: 'Pedigrees of the cups, what threatens the lines and what to do, cups in quarantine',
  request: { query: z.strictObject({ on: dayText.optional(), ...telling }) },
  responses: good('The lines', linesAnswer),
});

const mixingRoute = createRoute({
  method: 'get',
  path: '/mixing',
  summary: "May two of the household's strains be put together?",
  request: {
    query: z.strictObject({
      first: z.string(),
      second: z.string(),
      generations: wholeNumberText(1, 50, 'Generations ahead').optional(),
      language: telling.language,
    }),
  },
  responses: good('What comes of it', mixingAnswer),
});

const strainsRoute = createRoute({
  method: 'get',
  path: '/strains',
  summary: "The household's strains: dates and yield where they stand, fly mass, mutation",
  request: { query: z.strictObject({ on: dayText.optional() }) },
  responses: good('The strains', strainBookAnswer),
});

const wingedRoute = createRoute({
  method: 'get',
  path: '/winged',
  summary: 'A winged fly was seen in a cup: what it means and what to do',
  request: { query: z.strictObject({ on: dayText.optional(), culture: z.string(), ...telling }) },
  responses: good('What it means', lineWarning),
});

const cleanRoute = createRoute({
  method: 'get',
  path: '/clean-line',
  summary: 'The chance that a flightless line is clean after looks in which no winged fly was seen',
  request: {
    query: z.strictObject({
      looks: z
        .string()
        .regex(/^\d{1,6}(,\d{1,6}){0,49}$/, { error: 'whole numbers separated by commas' })
        .transform((text) => text.split(',').map(Number))
        .openapi({ type: 'string', example: '100,200', description: 'Flies looked at in each generation' }),
      founders: wholeNumberText(2, 500, 'Founders of each generation'),
      foundersAre: z.enum(['any', 'flightless virgins', 'flightless mated']).default('any'),
      priorContaminated: numberText('Belief before any look that a wild fly got in').optional(),
    }),
  },
  responses: good('The chance after each look', cleanLineAnswer),
});

export function addLineRoutes(api: Api, context: ApiContext): void {
  api.openapi(linesRoute, async (c) => c.json(await answered(context, 'lines', c.req.valid('query')), 200));
  api.openapi(mixingRoute, (c) => {
    const { first, second, generations, language: spoken } = c.req.valid('query');
    const { facts } = askedOf(context, {});
    const answer = mixing(facts, {
      first,
      second,
      ...(generations === undefined ? {} : { generations }),
      ...(spoken === undefined ? {} : { language: spoken }),
    });
    return answer.ok ? c.json(answer.value, 200) : c.json({ problems: answer.problems }, 400);
  });
  api.openapi(strainsRoute, async (c) => c.json(await answered(context, 'strains', c.req.valid('query')), 200));
  api.openapi(wingedRoute, (c) => {
    const { facts, question } = askedOf(context, c.req.valid('query'));
    const answer = winged(facts, question);
    return answer.ok ? c.json(answer.value, 200) : c.json({ problems: answer.problems }, 400);
  });
  api.openapi(cleanRoute, (c) => {
    const answer = cleanLine(c.req.valid('query'));
    return answer.ok ? c.json(answer.value, 200) : c.json({ problems: answer.problems }, 400);
  });
}
