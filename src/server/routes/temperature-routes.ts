/** Temperature over HTTP: how warm places are, what if, and a logger's file, previewed and written. */
import { createRoute, z } from '@hono/zod-openapi';
import { bodyLimit } from 'hono/body-limit';
import {
  type LoggerImport,
  loggerImport,
  type LoggerPlan,
  loggerPlan,
  type LoggerReport,
  loggerSampleChars,
  readLogger,
  temperatureAnswer,
  temperatureUnits,
  temperatureWhatIfAnswer,
  timeOrders,
} from '../../app/index.ts';
import { failed, ok, type Result } from '../../foundation/index.ts';
import { checkEntry, type Entry, type EntryDraft, importName } from '../../logbook/index.ts';
import { appendAs } from '../access/append-as.ts';
import { callerOf } from '../access/caller.ts';
import type { Api, ApiContext } from '../api-context.ts';
import { problemResponse, problemResponses, writeProblemResponses } from '../problem-answer.ts';
import { answered } from './household-question.ts';
import { numberText } from './number-query.ts';
import { questionQuery } from './question-query.ts';

const mostFileBytes = 64 * 1024 * 1024;
const oneSeed = questionQuery.omit({ scenarios: true });

const overviewRoute = createRoute({
  method: 'get',
  path: '/temperature',
  summary: 'How warm each place is and will be, and how far the clock of each cup has run',
  request: { query: oneSeed },
  responses: {
    200: { description: 'Places and cups', content: { 'application/json': { schema: temperatureAnswer } } },
    ...problemResponses,
  },
});

const whatIfRoute = createRoute({
  method: 'get',
  path: '/temperature/what-if',
  summary: 'Dates of cups if a place were warmer (place, byC) or a cup were carried (culture, to)',
  request: {
    query: oneSeed.extend({
      place: z.string().optional(),
      byC: numberText('How much warmer, C; below 0 for cooler').optional(),
      culture: z.string().optional(),
      to: z.string().optional(),
    }),
  },
  responses: {
    200: { description: 'Now and then', content: { 'application/json': { schema: temperatureWhatIfAnswer } } },
    ...problemResponses,
  },
});

const fileBody = z.strictObject({
  text: z.string().min(1).openapi({ description: "The logger's file as text" }),
  file: z.string().max(200).optional().openapi({ description: 'Its name, for problems' }),
  place: z.string().optional(),
  time: z.string().optional().openapi({ description: 'Column of the moment or the day, by heading or number from 1' }),
  clock: z.string().optional().openapi({ description: 'Column of the time of day, when it has one of its own' }),
  temperature: z.string().optional().openapi({ description: 'Column of the degrees' }),
  timeOrder: z.enum(timeOrders).optional(),
  unit: z.enum(temperatureUnits).optional(),
  timeZone: z.string().max(64).optional(),
  write: z.boolean().optional().openapi({ description: 'Write the days; otherwise they are only shown' }),
});

const importRoute = createRoute({
  method: 'post',
  path: '/temperature/import',
  summary: "A logger's file: shown as it would be read, and written when asked",
  request: { body: { required: true, content: { 'application/json': { schema: fileBody } } } },
  responses: {
    200: {
      description: 'How it is read, its days, and how many entries were written',
      content: { 'application/json': { schema: z.looseObject({ written: z.int() }) } },
    },
    ...writeProblemResponses,
    413: { ...problemResponses[400], description: `The body is larger than ${mostFileBytes} bytes` },
  },
});

const tooLarge = bodyLimit({
  maxSize: mostFileBytes,
  onError: (c) => {
    const expected = `at most ${mostFileBytes} bytes; the command line reads files of any size`;
    return problemResponse(c, 413, [{ where: 'body', found: 'a body that is too large', expected }]);
  },
});

export function addTemperatureRoutes(api: Api, context: ApiContext): void {
  api.openapi(overviewRoute, async (c) => c.json(await answered(context, 'temperature', c.req.valid('query')), 200));
  api.openapi(whatIfRoute, async (c) => {
    const { place, byC, culture, to, ...query } = c.req.valid('query');
    const change =
      place !== undefined && byC !== undefined
        ? { place, byC }
        : culture !== undefined && to !== undefined
          ? { culture, to }
          : null;
    if (!change) {
      const expected = 'place and byC, or culture and to';
      return c.json({ problems: [{ where: 'query', found: 'neither pair', expected }] }, 400);
    }
    const answer = await answered(context, 'temperature-what-if', { ...query, change });
    return answer.ok ? c.json(answer.value, 200) : c.json({ problems: answer.problems }, 400);
  });
  api.use('/temperature/import', tooLarge);
  api.openapi(importRoute, async (c) => {
    const asked = c.req.valid('json');
    const read = readFile(context, asked);
    if (!read.ok) return c.json({ problems: read.problems }, 400);
    if (!asked.write) return c.json({ ...read.value, written: 0 }, 200);
    const { file = 'file' } = asked;
    const entries = entriesOf(context, draftsOf(read.value), importName(file, context.shell.now()), file);
    if (!entries.ok) return c.json({ problems: entries.problems }, 400);
    if (entries.value.length > 0) {
      const kept = await appendAs(context, callerOf(c), entries.value, () => file);
      if (!kept.ok) return c.json({ problems: kept.problems }, kept.status);
    }
    return c.json({ ...read.value, written: entries.value.length }, 200);
  });
}

interface FileRead extends LoggerImport, LoggerPlan {
  report: LoggerReport;
}

function readFile({ household, shell }: ApiContext, asked: z.output<typeof fileBody>): Result<FileRead> {
  const { text, file = 'file', write: _, ...given } = asked;
  const facts = household.facts();
  const { timeZone } = facts.household;
  const plan = loggerPlan(text.slice(0, loggerSampleChars), file, facts, given, shell.todayIn(timeZone));
  if (!plan.ok) return plan;
  const report = readLogger(text, plan.value.form, file, timeZone);
  if (!report.ok) return report;
  const days = loggerImport(report.value, plan.value.place, facts);
  return days.ok ? ok({ ...plan.value, report: report.value, ...days.value }) : days;
}

/** Nothing is remembered of a file that brings nothing new. */
function draftsOf({ drafts, remember }: FileRead): EntryDraft[] {
  return remember && drafts.length > 0 ? [remember, ...drafts] : drafts;
}

function entriesOf({ shell }: ApiContext, drafts: EntryDraft[], by: string, file: string): Result<Entry[]> {
  const entries: Entry[] = [];
  for (const draft of drafts) {
    const entry = checkEntry({ id: shell.newEntryId(), recordedAt: shell.now(), by, ...draft }, file);
    if (!entry.ok) return failed(...entry.problems);
    entries.push(entry.value);
  }
  return ok(entries);
}
