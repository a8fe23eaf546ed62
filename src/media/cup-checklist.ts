/**
 * Starting a cup as guided work: the steps in order, each with its time, its figures and its cautions.
 * Steps and cautions are keys; their sentences live with the texts of each language. Times and depths
 * are common practice unless a source is named; 40 to 60 C and acid last are from the stock centres' recipes.
 */
import type { Dose } from './preservative.ts';

export const startingSteps = [
  'clear-bench',
  'weigh-dry',
  'cook',
  'soak',
  'add-preservative',
  'add-acid',
  'fill',
  'cover-and-cool',
  'check-moisture',
  'live-yeast',
  'climbing-material',
  'knock-down',
  'tap-in-founders',
  'close-lid',
  'label',
  'place',
  'next-day-look',
] as const;
export type StartingStep = (typeof startingSteps)[number];

export interface ChecklistStep {
  step: string;
  /** Minutes from the beginning until the step starts, and how long it takes. */
  afterMinutes: number;
  takesMinutes: number;
  /** Figures for the step's sentence, by name. */
  values: Record<string, string | number>;
  cautions: string[];
}

export interface CupChecklistRequest {
  method: 'cooked' | 'soaked';
  cups: number;
  mediumMassG: number;
  founders: number;
  strainName: string;
  dose: Pick<Dose, 'preservative' | 'amount' | 'unit' | 'stockMl'> | null;
  /** Cups that the founders come from, and other cups to be handled in the same session. */
  sources: readonly HandledCup[];
}

export interface HandledCup {
  label: string;
  ageDays: number;
  hasMites: boolean;
  isQuarantined: boolean;
}

const acids = ['propionic-acid', 'phosphoric-acid', 'acetic-acid'];

/** The steps of one session, in the order of the work. */
export function cupChecklist(request: CupChecklistRequest): ChecklistStep[] {
  const { cups, founders } = request;
  const steps = [
    step('clear-bench', 5, {}, ['mites', 'children']),
    step('weigh-dry', 3 + cups, { cups }, ['allergy']),
    ...cookingSteps(request),
    ...preservativeSteps(request),
    step('fill', 2 * cups, { cups, mediumMassG: Math.round(request.mediumMassG) }, ['hot-medium']),
    step('cover-and-cool', 90, { coolToC: 25 }, ['tight-lid']),
    step('check-moisture', cups, {}, []),
    step('live-yeast', cups, { yeastG: 0.1, grains: 25 }, []),
    step('climbing-material', cups, {}, ['treated-material']),
    step('knock-down', 2 * cups, { order: sourceOrder(request.sources) }, ['chilling', 'carbon-dioxide', 'escapes']),
    step('tap-in-founders', 2 * cups, { founders: Math.round(founders), strain: request.strainName }, ['escapes']),
    step('close-lid', cups, { holeMm: 0.5 }, ['tight-lid']),
    step('label', cups, {}, []),
    step('place', 1, { warmestC: 28 }, ['heat-mat']),
  ];
  const timed = atTimes(steps);
  return [...timed, { ...step('next-day-look', 1 + cups, {}, ['mould']), afterMinutes: 24 * 60 }];
}

/**
 * The order in which cups are opened: youngest first, so that mites do not travel from old cups to young
 * ones; cups in quarantine after all others, cups with mites last of all.
 */
export function handlingOrder<T extends HandledCup>(cups: readonly T[]): T[] {
  const rank = (cup: HandledCup) => (cup.hasMites ? 2 : cup.isQuarantined ? 1 : 0);
  return [...cups].sort((a, b) => rank(a) - rank(b) || a.ageDays - b.ageDays || a.label.localeCompare(b.label));
}

function sourceOrder(cups: readonly HandledCup[]): string {
  return handlingOrder(cups.filter((c) => !c.hasMites && !c.isQuarantined))
    .map((c) => c.label)
    .join(', ');
}

function cookingSteps(request: CupChecklistRequest): ChecklistStep[] {
  return request.method === 'cooked'
    ? [step('cook', 15, { boilMinutes: 10 }, ['hot-medium', 'boil-over', 'children'])]
    : [step('soak', 15, { soakMinutes: 10 }, ['hot-medium', 'boil-over', 'children'])];
}

function preservativeSteps({ dose }: CupChecklistRequest): ChecklistStep[] {
  if (!dose) return [];
  const isAcid = acids.includes(dose.preservative);
  const amount = Number((dose.stockMl ?? dose.amount).toPrecision(3));
  const values = {
    preservative: dose.preservative,
    amount,
    unit: dose.stockMl === null ? dose.unit : 'ml',
    belowC: 60,
  };
  return isAcid
    ? [step('add-acid', 5, values, ['corrosive-acid'])]
    : [step('add-preservative', 5, values, dose.stockMl === null ? ['dose-high'] : ['flammable-stock'])];
}

function step(
  key: StartingStep,
  takesMinutes: number,
  values: ChecklistStep['values'],
  cautions: string[],
): ChecklistStep {
  return { step: key, afterMinutes: 0, takesMinutes, values, cautions };
}

function atTimes(steps: readonly ChecklistStep[]): ChecklistStep[] {
  let afterMinutes = 0;
  return steps.map((s) => {
    const timed = { ...s, afterMinutes };
    afterMinutes += s.takesMinutes;
    return timed;
  });
}
