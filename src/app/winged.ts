/** "I saw a winged fly": what it means in that cup and what to do, before or while it is written down. */
import { failed, ok, type Result } from '../foundation/index.ts';
import type { Facts } from '../logbook/index.ts';
import type { Language } from '../paper/index.ts';
import { householdModel } from './household-model.ts';
import { chosenCups } from './kitchen/chosen-cups.ts';
import type { LineWarning } from './lines/line-answer.ts';
import { lineVoice } from './lines/text/line-voice.ts';
import { wingedFlies } from './lines/winged-warning.ts';
import type { Question } from './question.ts';

export interface WingedQuestion extends Pick<Question, 'on'> {
  /** The cup in which it was seen, by key or label. */
  culture: string;
  language?: Language;
}

const horizonDays = 60;

/** Refused: a cup that is not there, or has ended. */
export function winged(facts: Facts, { on, culture, language }: WingedQuestion): Result<LineWarning> {
  const found = chosenCups(facts, [culture]);
  if (!found.ok) return found;
  const cup = found.value[0];
  if (!cup || cup.ended) return failed({ where: 'culture', found: culture, expected: 'a cup that lives' });
  const model = householdModel(facts, on, horizonDays);
  return ok(wingedFlies({ model, voice: lineVoice(language), byKey: new Map() }, cup, on));
}
