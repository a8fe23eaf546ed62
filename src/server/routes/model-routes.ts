/** The routes that answer from the models alone, without a household: one cup's life. */
import { createRoute, z } from '@hono/zod-openapi';
import { lifecycle, lifecycleAnswer } from '../../app/index.ts';
import type { Api, ApiContext } from '../api-context.ts';
import { problemResponses } from '../problem-answer.ts';

const number = (about: string) =>
  z
    .string()
    .regex(/^-?\d+(\.\d+)?$/, { error: 'a number' })
    .transform(Number)
    .openapi({ type: 'number', description: about });

const lifecycleRoute = createRoute({
  method: 'get',
  path: '/lifecycle',
  summary: 'One cup from its start to its end, at a constant temperature, days counted from starting it',
  request: {
    query: z.strictObject({
      strain: z.string().default('melanogaster'),
      temperatureC: number('In the cup'),
      founders: number('Flies that start it').optional(),
      founderAgeDays: number('Their mean age').optional(),
      mediumMassG: number('Medium in the cup').optional(),
      surfaceCm2: number('Surface of the medium').optional(),
      harvestEveryDays: number('Days between harvests').optional(),
    }),
  },
  responses: {
    200: { description: 'Its life', content: { 'application/json': { schema: lifecycleAnswer } } },
    ...problemResponses,
  },
});

export function addModelRoutes(api: Api, _context: ApiContext): void {
  api.openapi(lifecycleRoute, (c) => {
    const answer = lifecycle(c.req.valid('query'));
    return answer.ok ? c.json(answer.value, 200) : c.json({ problems: answer.problems }, 400);
  });
}
