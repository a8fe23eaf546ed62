/** The household with its cups by key, made once for all of its lines. */
import type { CultureFacts } from '../../logbook/index.ts';
import type { HouseholdModel } from '../household-model.ts';
import type { LineVoice } from './text/line-voice.ts';

export interface LineContext {
  model: HouseholdModel;
  voice: LineVoice;
  byKey: ReadonlyMap<string, CultureFacts>;
}
