/** The printed sheets as HTML documents: for a sitter, a month, the shelf, or whoever gets a cup. */
import { createRoute, z } from '@hono/zod-openapi';
import { given, month, sheetHtml, sitter } from '../../app/index.ts';
import { failed, type Result } from '../../foundation/index.ts';
import type { Api, ApiContext } from '../api-context.ts';
import { problemResponses } from '../problem-answer.ts';
import { answered, type AskedFacts, askedOf } from './household-question.ts';
import { numberText } from './number-query.ts';
import { dayText, questionQuery } from './question-query.ts';

const sheetQuery = questionQuery.omit({ scenarios: true }).extend({
  kind: z.enum(['sitter', 'month', 'shelf', 'given']),
  from: dayText.optional(),
  until: dayText.optional(),
  contact: z.string().max(200).optional(),
  month: z.string().optional().openapi({ description: 'Such as 2026-12; this month when left out' }),
  place: z.string().optional(),
  culture: z.string().optional().openapi({ description: 'The cup that is given, by key or label' }),
  temperatureC: numberText('Of the room that the cup goes to').optional(),
  calendarLink: z.url().optional(),
  language: z.enum(['en', 'de']).optional(),
});

const sheetRoute = createRoute({
  method: 'get',
  path: '/sheet',
  summary: 'A sheet that prints, as one HTML document',
  request: { query: sheetQuery },
  responses: {
    200: { description: 'The sheet', content: { 'application/json': { schema: z.object({ html: z.string() }) } } },
    ...problemResponses,
  },
});

type SheetAsked = AskedFacts<z.output<typeof sheetQuery>>;
type Sheet = Parameters<typeof sheetHtml>[0];
const usualRoomC = 22;

export function addSheetRoute(api: Api, context: ApiContext): void {
  api.openapi(sheetRoute, async (c) => {
    const sheet = await sheetOf(context, askedOf(context, c.req.valid('query')));
    const html = sheet.ok ? sheetHtml(sheet.value) : sheet;
    return html.ok ? c.json({ html: html.value }, 200) : c.json({ problems: html.problems }, 400);
  });
}

async function sheetOf(context: ApiContext, { facts, question }: SheetAsked): Promise<Result<Sheet>> {
  const { kind, on, seed, from = on, until, culture, temperatureC = usualRoomC } = question;
  // The jobs are the plan's whatever it promises: one scenario is enough.
  const jobs = async () => (await answered(context, 'plan', { on, seed, scenarios: 1 })).jobs;
  if (kind === 'month') return month(facts, await jobs(), { ...question, month: question.month ?? on.slice(0, 7) });
  if (kind === 'shelf') return answered(context, 'shelf', question);
  if (kind === 'given') {
    if (culture !== undefined) return given(facts, { ...question, culture, temperatureC });
    return failed({ where: 'culture', found: 'nothing', expected: 'a cup, by key or label' });
  }
  if (until !== undefined) return sitter(facts, await jobs(), { ...question, from, until });
  return failed({ where: 'until', found: 'nothing', expected: 'the last day of the absence' });
}
