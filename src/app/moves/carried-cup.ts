/** A cup as it would be had it been carried to another place today. */
import { dayFromNumber, type DayNumber } from '../../foundation/index.ts';
import type { CupBelief } from '../../learning/index.ts';
import type { Carrying } from '../../planner/index.ts';
import type { StrainModel } from '../household-model.ts';
import { cupCurve, nominalCup } from '../nominal-cup.ts';
import type { Situation } from '../planning-problem.ts';
import type { CupHistory } from '../cup-history.ts';
import { nextShift } from '../temperature/changed-cup.ts';

export interface CarriedCup {
  history: CupHistory;
  carrying: Carrying;
  /** Its next event, by how many days later it comes (negative: earlier), and when. */
  shift: { next: 'firstAdults' | 'peak' | 'spent'; laterDays: number; on: DayNumber };
}

/** Null for a cup that does not stand. */
export function carriedCup(at: Situation, strain: string, culture: string, place: string): CarriedCup | null {
  const { model, histories, beliefs } = at;
  const cup = histories.get(strain)?.find((c) => c.culture.culture === culture && c.end === null);
  const belief: CupBelief | undefined = beliefs.cups.get(culture);
  const life = model.strains.get(strain);
  return cup && belief && life ? carried(at, life, cup, belief, place) : null;
}

function carried(
  { model }: Situation,
  life: StrainModel,
  cup: CupHistory,
  belief: CupBelief,
  place: string,
): CarriedCup {
  const from = dayFromNumber(model.today);
  const places = [...cup.culture.places.filter((stay) => stay.from < from), { from, place }];
  const culture = { ...cup.culture, places };
  const nominal = nominalCup(model, life, culture);
  return {
    history: { ...cup, culture, nominal },
    carrying: { strain: culture.strain, cup: culture.culture, place, curve: cupCurve(nominal) },
    shift: nextShift(cup, belief, nominal.dates, model.today),
  };
}
