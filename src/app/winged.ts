/** "I saw a winged fly", or mites, or mould: what it means in that cup and what to do, before it is written down. */
import { failed, ok, type Result, told } from '../foundation/index.ts';
import type { Facts } from '../logbook/index.ts';
import { householdModel } from './household-model.ts';
import { chosenCups } from './kitchen/chosen-cups.ts';
import type { LineWarning } from './lines/line-answer.ts';
import { nearby } from './lines/line-warnings.ts';
import { wingedFlies } from './lines/winged-warning.ts';
import type { Question } from './question.ts';
import { wordsOf } from './words/words.ts';

export interface WingedQuestion extends Pick<Question, 'on' | 'language' | 'degrees'> {
  /** The cup in which it was seen, by key or label. */
  culture: string;
}

const horizonDays = 60;

export interface ThreatQuestion extends WingedQuestion {
  kind: 'winged' | 'mites' | 'mould';
}

/** Refused: a cup that is not there, or has ended. */
export function winged(facts: Facts, question: WingedQuestion): Result<LineWarning> {
  return threat(facts, { ...question, kind: 'winged' });
}

/** As `winged`, for anything that threatens a line. */
export function threat(facts: Facts, { on, culture, kind, ...telling }: ThreatQuestion): Result<LineWarning> {
  const found = chosenCups(facts, [culture]);
  if (!found.ok) return found;
  const cup = found.value[0];
  if (!cup || cup.ended) return failed({ where: 'culture', found: culture, expected: 'a cup that lives' });
  const model = householdModel(facts, on, horizonDays);
  const byKey = new Map(facts.cultures.map((each) => [each.culture, each]));
  const context = { model, byKey };
  const warning = kind === 'winged' ? wingedFlies(context, cup, on) : nearby(context, cup, on, kind);
  return ok(told(warning, wordsOf(telling)));
}
