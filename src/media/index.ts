export type {
  IngredientDensity,
  IngredientKind,
  KitchenTables,
  Measure,
  MeasureSystem,
  PreservativeRange,
} from './kitchen-tables.ts';
export { type Conversion, type ConversionRequest, convert, toGrams } from './measures.ts';
export {
  checkRecipe,
  finishedVolumeMl,
  massOfKindsG,
  type Recipe,
  type RecipeLine,
  recipeFromLines,
  recipeMassG,
} from './recipe.ts';
export {
  type CupSize,
  type CupsOfMedium,
  type CupsOnHand,
  cupsFromStock,
  scaleRecipe,
  scaleToBatch,
  scaleToCups,
} from './scale.ts';
export { type WaterRatio, waterForDryMl, waterRatio } from './water-ratio.ts';
export {
  amountForDose,
  type Dose,
  type DoseRequest,
  type DoseVerdict,
  doseOfAmount,
  undissociatedShare,
} from './preservative.ts';
export { asSpoons, type RoundedMass, roundToScale, type SpoonAmount } from './rounding.ts';
export {
  type Batch,
  type BatchLeft,
  type BatchStorage,
  batchesLeft,
  goodUntil,
  shelfLifeDays,
  usableMassG,
} from './batch.ts';
export { type CostRequest, type CostSheet, costSheet, type Price } from './cost.ts';
export { type KitchenPlan, type KitchenProblem, kitchenPlan } from './kitchen-plan.ts';
export { type StarterRecipe, starterRecipe, starterRecipes } from './starter-recipes.ts';
export {
  type ChecklistStep,
  type CupChecklistRequest,
  cupChecklist,
  type HandledCup,
  handlingOrder,
  type StartingStep,
  startingSteps,
} from './cup-checklist.ts';
export {
  type Moisture,
  moistureByTouch,
  moistureByWeight,
  type Rescue,
  rescues,
  type Touch,
  touches,
} from './moisture.ts';
export { type CupEnd, cupEnd, type EndingStep, endingSteps } from './cup-end.ts';
export { type Ledger, type LedgerCup, type LedgerWeek, ledgerOf } from './ledger.ts';
