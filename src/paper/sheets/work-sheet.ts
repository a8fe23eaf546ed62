/** Steps of work to tick off: starting a cup, ending one. Steps and cautions come as keys with their figures. */
import type { CautionKey, Language, StepKey, Values } from '../text/catalogue.ts';
import { texts } from '../text/texts.ts';
import type { Block, Sheet } from './sheet.ts';

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

/** The sheet for a piece of work: ingredients first when there are any, then the steps, then each caution once. */
export function workSheet(request: {
  language: Language;
  title: string;
  subtitle: string;
  ingredients: readonly (readonly string[])[];
  steps: readonly WorkStep[];
}): Sheet {
  const t = texts(request.language);
  const spoken = spokenSteps(request.steps, request.language);
  const cautions = [...new Set(spoken.flatMap((s) => s.cautions))];
  const ingredients: Block[] =
    request.ingredients.length === 0
      ? []
      : [{ kind: 'table', head: [], rows: request.ingredients.map((row) => row.map((text) => [{ text }])) }];
  const warnings: Block[] =
    cautions.length === 0 ? [] : [{ kind: 'warnings', title: t.sheets.cautions, items: cautions }];
  return {
    language: request.language,
    title: request.title,
    subtitle: request.subtitle,
    orientation: 'portrait',
    blocks: [
      ...ingredients,
      { kind: 'ticks', items: spoken.map((s) => ({ text: s.text, aside: t.sheets.after(s.afterMinutes) })) },
      ...warnings,
    ],
  };
}
