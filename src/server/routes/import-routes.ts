/**
 * A keeper's own spreadsheet over HTTP: first what each column would be taken for and what would be written,
 * then the writing, and its undoing as one act.
 */
import { createRoute, z } from '@hono/zod-openapi';
import { bodyLimit } from 'hono/body-limit';
import { entryInWords, type Telling } from '../../app/index.ts';
import { failed, ok, type Result } from '../../foundation/index.ts';
import {
  checkEntry,
  dateOrders,
  type Entry,
  type EntryDraft,
  idsOfImport,
  importActs,
  importName,
  previewSheet,
  proposeMatching,
  readSheet,
  type Sheet,
  type SheetField,
  sheetFields,
  type SheetMatching,
  type SheetPreview,
  undoDrafts,
} from '../../logbook/index.ts';
import { appendAs } from '../access/append-as.ts';
import { callerOf } from '../access/caller.ts';
import type { Api, ApiContext } from '../api-context.ts';
import { telling } from './question-query.ts';
import { problemAnswer, problemResponse, problemResponses, writeProblemResponses } from '../problem-answer.ts';

const mostBodyBytes = 16 * 1024 * 1024;
const fieldName = z.enum(Object.keys(sheetFields) as [SheetField, ...SheetField[]]);

const sheetBody = z.strictObject({
  file: z.string().max(200).openapi({ description: 'The name of the file' }),
  text: z.string().openapi({ description: 'The CSV itself: a line of headings, then one line a cup or an event' }),
  fields: z
    .array(fieldName.nullable())
    .optional()
    .openapi({ description: 'What each column means, in their order; null leaves it out. Proposed when left out' }),
  dateOrder: z.enum(dateOrders).optional(),
  strain: z.string().optional().openapi({ description: 'Of lines that name none' }),
});

const preview = z.object({
  columns: z.array(z.object({ heading: z.string(), field: fieldName.nullable(), first: z.string() })),
  dateOrder: z.enum(dateOrders),
  dateOrderIsCertain: z.boolean(),
  entries: z.array(z.object({ line: z.int(), on: z.string(), kind: z.string(), sentence: z.string() })),
  problems: problemAnswer.shape.problems,
});

const previewRoute = createRoute({
  method: 'post',
  path: '/imports/preview',
  summary: "What a spreadsheet of the keeper's own would be read as; nothing is written",
  request: {
    query: z.strictObject(telling),
    body: { required: true, content: { 'application/json': { schema: sheetBody } } },
  },
  responses: {
    200: { description: 'Columns and entries', content: { 'application/json': { schema: preview } } },
    ...problemResponses,
  },
});

const written = z.object({ name: z.string(), added: z.int() });

const importRoute = createRoute({
  method: 'post',
  path: '/imports',
  summary: 'Write all entries of a spreadsheet, or none; the name takes them back',
  request: { body: { required: true, content: { 'application/json': { schema: sheetBody } } } },
  responses: {
    201: { description: 'Safely kept', content: { 'application/json': { schema: written } } },
    ...writeProblemResponses,
  },
});

const listRoute = createRoute({
  method: 'get',
  path: '/imports',
  summary: 'The imports that the logbook has, and how much of each was amended since',
  responses: {
    200: {
      description: 'Oldest first',
      content: {
        'application/json': { schema: z.array(z.object({ name: z.string(), entries: z.int(), amended: z.int() })) },
      },
    },
  },
});

const undoRoute = createRoute({
  method: 'post',
  path: '/imports/undo',
  summary: 'Take an import back as one act: each of its entries is voided, and stays readable',
  request: {
    body: {
      required: true,
      content: { 'application/json': { schema: z.strictObject({ name: z.string().max(200) }) } },
    },
  },
  responses: {
    201: { description: 'Taken back', content: { 'application/json': { schema: written } } },
    ...writeProblemResponses,
  },
});

