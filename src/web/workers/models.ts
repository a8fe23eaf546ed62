/** The questions that need the models, answered with the same use cases as at every other door. */
import { cupLives, demoLogbook, forecast, learned, lifecycle, plan, today } from '../../app/index.ts';
import type { Day } from '../../foundation/index.ts';
import { type Entry, type EntryDraft, type Facts, fold } from '../../logbook/index.ts';
import type { Answer, Ask, Asked, ModelQuestion } from './questions.ts';

export interface Logbook {
  entries: Entry[];
  facts: Facts;
}

type ModelAnswers = { [Q in ModelQuestion]: (ask: Ask<Q>, logbook: Logbook) => Answer<Q> };

export const modelAnswers: ModelAnswers = {
  today: (asked, { facts }) => today(facts, questionOf(asked)),
  forecast: (asked, { facts }) => forecast(facts, questionOf(asked)),
  whatIf: (asked, { entries }) =>
    forecast(fold([...entries, ...asked.supposing.map(supposedEntry)]), questionOf(asked)),
  plan: (asked, { facts }) => plan(facts, questionOf(asked)),
  lives: (asked, { facts }) => cupLives(facts, questionOf(asked)),
  learned: (asked, { facts }) => learned(facts, questionOf(asked)),
  lifecycle: (ask) => {
    const answer = lifecycle(ask);
    if (!answer.ok) throw new RangeError(`lifecycle: ${answer.problems.map((each) => each.where).join(', ')}`);
    return answer.value;
  },
  demo: ({ on }) => demoLogbook(on as Day),
};

function questionOf({ on, seed, scenarios, weeks }: Asked) {
  return { on: on as Day, seed, ...(scenarios && { scenarios }), ...(weeks && { weeks }) };
}

/** A what-if's entries are never kept: their ids only have to sort after all real ones. */
function supposedEntry(draft: EntryDraft, i: number): Entry {
  const id = `ffffffff-ffff-7fff-bfff-${i.toString(16).padStart(12, '0')}`;
  return { id, recordedAt: '2199-12-31T00:00:00.000Z', by: 'what-if', ...draft } as Entry;
}
