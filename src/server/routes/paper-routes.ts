/** The routes for the kitchen and the printer: medium, labels, the calendar. */
import { createRoute, z } from '@hono/zod-openapi';
import { calendar, mix, mixAnswer } from '../../app/index.ts';
import type { Api, ApiContext } from '../api-context.ts';
import { problemResponse, problemResponses, problemsOf } from '../problem-answer.ts';
import { answered, askedOf } from './household-question.ts';
import { numberText, wholeNumberText, yesNoText } from './number-query.ts';
import { dayText, horizonQuery, questionQuery } from './question-query.ts';

const language = z.enum(['en', 'de']).optional();

const mixRoute = createRoute({
  method: 'get',
  path: '/mix',
  summary: 'Medium for a number of cups: weights, spoons, doses, and the work step by step',
  request: {
    query: z.strictObject({
      on: dayText.optional(),
      recipe: z.string().optional(),
      cups: wholeNumberText(1, 10000, 'As many as the stock makes when left out').optional(),
      mediumMassG: numberText('In each cup').optional(),
      batchMassG: numberText('Instead of cups: the mass of the whole batch').optional(),
      measures: z.enum(['us', 'metric', 'au']).optional(),
      preservative: z.string().optional().openapi({ description: 'Added beside those of the recipe' }),
      preservativePercent: numberText('Its dose in the finished medium').optional(),
      stockPercent: numberText('Strength of the solution it is measured from').optional(),
      strain: z.string().optional(),
      language,
    }),
  },
  responses: {
    200: { description: 'What to weigh and do', content: { 'application/json': { schema: mixAnswer } } },
    ...problemResponses,
  },
});

const labelsRoute = createRoute({
  method: 'get',
  path: '/labels',
  summary: 'Labels of the living cups, or of those named, as data and as an HTML page that prints',
  request: {
    query: questionQuery.extend({
      cultures: z.string().optional().openapi({ description: 'Keys or labels, separated by commas' }),
      sheet: z.string().optional().openapi({ description: 'A sheet by name, or one label a page as 50x25 (mm)' }),
      skip: wholeNumberText(0, 200, 'Places of the first sheet that are used already').optional(),
      linkBase: z.url().optional(),
      language,
    }),
  },
  responses: {
    200: {
      description: 'The labels',
      content: {
        'application/json': {
          schema: z.object({
            on: z.string(),
            sheet: z.string(),
            pages: z.int(),
            labels: z.array(z.looseObject({ culture: z.string(), label: z.string() })),
            html: z.string(),
          }),
        },
      },
    },
    ...problemResponses,
  },
});

const calendarQuery = horizonQuery.omit({ scenarios: true }).extend({
  withFeeding: yesNoText('Feeding too, which is every day').optional(),
  linkBase: z.url().optional(),
  language,
  key: z.string().max(100).optional().openapi({ description: 'Of a private link, for a program that is not paired' }),
});

const calendarRoute = createRoute({
  method: 'get',
  path: '/calendar.ics',
  summary: "The plan's jobs as an iCalendar file to subscribe to",
  request: { query: calendarQuery },
  responses: {
    200: { description: 'iCalendar (RFC 5545)', content: { 'text/calendar': { schema: z.string() } } },
    ...problemResponses,
  },
});

export function addPaperRoutes(api: Api, context: ApiContext): void {
  api.openapi(mixRoute, (c) => {
    const { preservative, preservativePercent, stockPercent, ...query } = c.req.valid('query');
    const { facts, question } = askedOf(context, query);
    const dose = { percent: preservativePercent ?? 0, ...(stockPercent === undefined ? {} : { stockPercent }) };
    const answer = mix(
      facts,
      preservative === undefined ? question : { ...question, preservative: { preservative, ...dose } },
    );
    return answer.ok ? c.json(answer.value, 200) : c.json({ problems: answer.problems }, 400);
  });
  api.openapi(labelsRoute, async (c) => {
    const { cultures, ...query } = c.req.valid('query');
    const asked = cultures === undefined ? query : { ...query, cultures: cultures.split(',') };
    const answer = await answered(context, 'labels', asked);
    if (!answer.ok) return c.json({ problems: answer.problems }, 400);
    const { labels: all, ...rest } = answer.value;
    return c.json({ ...rest, labels: all.map((label) => ({ ...label })) }, 200);
  });
  addCalendar(api, context);
}

function addCalendar(api: Api, context: ApiContext): void {
  api.openAPIRegistry.registerPath(calendarRoute);
  api.get('/calendar.ics', async (c) => {
    const query = calendarQuery.safeParse(c.req.query());
    if (!query.success) return problemResponse(c, 400, problemsOf(query.error, 'query', c.req.query()));
    const { withFeeding, linkBase, language, key: _, ...asked } = query.data;
    const { facts, question } = askedOf(context, asked);
    // The jobs are the plan's whatever it promises: one scenario is enough.
    const { jobs } = await answered(context, 'plan', { ...asked, scenarios: 1 });
    const text = calendar(facts, jobs, {
      on: question.on,
      madeAt: context.shell.now(),
      withFeeding: withFeeding ?? false,
      ...(linkBase === undefined ? {} : { linkBase }),
      ...(language === undefined ? {} : { language }),
    });
    if (!text.ok) return problemResponse(c, 400, text.problems);
    return c.body(text.value, 200, { 'Content-Type': 'text/calendar; charset=utf-8' });
  });
}
