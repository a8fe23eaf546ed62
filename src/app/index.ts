export { animals, type AnimalsQuestion } from './animals.ts';
export {
  type AnimalsAnswer,
  animalsAnswer,
  flyPotAnswer,
  type HatchRange,
  hatchRange,
  type RationAnswer,
  rationAnswer,
  type StarterRation,
  starterRation,
} from './animals/animal-answers.ts';
export { hatchRanges } from './animals/hatch-ranges.ts';
export { starterRations } from './animals/starter-rations.ts';
export {
  type CrossAnswer,
  crossAnswer,
  type CultureToday,
  type ForecastAnswer,
  forecastAnswer,
  type Job,
  jobKinds,
  type LifecycleAnswer,
  lifecycleAnswer,
  type PlanAnswer,
  planAnswer,
  type TodayAnswer,
  todayAnswer,
} from './answers.ts';
export { entryInWords, namesIn } from './entry-in-words.ts';
export { cross, type CrossQuestion } from './cross.ts';
export { type CupBand, cupBand, type CupLife, cupLives } from './cup-lives.ts';
export type { Telling } from './words/words.ts';
export { dayWords } from './words/day-words.ts';
export { demoLogbook } from './demo/demo-logbook.ts';
export { forecast, type ForecastQuestion } from './forecast.ts';
export { hindcast, type HindcastQuestion } from './hindcast/hindcast.ts';
export { type HindcastAnswer, hindcastAnswer } from './hindcast/hindcast-answer.ts';
export { learned } from './learned.ts';
export { type Learned, learnedAnswer } from './learned-answer.ts';
export { type KeptWork, keptWork, keptWorkChanges, recallWork } from './kept-work.ts';
export { lifecycle, type LifecycleQuestion } from './lifecycle.ts';
export { lines, type LinesQuestion } from './lines.ts';
export {
  cleanLineAnswer,
  lineWarning,
  type LinesAnswer,
  type LineWarning,
  linesAnswer,
  type MixingAnswer,
  mixingAnswer,
} from './lines/line-answer.ts';
export { plan } from './plan.ts';
export { type Situation, situation } from './planning-problem.ts';
export type { Question } from './question.ts';
export { hourlyFromFile } from './temperature-file.ts';
export { joinedJobs } from './jobs/joined-jobs.ts';
export { jobsBeforePlan } from './jobs-before-plan.ts';
export { today } from './today.ts';
export { calendar, type CalendarQuestion } from './calendar.ts';
export { labels, type LabelsAnswer, type LabelsQuestion, usualLabelSheet } from './labels.ts';
export { mix, type MixQuestion } from './mix.ts';
export { type MixAnswer, mixAnswer } from './kitchen/mix-answer.ts';
export { given, type GivenQuestion, month, shelf, type ShelfQuestion, sitter, type SitterQuestion } from './sheets.ts';
export { sheetHtml } from '../paper/index.ts';
export { shopping, type ShoppingQuestion } from './shopping.ts';
export { type ShoppingAnswer, shoppingAnswer } from './kitchen/shopping-answer.ts';
export { ration, type RationQuestion } from './ration.ts';
export { flyPot, type FlyPotQuestion } from './fly-pot.ts';
export { type CleanLineAnswer, cleanLine, type CleanLineQuestion, mixing, type MixingQuestion } from './mixing.ts';
export { ledger } from './ledger.ts';
export { larder, type LarderQuestion } from './larder.ts';
export {
  type LarderAnswer,
  larderAnswer,
  type RecipeBookAnswer,
  recipeBookAnswer,
} from './kitchen/larder-answer.ts';
export { kitchenWords, recipeBook, weighed, type WeightQuestion, writtenRecipe } from './recipe-book.ts';
export { kitchenCautions } from './kitchen-cautions.ts';
export { labelSheets } from '../paper/index.ts';
export { strainBook } from './strain-book.ts';
export { type StrainBook, strainBookAnswer } from './lines/strain-book-answer.ts';
export { threat, type ThreatQuestion, winged, type WingedQuestion } from './winged.ts';
export { type LedgerAnswer, ledgerAnswer } from './kitchen/ledger-answer.ts';
export { cupEnding, type CupEndingQuestion, moisture, type MoistureQuestion } from './cup-work.ts';
export {
  type CupEndingAnswer,
  cupEndingAnswer,
  type MoistureAnswer,
  moistureAnswer,
} from './kitchen/cup-work-answers.ts';
export { type Supposing, type Supposition, supposing } from './what-if.ts';
export {
  correctedForm,
  type LoggerCorrection,
  type LoggerImport,
  loggerImport,
  placeAsked,
} from './temperature/logger-import.ts';
export { type LoggerPlan, loggerPlan, loggerSampleChars } from './temperature/logger-file.ts';
export {
  guessLoggerForm,
  type LoggerForm,
  type LoggerGuess,
  LoggerReader,
  type LoggerReport,
  readLogger,
  type IntakeState,
  SensorIntake,
  type SensorSpan,
  temperatureUnits,
  timeOrders,
  ZoneClock,
} from '../climate/index.ts';
export { temperature } from './temperature/temperature.ts';
export { type TemperatureWhatIf, temperatureWhatIf } from './temperature/temperature-what-if.ts';
export {
  type TemperatureAnswer,
  temperatureAnswer,
  type TemperatureWhatIfAnswer,
  temperatureWhatIfAnswer,
} from './temperature/temperature-answers.ts';
export { type Change, change, changeForms, parseChanges } from './compare/change.ts';
export { compare, type CompareQuestion } from './compare/compare.ts';
export {
  type CompareAnswer,
  compareAnswer,
  type PlanColumn,
  type RulePricesAnswer,
  rulePricesAnswer,
} from './compare/compare-answers.ts';
export { rulePrices } from './compare/rule-prices.ts';
export { planChanges } from './plan/plan-changes.ts';
export { planGap } from './plan/plan-gap.ts';
export { type GapStep, type PlanGapAnswer, planGapAnswer } from './plan/plan-gap-answer.ts';
export { solverOf } from './plan/solver.ts';
export { type PlanChangesAnswer, planChangesAnswer } from './plan/plan-changes-answer.ts';
