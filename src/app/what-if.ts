/**
 * The forecast of a household that is a little different from now on: warmer or colder places, or
 * hungrier animals. A situation is dear to make and serves every appetite, so the caller keeps it while
 * a slider moves.
 */
import type { Facts, PlaceFacts } from '../logbook/index.ts';
import { forecastSupply } from '../planner/index.ts';
import type { ForecastAnswer } from './answers.ts';
import { tunedPolicy } from './kept-work.ts';
import { forecastAnswer } from './forecast.ts';
import type { Situation } from './planning-problem.ts';
import type { Question } from './question.ts';

/** The facts, had every place's expected temperature been that much higher; readings stay as they were read. */
export function warmerFacts(facts: Facts, warmerC: number): Facts {
  return { ...facts, places: facts.places.map((place) => ({ ...place, expected: warmer(place.expected, warmerC) })) };
}

/** The forecast in that situation with every day's need multiplied by `needFactor`. */
export function forecastWithNeed(at: Situation, question: Question, needFactor: number): ForecastAnswer {
  const strains = at.problem.strains.map((strain) => ({
    ...strain,
    wantedFlies: strain.wantedFlies.map((flies) => flies * needFactor),
    groups: (strain.groups ?? []).map((group) => ({ ...group, flies: group.flies.map((flies) => flies * needFactor) })),
  }));
  const scenarios = question.scenarios ?? 200;
  const result = forecastSupply(
    { ...at.problem, strains },
    {
      scenarios,
      starts: 'policy',
      parameters: tunedPolicy(at, question),
    },
  );
  return forecastAnswer(question, result, at.model.today);
}

function warmer(expected: PlaceFacts['expected'], byC: number): PlaceFacts['expected'] {
  if ('allYearC' in expected) return { allYearC: expected.allYearC + byC };
  const { winterC, springC, summerC, autumnC } = expected;
  return { winterC: winterC + byC, springC: springC + byC, summerC: summerC + byC, autumnC: autumnC + byC };
}
