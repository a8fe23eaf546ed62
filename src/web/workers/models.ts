/** The questions that need the models, answered with the same use cases as at every other door. */
import {
  cupLives,
  demoLogbook,
  forecast,
  forecastWithNeed,
  learned,
  lifecycle,
  plan,
  type Situation,
  situation,
  today,
  warmerFacts,
} from '../../app/index.ts';
import type { Day } from '../../foundation/index.ts';
import type { Entry, Facts } from '../../logbook/index.ts';
import type { Answer, Ask, Asked, ModelQuestion, Supposition } from './questions.ts';

export interface Logbook {
  entries: Entry[];
  facts: Facts;
}

type ModelAnswers = { [Q in ModelQuestion]: (ask: Ask<Q>, logbook: Logbook) => Answer<Q> };

export const modelAnswers: ModelAnswers = {
  today: (asked, { facts }) => today(facts, questionOf(asked)),
  forecast: (asked, { facts }) => forecast(facts, questionOf(asked)),
  whatIf: (asked, { facts }) => forecastWithNeed(supposedSituation(facts, asked), questionOf(asked), asked.needFactor),
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

function questionOf({ on, seed, scenarios, weeks, language }: Asked) {
  return {
    on: on as Day,
    seed,
    ...(scenarios && { scenarios }),
    ...(weeks && { weeks }),
    ...(language && { language }),
  };
}

/** Situations of the household in other warmth, made once for each step of the slider. */
let supposed: { facts: Facts; on: string; byWarmth: Map<number, Situation> } | null = null;
const whatIfWeeks = 13;

function supposedSituation(facts: Facts, asked: Asked & Supposition): Situation {
  if (supposed?.facts !== facts || supposed.on !== asked.on) supposed = { facts, on: asked.on, byWarmth: new Map() };
  const known = supposed.byWarmth.get(asked.warmerC);
  if (known) return known;
  const made = situation(warmerFacts(facts, asked.warmerC), questionOf(asked), whatIfWeeks);
  supposed.byWarmth.set(asked.warmerC, made);
  return made;
}
