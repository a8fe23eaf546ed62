/** What the kitchen, the paper and the strains' screens ask, one line a question. */
import type {
  CleanLineAnswer,
  CleanLineQuestion,
  CrossAnswer,
  CrossQuestion,
  CupEndingAnswer,
  LabelsAnswer,
  LarderAnswer,
  LedgerAnswer,
  LinesAnswer,
  LineWarning,
  MixAnswer,
  MixingAnswer,
  MixQuestion,
  MoistureAnswer,
  MoistureQuestion,
  RecipeBookAnswer,
  ShoppingAnswer,
  StrainBook,
  Telling,
  WeightQuestion,
} from '../../app/index.ts';
import type { Result } from '../../foundation/index.ts';
import type { EntryDraft } from '../../logbook/index.ts';
import type { Language } from '../text/text.svelte.ts';
import type { Asked } from './asked.ts';

export type PaperAsk = Asked & { language: Language } & (
    | { kind: 'labels'; cultures: string[]; sheet: string; skip: number; linkBase: string }
    | { kind: 'shelf'; place?: string }
    | { kind: 'month'; month: string }
    | { kind: 'sitter'; from: string; until: string; contact: string }
    | { kind: 'given'; culture: string; temperatureC: number; calendarLink?: string }
  );

/** A whole HTML document. */
export interface Paper {
  html: string;
  pages?: LabelsAnswer['pages'];
}

export interface RecipeAsk {
  recipe: string;
  name: string;
  lines: { ingredient: string; amount: number; measure: string }[];
}

export type RecipeDraft = Omit<Extract<EntryDraft, { kind: 'recipe' }>, 'on'>;

export interface KitchenBook {
  recipes: RecipeBookAnswer;
  ingredients: { ingredient: string; kind: string }[];
  cautions: string[];
}

export interface HouseQuestions {
  larder: { ask: { on: string; recipe?: string }; answer: Result<LarderAnswer> };
  kitchenBook: { ask: { language: Language }; answer: KitchenBook };
  mix: { ask: Omit<MixQuestion, 'on'> & { on: string }; answer: Result<MixAnswer> };
  weighed: { ask: WeightQuestion; answer: Result<{ amount: number }> };
  recipe: { ask: RecipeAsk; answer: Result<RecipeDraft> };
  shopping: { ask: Asked & { until: string; recipe?: string }; answer: Result<ShoppingAnswer> };
  ledger: { ask: Asked; answer: LedgerAnswer };
  cupEnding: { ask: { reason: string; isWashable: boolean; language: Language }; answer: Result<CupEndingAnswer> };
  moisture: { ask: MoistureQuestion; answer: Result<MoistureAnswer> };
  paper: { ask: PaperAsk; answer: Result<Paper> };
  calendarFile: {
    ask: Asked & { language: Language; madeAt: string; withFeeding: boolean; linkBase: string; at: string | null };
    answer: Result<string>;
  };
  strainBook: { ask: { on: string }; answer: StrainBook };
  lines: { ask: Telling & { on: string }; answer: LinesAnswer };
  mixing: { ask: { first: string; second: string; language: Language }; answer: Result<MixingAnswer> };
  threat: {
    ask: Telling & { on: string; culture: string; kind: 'winged' | 'mites' | 'mould' };
    answer: Result<LineWarning>;
  };
  cleanLine: { ask: CleanLineQuestion; answer: Result<CleanLineAnswer> };
  cross: { ask: CrossQuestion; answer: Result<CrossAnswer> };
}
