/** How warm each place is and will be, and how far each cup's own clock has run because of it. */
import { beliefDraws } from '../belief-draws.ts';
import { addDays, type Day, told } from '../../foundation/index.ts';
import type { CupBelief } from '../../learning/index.ts';
import type { Facts } from '../../logbook/index.ts';
import { believe, cupHistories, type Histories } from '../evidence.ts';
import { type HouseholdModel, householdModel, type StrainModel } from '../household-model.ts';
import type { Question } from '../question.ts';
import type { CupHistory } from '../cup-history.ts';
import { wordsOf } from '../words/words.ts';
import { cultureClock, lookBackDays } from './culture-clock.ts';
import { aheadDays, pastDays, placeWarmth } from './place-warmth.ts';
import type { TemperatureAnswer } from './temperature-answers.ts';
import { withWeatherAhead } from './weather-draws.ts';

export function temperature(facts: Facts, question: Question): TemperatureAnswer {
  const since = addDays(question.on, -pastDays);
  const model = householdModel(facts, question.on, aheadDays, since);
  const before = householdModel(withoutLastWeek(facts, question.on), question.on, aheadDays, since);
  const answer = {
    on: question.on,
    places: facts.places.map((place) => placeWarmth(model, place)),
    cultures: standingCups(model, question.seed).map(({ strain, cup, belief }) =>
      cultureClock(model, before, strain, cup, belief),
    ),
  };
  return told(answer, wordsOf(question));
}

export interface StandingCup {
  strain: StrainModel;
  cup: CupHistory;
  belief: CupBelief;
}

/** Cups that stand today, oldest first, with what their own log and the weather ahead say of their pace. */
export function standingCups(model: HouseholdModel, seed: number): StandingCup[] {
  const histories: Histories = cupHistories(model);
  const believed = believe(model, histories, seed, beliefDraws(histories));
  const { cups } = withWeatherAhead(model, histories, believed, seed);
  return [...histories].flatMap(([key, ofStrain]) =>
    ofStrain.flatMap((cup) => {
      const belief = cups.get(cup.culture.culture);
      const strain = model.strains.get(key);
      return cup.end === null && belief && strain ? [{ strain, cup, belief }] : [];
    }),
  );
}

function withoutLastWeek(facts: Facts, on: Day): Facts {
  const until = addDays(on, -lookBackDays);
  const places = facts.places.map((p) => ({ ...p, readings: p.readings.filter((r) => r.on <= until) }));
  return { ...facts, places };
}
