/** The questions that need the models, answered with the same use cases as at every other door. */
import {
  animals,
  cupBand,
  compare,
  cupLives,
  demoLogbook,
  flyPot,
  hatchRanges,
  forecast,
  hindcast,
  learned,
  lifecycle,
  plan,
  starterRations,
  planChanges,
  rulePrices,
  type Supposing,
  supposing,
  temperature,
  temperatureWhatIf,
  today,
} from '../../app/index.ts';
import type { Day } from '../../foundation/index.ts';
import { type Entry, type Facts, fold } from '../../logbook/index.ts';
import { loggerFile } from './logger-file.ts';
import type { Answer, Ask, Asked, ModelQuestion } from './questions.ts';

export interface Logbook {
  entries: Entry[];
  facts: Facts;
}

type ModelAnswers = { [Q in ModelQuestion]: (ask: Ask<Q>, logbook: Logbook) => Answer<Q> | Promise<Answer<Q>> };

export const modelAnswers: ModelAnswers = {
  today: (asked, { facts }) => today(facts, questionOf(asked)),
  forecast: (asked, { facts }) => forecast(facts, questionOf(asked)),
  prepareWhatIf: (asked, { facts }) => {
    household(facts, asked).prepare(asked.warmerC);
    return null;
  },
  whatIf: (asked, { facts }) => household(facts, asked).forecast(asked, asked.scenarios),
  plan: (asked, { facts }) => plan(facts, questionOf(asked)),
  animals: (asked, { facts }) => animals(facts, questionOf(asked)),
  starters: () => starterRations(),
  hatches: () => hatchRanges(),
  flyPot: ({ on, ...pot }, { facts }) => flyPot(facts, { ...pot, on: on as Day }),
  planChanges: (asked, { facts, entries }) => {
    const since = asked.since as Day;
    return planChanges(fold(entries, { until: since }), facts, since, questionOf(asked));
  },
  compare: (asked, { facts }) => {
    const answer = compare(facts, questionOf(asked));
    if (!answer.ok) throw new RangeError(`compare: ${answer.problems.map((each) => each.where).join(', ')}`);
    return answer.value;
  },
  rulePrices: (asked, { facts }) => rulePrices(facts, questionOf(asked)),
  lives: (asked, { facts }) => cupLives(facts, questionOf(asked)),
  cupBand: (asked, { facts }) => cupBand(facts, questionOf(asked), asked.culture),
  learned: (asked, { facts }) => learned(facts, questionOf(asked)),
  hindcast: (asked, { entries }) => hindcast(entries, questionOf(asked)),
  lifecycle: (ask) => {
    const answer = lifecycle(ask);
    if (!answer.ok) throw new RangeError(`lifecycle: ${answer.problems.map((each) => each.where).join(', ')}`);
    return answer.value;
  },
  temperature: (asked, { facts }) => temperature(facts, questionOf(asked)),
  temperatureWhatIf: (asked, { facts }) => temperatureWhatIf(facts, questionOf(asked), asked.change),
  readLogger: (ask, { facts }) => loggerFile(ask, facts),
  demo: ({ on, language }) => demoLogbook(on as Day, language),
};

function questionOf({ on, seed, scenarios, weeks, language, degrees }: Asked) {
  return {
    on: on as Day,
    seed,
    ...(scenarios && { scenarios }),
    ...(weeks && { weeks }),
    ...(language && { language }),
    ...(degrees && { degrees }),
  };
}

/** The household that suppositions are made about; made anew when the logbook or the day changes. */
let supposed: { facts: Facts; on: string; household: Supposing } | null = null;

function household(facts: Facts, asked: Asked): Supposing {
  if (supposed?.facts !== facts || supposed.on !== asked.on) {
    supposed = { facts, on: asked.on, household: supposing(facts, questionOf(asked)) };
  }
  return supposed.household;
}
