/** The household's lines: pedigrees, what threatens them and what to do, cups in quarantine. */
import { dayFromNumber, dayNumber, told } from '../foundation/index.ts';
import type { CultureFacts, Facts } from '../logbook/index.ts';
import { quarantine } from '../strains/index.ts';
import { type HouseholdModel, householdModel } from './household-model.ts';
import { generationOf } from './lines/generation-time.ts';
import type { SaidQuarantine } from './lines/line-said.ts';
import type { LinesAnswer } from './lines/line-answer.ts';
import { linePicture } from './lines/line-picture.ts';
import { warningsOf } from './lines/line-warnings.ts';
import type { Question } from './question.ts';
import { wordsOf } from './words/words.ts';

/** Days ahead for which temperatures are needed: a few slow generations. */
const horizonDays = 60;

export type LinesQuestion = Pick<Question, 'on' | 'language' | 'degrees'>;

export function lines(facts: Facts, { on, ...telling }: LinesQuestion): LinesAnswer {
  const model = householdModel(facts, on, horizonDays);
  const known = facts.cultures.filter((culture) => culture.on <= on);
  const context = { model, byKey: new Map(known.map((culture) => [culture.culture, culture])) };
  const answer = {
    on,
    strains: facts.strains.flatMap(({ strain }) => linePicture({ ...facts, cultures: known }, strain) ?? []),
    warnings: known.flatMap((culture) => warningsOf(context, culture)),
    quarantine: known.flatMap((culture) => quarantined(model, culture) ?? []),
  };
  return told(answer, wordsOf(telling));
}

function quarantined(model: HouseholdModel, culture: CultureFacts): SaidQuarantine | null {
  const { quarantinedUntil } = culture;
  if (culture.origin !== 'bought' || culture.ended || quarantinedUntil === null) return null;
  if (dayNumber(quarantinedUntil) < model.today) return null;
  const generationDays = generationOf(model, culture.strain, culture)?.generationDays ?? 14;
  const { steps } = quarantine(dayNumber(culture.on), generationDays);
  return {
    culture: culture.culture,
    label: culture.label,
    until: quarantinedUntil,
    steps: steps.map(({ onDay, act }) => ({ date: dayFromNumber(onDay), act })),
  };
}
