/**
 * The end of a cup as a job done right: kill first, then bin or wash; what may be used again, and what
 * must go. Common practice; waste rules differ from place to place.
 */
import type { ChecklistStep } from './cup-checklist.ts';

export const endingSteps = [
  'end-close-tight',
  'end-freeze',
  'end-bag-and-bin',
  'end-bin-everything',
  'end-empty-and-wash',
  'end-dry',
  'end-wipe-shelf',
  'end-local-rules',
] as const;
export type EndingStep = (typeof endingSteps)[number];

export interface CupEnd {
  steps: ChecklistStep[];
  /** What may be used again after washing; empty when everything goes. */
  reuse: ('cup' | 'lid')[];
}

const binnedWhole: readonly string[] = ['mould', 'mites', 'contaminated'];
const frozenHours = 48;

/** The steps for a cup that ended for `reason` (spent, mould, mites, dry, wet, crashed, contaminated, given, other). */
export function cupEnd(reason: string, isCupWashable: boolean): CupEnd {
  if (reason === 'given') return { steps: [], reuse: [] };
  const isBinnedWhole = binnedWhole.includes(reason) || !isCupWashable;
  const steps = [
    step('end-close-tight', 1, reason === 'mould' ? ['mould', 'allergy'] : ['never-release']),
    step('end-freeze', frozenHours * 60, ['freeze-first'], { hours: frozenHours, atC: -18 }),
    ...(isBinnedWhole ? [step('end-bin-everything', 2, [])] : [step('end-bag-and-bin', 2, ['never-release'])]),
    ...(isBinnedWhole ? [] : [step('end-empty-and-wash', 10, ['treated-material']), step('end-dry', 12 * 60, [])]),
    ...(reason === 'mites' ? [step('end-wipe-shelf', 10, ['mites', 'treated-material'])] : []),
    step('end-local-rules', 0, ['local-rules']),
  ];
  return { steps: inOrder(steps), reuse: isBinnedWhole ? [] : ['cup', 'lid'] };
}

function step(
  key: EndingStep,
  takesMinutes: number,
  cautions: string[],
  values: ChecklistStep['values'] = {},
): ChecklistStep {
  return { step: key, afterMinutes: 0, takesMinutes, values, cautions };
}

function inOrder(steps: readonly ChecklistStep[]): ChecklistStep[] {
  let afterMinutes = 0;
  return steps.map((s) => {
    const timed = { ...s, afterMinutes };
    afterMinutes += s.takesMinutes;
    return timed;
  });
}
