/** The household with its cups by key, made once for all of its lines. */
import type { CultureFacts } from '../../logbook/index.ts';
import type { HouseholdModel } from '../household-model.ts';

export interface LineContext {
  model: HouseholdModel;
  byKey: ReadonlyMap<string, CultureFacts>;
}
