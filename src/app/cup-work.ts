/** Work on one cup in sentences: its end done right, and what to do when it is too wet or too dry. */
import { failed, ok, type Result } from '../foundation/index.ts';
import { endReasons } from '../logbook/index.ts';
import { cupEnd, moistureByTouch, moistureByWeight, type Moisture, type Touch, touches } from '../media/index.ts';
import { type CautionKey, type Language, spokenSteps, type StepKey, texts } from '../paper/index.ts';
import type { CupEndingAnswer, MoistureAnswer } from './kitchen/cup-work-answers.ts';

export interface CupEndingQuestion {
  /** A reason that an `ended` entry can give. */
  reason: string;
  /** False for cups that are thrown away. */
  isWashable?: boolean;
  language?: Language;
}

/** The steps for a cup that has ended; none for one that was given away. */
export function cupEnding(question: CupEndingQuestion): Result<CupEndingAnswer> {
  const { reason, isWashable = true, language = 'en' } = question;
  if (!endReasons.some((known) => known === reason)) {
    return failed({ where: 'reason', found: `"${reason}"`, expected: `one of ${endReasons.join(', ')}` });
  }
  const { steps, reuse } = cupEnd(reason, isWashable);
  const keyed = steps.map((s) => ({ ...s, step: s.step as StepKey, cautions: s.cautions as CautionKey[] }));
  const spoken = spokenSteps(keyed, language).map((s, i) => ({ step: steps[i]?.step ?? '', ...s }));
  return ok({ reason, reuse, steps: spoken });
}

export interface MoistureQuestion {
  /** What a clean finger finds; or else the cup's weights. */
  touch?: string;
  firstDayMassG?: number;
  nowMassG?: number;
  mediumMassG?: number;
  hasLarvae?: boolean;
  language?: Language;
}

/** Whether a cup is too wet or too dry, and how it is rescued. */
export function moisture(question: MoistureQuestion): Result<MoistureAnswer> {
  const { hasLarvae = true, language = 'en' } = question;
  const found = question.touch === undefined ? byWeight(question, hasLarvae) : byTouch(question.touch, hasLarvae);
  if (!found.ok) return found;
  const { verdict, rescue, lostShare } = found.value;
  const { advice } = texts(language);
  return ok({ verdict, lostShare, rescue: rescue.map((key) => ({ key, text: advice[key] })) });
}

type Found = Moisture & { lostShare: number | null };

function byTouch(touch: string, hasLarvae: boolean): Result<Found> {
  const known = touches.find((t): t is Touch => t === touch);
  if (known) return ok({ ...moistureByTouch(known, hasLarvae), lostShare: null });
  return failed({ where: 'touch', found: `"${touch}"`, expected: `one of ${touches.join(', ')}` });
}

function byWeight(question: MoistureQuestion, hasLarvae: boolean): Result<Found> {
  const { firstDayMassG, nowMassG, mediumMassG } = question;
  if (firstDayMassG === undefined || nowMassG === undefined || mediumMassG === undefined) {
    const expected = 'touch, or firstDayMassG, nowMassG and mediumMassG';
    return failed({ where: 'question', found: 'neither a touch nor three weights', expected });
  }
  return moistureByWeight({ firstDayMassG, nowMassG, mediumMassG, hasLarvae });
}
