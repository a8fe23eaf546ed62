/** How long a generation takes where a cup stands. */
import { daysUntil, meanTemperatureC } from '../../biology/index.ts';
import type { CultureFacts } from '../../logbook/index.ts';
import { type HouseholdModel, paceOf } from '../household-model.ts';

export interface GenerationTime {
  /** Mean of the fortnight up to today, or of the cup's life when shorter, C. */
  temperatureC: number;
  eggToAdultDays: number;
  /** From starting a cup until the flies that come of it can be judged and lay. */
  generationDays: number;
}

const fortnight = 14;
/** Days from emergence to the first eggs. */
const daysToLay = 3;

/** Null for a strain that the models do not know. */
export function generationOf(model: HouseholdModel, strain: string, { places }: CultureFacts): GenerationTime | null {
  const known = model.strains.get(strain);
  if (!known) return null;
  const pace = paceOf(model, known, places);
  const today = Math.min(pace.days - 1, model.today - model.firstDay);
  const from = Math.max(0, today - fortnight);
  const eggToAdultDays = daysUntil(pace.development, today, 1);
  if (!Number.isFinite(eggToAdultDays)) return null;
  return {
    temperatureC: meanTemperatureC(pace, from, Math.max(1, today - from)),
    eggToAdultDays,
    generationDays: eggToAdultDays + daysToLay,
  };
}
