/**
 * The worker: it holds the logbook and its facts, and answers questions with the same use cases as the
 * command line and the server. It works one question at a time.
 */
import { v7 as uuidVersion7 } from 'uuid';
import { cupLives, demoLogbook, forecast, learned, lifecycle, plan, today } from '../../app/index.ts';
import { type Day, ok, type Problem, type Result } from '../../foundation/index.ts';
import {
  checkBatch,
  checkEntry,
  type Entry,
  type EntryDraft,
  entrySentence,
  type Facts,
  fold,
  type Names,
  readLogbook,
} from '../../logbook/index.ts';
import type { Answer, Ask, Asked, QuestionMessage, QuestionName } from './questions.ts';

let entries: Entry[] = [];
let facts: Facts = fold([]);

const answers: { [Q in QuestionName]: (ask: Ask<Q>) => Answer<Q> | Promise<Answer<Q>> } = {
  load: ({ entries: all }) => remember(all),
  append: ({ entries: more }) => remember([...entries, ...more]),
  check: ({ entries: batch }) => problemsOf(batch),
  today: (asked) => today(facts, questionOf(asked)),
  forecast: (asked) => forecast(facts, questionOf(asked)),
  whatIf: (asked) => forecast(fold([...entries, ...asked.supposing.map(supposedEntry)]), questionOf(asked)),
  plan: (asked) => plan(facts, questionOf(asked)),
  lives: (asked) => cupLives(facts, questionOf(asked)),
  learned: (asked) => learned(facts, questionOf(asked)),
  lifecycle: (ask) => {
    const answer = lifecycle(ask);
    if (!answer.ok) throw new RangeError(`lifecycle: ${answer.problems.map((each) => each.where).join(', ')}`);
    return answer.value;
  },
  sentences: ({ ids }) => sentencesOf(ids),
  readFile: ({ file }) => entriesOfFile(file),
  demo: ({ on }) => demoLogbook(on as Day),
};

onmessage = async (event: MessageEvent<QuestionMessage>) => {
  const { number, question, ask } = event.data;
  try {
    const answer = await answers[question](ask as never);
    postMessage({ number, ok: true, answer });
  } catch (error) {
    postMessage({ number, ok: false, message: String((error as Error).message ?? error) });
  }
};

function remember(all: Entry[]): Facts {
  entries = all;
  facts = fold(entries);
  return facts;
}

function questionOf({ on, seed, scenarios, weeks }: Asked) {
  return { on: on as Day, seed, ...(scenarios && { scenarios }), ...(weeks && { weeks }) };
}

/** A what-if's entries are never kept: their ids only have to sort after all real ones. */
function supposedEntry(draft: EntryDraft, i: number): Entry {
  const id = `ffffffff-ffff-7fff-bfff-${i.toString(16).padStart(12, '0')}`;
  return { id, recordedAt: '2199-12-31T00:00:00.000Z', by: 'what-if', ...draft } as Entry;
}

/** What is wrong with the entries themselves, and with their place in this logbook. */
function problemsOf(batch: Entry[]): Problem[] {
  const alone = batch.map((entry) => checkEntry(entry, entry.kind)).flatMap((each) => (each.ok ? [] : each.problems));
  if (alone.length > 0) return alone;
  const together = checkBatch(batch, entries, (entry) => entry.kind);
  return together.ok ? [] : together.problems;
}

async function entriesOfFile(file: File): Promise<Result<Entry[]>> {
  const read = await readLogbook(bytesOf(file), { file: file.name, complete });
  if (!read.ok) return read;
  const known = new Set(entries.map((entry) => entry.id));
  const fresh = read.value.map((each) => each.entry).filter((entry) => !known.has(entry.id));
  const lineOf = new Map(read.value.map((each) => [each.entry.id, each.line]));
  const checked = checkBatch(fresh, entries, (entry) => `${file.name}, line ${lineOf.get(entry.id)}`);
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

function sentencesOf(ids: string[]): string[] {
  const byId = new Map(entries.map((entry) => [entry.id, entry]));
  const names = namesOf(facts);
  return ids.map((id) => {
    const entry = byId.get(id);
    return entry ? entrySentence(entry, names) : '';
  });
}

function namesOf({ cultures, places, strains, containers, recipes, groups }: Facts): Names {
  return {
    culture: new Map(cultures.map((each) => [each.culture, each.label])),
    place: new Map(places.map((each) => [each.place, each.name])),
    strain: new Map(strains.map((each) => [each.strain, each.name])),
    container: new Map(containers.map((each) => [each.container, each.name])),
    recipe: new Map(recipes.map((each) => [each.recipe, each.name])),
    group: new Map(groups.map((each) => [each.group, each.name])),
  };
}