export function addImportRoutes(api: Api, context: ApiContext): void {
  const { household, shell } = context;
  api.use('/imports/*', tooLarge);
  api.use('/imports', tooLarge);
  api.openapi(previewRoute, (c) => {
    const read = readAsked(context, c.req.valid('json'));
    return read.ok
      ? c.json(previewOf(read.value, c.req.valid('query')), 200)
      : c.json({ problems: read.problems }, 400);
  });
  api.openapi(importRoute, async (c) => {
    const asked = c.req.valid('json');
    const name = importName(asked.file, shell.now());
    const read = readAsked(context, asked);
    if (!read.ok) return c.json({ problems: read.problems }, 400);
    const entries = entriesOf(context, read.value, name);
    if (!entries.ok) return c.json({ problems: entries.problems }, 400);
    const { drafts } = read.value.preview;
    const kept = await appendAs(
      context,
      callerOf(c),
      entries.value,
      (_, i) => `${asked.file}, line ${drafts[i]?.line}`,
    );
    return kept.ok ? c.json({ name, added: kept.report.added }, 201) : c.json({ problems: kept.problems }, kept.status);
  });
  api.openapi(listRoute, (c) => c.json(importActs(household.all), 200));
  api.openapi(undoRoute, async (c) => {
    const { name } = c.req.valid('json');
    const ids = idsOfImport(name, household.all, 'name');
    if (!ids.ok) return c.json({ problems: ids.problems }, 400);
    const on = shell.todayIn(household.facts().household.timeZone);
    const caller = callerOf(c);
    const entries = undoDrafts(ids.value, on).map((draft) => completed(context, draft, caller.name));
    const kept = await appendAs(context, caller, entries, () => name);
    return kept.ok ? c.json({ name, added: kept.report.added }, 201) : c.json({ problems: kept.problems }, kept.status);
  });
}

interface SheetRead {
  sheet: Sheet;
  matching: SheetMatching;
  dateOrderIsCertain: boolean;
  preview: SheetPreview;
}

function readAsked({ household }: ApiContext, asked: z.output<typeof sheetBody>): Result<SheetRead> {
  const sheet = readSheet(asked.text, asked.file);
  if (!sheet.ok) return sheet;
  const { dateOrderIsCertain, ...proposed } = proposeMatching(sheet.value);
  const { fields = proposed.fields, dateOrder = proposed.dateOrder, strain = proposed.strain } = asked;
  const columns = sheet.value.headings.length;
  if (fields.length !== columns) {
    return failed({
      where: 'fields',
      found: `${fields.length} of them`,
      expected: `one for each of ${columns} columns`,
    });
  }
  const knownPlaces = household.facts().places;
  const matching = { ...proposed, fields, dateOrder, strain, knownPlaces };
  const isCertain = dateOrderIsCertain || asked.dateOrder !== undefined;
  return ok({
    sheet: sheet.value,
    matching,
    dateOrderIsCertain: isCertain,
    preview: previewSheet(sheet.value, matching),
  });
}

function previewOf({ sheet, matching, dateOrderIsCertain, preview: { drafts, problems } }: SheetRead, asked: Telling) {
  const first = sheet.records[0]?.cells ?? [];
  return {
    columns: sheet.headings.map((heading, i) => ({
      heading,
      field: matching.fields[i] ?? null,
      first: first[i] ?? '',
    })),
    dateOrder: matching.dateOrder,
    dateOrderIsCertain,
    entries: drafts.map(({ line, draft }) => ({
      line,
      on: draft.on,
      kind: draft.kind,
      sentence: entryInWords(draft, asked),
    })),
    problems,
  };
}

function entriesOf(context: ApiContext, { preview: { drafts, problems } }: SheetRead, by: string): Result<Entry[]> {
  if (problems.length > 0) return failed(...problems);
  const entries: Entry[] = [];
  for (const { draft, line } of drafts) {
    const entry = checkEntry(completed(context, draft, by), `line ${line}`);
    if (!entry.ok) return entry;
    entries.push(entry.value);
  }
  return ok(entries);
}

function completed({ shell }: ApiContext, draft: EntryDraft, by: string): Entry {
  return { id: shell.newEntryId(), recordedAt: shell.now(), by, ...draft } as Entry;
}

const tooLarge = bodyLimit({
  maxSize: mostBodyBytes,
  onError: (c) => {
    const expected = `at most ${mostBodyBytes} bytes; the command line reads more`;
    return problemResponse(c, 413, [{ where: 'body', found: 'a body that is too large', expected }]);
  },
});
