/** What a language's texts consist of. Each language fills the whole, so a missing sentence does not compile. */
import type { Day } from '../../foundation/index.ts';

export const languages = ['en', 'de'] as const;
export type Language = (typeof languages)[number];

/** Figures that go into a sentence, by name. */
export type Values = Readonly<Record<string, string | number>>;
export type Sentence = (values: Values) => string;

export const stepKeys = [
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
  'end-close-tight',
  'end-freeze',
  'end-bag-and-bin',
  'end-bin-everything',
  'end-empty-and-wash',
  'end-dry',
  'end-wipe-shelf',
  'end-local-rules',
] as const;
export type StepKey = (typeof stepKeys)[number];

export const cautionKeys = [
  'hot-medium',
  'boil-over',
  'flammable-stock',
  'corrosive-acid',
  'dose-high',
  'mould',
  'allergy',
  'carbon-dioxide',
  'chilling',
  'tight-lid',
  'treated-material',
  'children',
  'heat-mat',
  'escapes',
  'never-release',
  'local-rules',
  'freeze-first',
  'mites',
  'vet',
  'wash-hands',
] as const;
export type CautionKey = (typeof cautionKeys)[number];

export const adviceKeys = [
  'runs',
  'shines-and-sticks',
  'moist-and-holds',
  'firm',
  'cracks-from-wall',
  'add-dry-mix',
  'blot-with-paper',
  'stand-open-under-cloth',
  'more-climbing-material',
  'drip-boiled-water',
  'cover-holes-partly',
  'move-from-heat',
  'use-flies-and-restart',
] as const;
export type AdviceKey = (typeof adviceKeys)[number];

export const jobKeys = [
  'start',
  'feed',
  'look',
  'discard',
  'mix',
  'buy',
  'receive',
  'move',
  'stretch',
  'wash',
  'shop',
] as const;
export type JobKey = (typeof jobKeys)[number];

export interface LabelWords {
  started: string;
  firstFlies: string;
  throwOut: string;
}

export interface SitterWords {
  title: string;
  howTitle: string;
  /** How a feeding is done, in steps; a picture stands beside each. */
  how: readonly [string, string, string, string];
  daysTitle: string;
  day: string;
  feed: string;
  fromCup: string;
  look: string;
  /** What looking at a cup means. */
  lookHow: string;
  done: string;
  nothing: string;
  feeding: Sentence;
  wrongTitle: string;
  /** What may go wrong, and what to do then. */
  wrong: readonly (readonly [string, string])[];
  leave: string;
  contact: string;
}

export interface GivenWords {
  title: Sentence;
  what: Sentence;
  datesTitle: Sentence;
  started: string;
  firstFlies: string;
  best: string;
  founders: string;
  throwOut: string;
  feedTitle: string;
  feed: readonly string[];
  nextTitle: string;
  next: readonly string[];
  cautionsTitle: string;
  calendar: string;
  calendarCodes: string;
}

export interface SheetWords {
  cup: string;
  strain: string;
  started: string;
  firstFlies: string;
  foundersBetween: string;
  throwOut: string;
  shelfTitle: string;
  monthLegend: string;
  checklistTitle: Sentence;
  endTitle: string;
  minutes: Sentence;
  /** How long after the beginning of the work. */
  after(minutes: number): string;
  cautions: string;
  made: Sentence;
}

export interface Catalogue {
  language: Language;
  /** `Wed 25 Nov` and `25 November 2026`, in the language's own way; `25 Nov` for labels. */
  dayWithWeekday(day: Day): string;
  dayLong(day: Day): string;
  dayShort(day: Day): string;
  monthTitle(year: number, month: number): string;
  weekdays: readonly string[];
  /** Two dates as a span. */
  span(from: Day, until: Day): string;
  label: LabelWords;
  jobs: Record<JobKey, Sentence>;
  steps: Record<StepKey, Sentence>;
  cautions: Record<CautionKey, string>;
  advice: Record<AdviceKey, string>;
  sitter: SitterWords;
  given: GivenWords;
  sheets: SheetWords;
}
