/** Steps of work as sentences: starting a cup, ending one. Steps and cautions come as keys with their figures. */
import type { CautionKey, Language, StepKey, Values } from '../text/catalogue.ts';
import { texts } from '../text/texts.ts';

export interface WorkStep {
  step: StepKey;
  afterMinutes: number;
  takesMinutes: number;
  values: Values;
  cautions: readonly CautionKey[];
}

export interface SpokenStep {
  text: string;
  afterMinutes: number;
  takesMinutes: number;
  cautions: string[];
}

/** The steps as sentences. */
export function spokenSteps(steps: readonly WorkStep[], language: Language): SpokenStep[] {
  const t = texts(language);
  return steps.map(({ step, values, cautions, afterMinutes, takesMinutes }) => ({
    text: t.steps[step](values),
    afterMinutes,
    takesMinutes,
    cautions: cautions.map((c) => t.cautions[c]),
  }));
}
