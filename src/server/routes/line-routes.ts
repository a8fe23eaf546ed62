/** The routes about lines: pedigrees and warnings, mixing two strains, whether a line is clean. */
import { createRoute, z } from '@hono/zod-openapi';
import { cleanLine, cleanLineAnswer, lines, linesAnswer, mixing, mixingAnswer } from '../../app/index.ts';
import type { Api, ApiContext } from '../api-context.ts';
import { problemResponses } from '../problem-answer.ts';
import { answered, askedOf } from './household-question.ts';
import { numberText, wholeNumberText } from './number-query.ts';
import { dayText } from './question-query.ts';

const good = <Answer extends z.ZodType>(description: string, schema: Answer) => ({
  200: { description, content: { 'application/json': { schema } } },
  ...problemResponses,
});

const linesRoute = createRoute({
  method: 'get',
  path: '/lines',
  summary: 'Pedigrees of the cups, what threatens the lines and what to do, cups in quarantine',
  request: { query: z.strictObject({ on: dayText.optional() }) },
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
    }),
  },
  responses: good('What comes of it', mixingAnswer),
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
  api.openapi(linesRoute, (c) => c.json(answered(context, 'lines', c.req.valid('query'), lines), 200));
  api.openapi(mixingRoute, (c) => {
    const { first, second, generations } = c.req.valid('query');
    const { facts } = askedOf(context, {});
    const answer = mixing(facts, { first, second, ...(generations === undefined ? {} : { generations }) });
    return answer.ok ? c.json(answer.value, 200) : c.json({ problems: answer.problems }, 400);
  });
  api.openapi(cleanRoute, (c) => {
    const answer = cleanLine(c.req.valid('query'));
    return answer.ok ? c.json(answer.value, 200) : c.json({ problems: answer.problems }, 400);
  });
}
