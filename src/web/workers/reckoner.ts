/**
 * The worker: it holds the logbook and its facts and answers questions, one at a time. The models and
 * the keeping of entries are fetched when the first question asks for them.
 */
import { v7 as uuidVersion7 } from 'uuid';
import { ok, type Problem, type Result } from '../../foundation/index.ts';
import { checkBatch, checkEntry, type Entry, type EntryDraft, fold, readLogbook } from '../../logbook/index.ts';
import type { Logbook } from './models.ts';
import type { Answer, Ask, HouseQuestion, LogbookQuestion, ModelQuestion, News, QuestionMessage } from './questions.ts';

let logbook: Logbook = { entries: [], facts: fold([]) };

const logbookAnswers: { [Q in LogbookQuestion]: (ask: Ask<Q>) => Answer<Q> | Promise<Answer<Q>> } = {
  open: async (ask) => (await import('./keeper.ts')).openKeeper(ask, tell),
  keep: async ({ entries }) => (await import('./keeper.ts')).addEntries(entries, tell),
  load: ({ entries }) => remember(entries),
  append: ({ entries }) => remember([...logbook.entries, ...entries]),
  check: ({ entries }) => problemsOf(entries),
  sentences: async (ask) => (await import('./entry-sentences.ts')).sentencesOf(ask, logbook),
  readFile: ({ file }) => entriesOfFile(file),
  readSheet: async ({ text, file }) => (await import('./spreadsheet.ts')).sheetRead(text, file, logbook.facts),
  jobsBeforePlan: async (asked) => (await import('./first-jobs.ts')).firstJobs(asked, logbook.facts),
  showSheet: async (ask) => (await import('./spreadsheet.ts')).sheetShown(ask),
};

/** Answers leave in the order in which the questions came. */
let working: Promise<void> = Promise.resolve();
onmessage = (event: MessageEvent<QuestionMessage>) => {
  working = working.then(() => reply(event.data));
};

async function reply({ number, question, ask }: QuestionMessage): Promise<void> {
  try {
    postMessage({ number, ok: true, answer: await answerOf(question, ask) });
  } catch (error) {
    postMessage({ number, ok: false, message: String((error as Error).message ?? error) });
  }
}

async function answerOf(question: QuestionMessage['question'], ask: unknown): Promise<unknown> {
  if (question in logbookAnswers) return logbookAnswers[question as LogbookQuestion](ask as never);
  const { modelAnswers } = await import('./models.ts');
  if (question in modelAnswers) return modelAnswers[question as ModelQuestion](ask as never, logbook);
  const { houseAnswers } = await import('./house-models.ts');
  return houseAnswers[question as HouseQuestion](ask as never, logbook);
}

function tell(news: News): void {
  postMessage(news);
}

function remember(entries: Entry[]) {
  logbook = { entries, facts: fold(entries) };
  return logbook.facts;
}

/** What is wrong with the entries themselves, and with their place in this logbook. */
function problemsOf(batch: Entry[]): Problem[] {
  const alone = batch.map((entry) => checkEntry(entry, entry.kind)).flatMap((each) => (each.ok ? [] : each.problems));
  if (alone.length > 0) return alone;
  const together = checkBatch(batch, logbook.entries, (entry) => entry.kind);
  return together.ok ? [] : together.problems;
}

async function entriesOfFile(file: File): Promise<Result<Entry[]>> {
  const read = await readLogbook(bytesOf(file), { file: file.name, complete });
  if (!read.ok) return read;
  const known = new Set(logbook.entries.map((entry) => entry.id));
  const fresh = read.value.map((each) => each.entry).filter((entry) => !known.has(entry.id));
  const lineOf = new Map(read.value.map((each) => [each.entry.id, each.line]));
  const checked = checkBatch(fresh, logbook.entries, (entry) => `${file.name}, line ${lineOf.get(entry.id)}`);
  return checked.ok ? ok([...checked.value]) : checked;
}

async function* bytesOf(file: File): AsyncGenerator<Uint8Array> {
  const reader = file.stream().getReader();
  for (let part = await reader.read(); !part.done; part = await reader.read()) yield part.value;
}

/** An entry written by hand, without id, clock and author, is completed as if it were recorded now. */
function complete(draft: EntryDraft): Entry {
  return { id: uuidVersion7(), recordedAt: new Date().toISOString(), by: 'file', ...draft } as Entry;
}
