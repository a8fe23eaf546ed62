/** The routes that answer from the models alone, without a household: one cup's life, a cross. */
import { createRoute, z } from '@hono/zod-openapi';
import { cross, crossAnswer, lifecycle, lifecycleAnswer } from '../../app/index.ts';
import type { Api } from '../api-context.ts';
import { problemResponses } from '../problem-answer.ts';
import { ageSpanText, numberText, wholeNumberText, yesNoText } from './number-query.ts';
import { seedText } from './question-query.ts';

const lifecycleRoute = createRoute({
  method: 'get',
  path: '/lifecycle',
  summary: 'One cup from its start to its end at a constant temperature; days are counted from starting it',
  request: {
    query: z.strictObject({
      strain: z.string().default('melanogaster'),
      temperatureC: numberText('In the cup'),
      founders: numberText('Flies that start it').optional(),
      founderAgeDays: numberText('Their mean age').optional(),
      mediumMassG: numberText('Medium in the cup').optional(),
      surfaceCm2: numberText('Surface of the medium').optional(),
      harvestEveryDays: numberText('Days between harvests').optional(),
      harvestShare: numberText('Of the flies that a harvest takes').optional(),
      humidityPercent: numberText('Relative humidity of the room').optional(),
      liveYeast: z.enum(['none', 'good', 'excess']).optional(),
      wet: ageSpanText('Days of age on which the medium was too wet').optional(),
      dry: ageSpanText('Days of age on which the medium was too dry').optional(),
      lightsOnHour: numberText('Hour of the day at which it gets light').optional(),
    }),
  },
  responses: {
    200: { description: 'Its life', content: { 'application/json': { schema: lifecycleAnswer } } },
    ...problemResponses,
  },
});

const crossRoute = createRoute({
  method: 'get',
  path: '/cross',
  summary: 'What comes of crossing two flies, generation by generation',
  request: {
    query: z.strictObject({
      female: z.string().openapi({ example: 'vg/vg' }),
      male: z.string().openapi({ example: '+/+' }),
      generations: wholeNumberText(1, 200, 'How many generations').optional(),
      distances: z.string().optional().openapi({ description: 'Map units that replace the map, such as vg-ap=11.8' }),
      cull: z.enum(['winged', 'flightless']).optional().openapi({ description: 'Culled in each generation' }),
      mated: yesNoText('They have mated by then').optional(),
      founders: wholeNumberText(2, 2000, 'Flies drawn by chance for each generation').optional(),
      seed: seedText.optional(),
    }),
  },
  responses: {
    200: { description: 'Its generations', content: { 'application/json': { schema: crossAnswer } } },
    ...problemResponses,
  },
});

const usualGenerations = 4;

export function addModelRoutes(api: Api): void {
  api.openapi(lifecycleRoute, (c) => {
    const { wet, dry, ...asked } = c.req.valid('query');
    const moistureSpells = [
      ...(wet ? [{ ...wet, state: 'wet' as const }] : []),
      ...(dry ? [{ ...dry, state: 'dry' as const }] : []),
    ];
    const answer = lifecycle({ ...asked, moistureSpells });
    return answer.ok ? c.json(answer.value, 200) : c.json({ problems: answer.problems }, 400);
  });
  api.openapi(crossRoute, (c) => {
    const answer = cross({ generations: usualGenerations, ...c.req.valid('query') });
    return answer.ok ? c.json(answer.value, 200) : c.json({ problems: answer.problems }, 400);
  });
}
