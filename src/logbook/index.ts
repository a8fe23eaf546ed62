/** The logbook: kinds of entries and their checks, the fold from entries to facts, and exchange. */
export { canonicalText } from './entries/canonical-text.ts';
export {
  type Entry,
  type EntryDraft,
  type EntryKindName,
  type EntryOf,
  entryKindNames,
  entryKinds,
} from './entries/entry.ts';
export { headcountReasons } from './entries/headcount.ts';
export { checkDraft, checkEntry } from './entries/entry-check.ts';
export { entryIdMaker, type IdSources } from './entries/entry-id.ts';
export { entryJsonSchemas } from './entries/entry-json-schemas.ts';
export type { Names } from './entries/entry-kind.ts';
export { entrySentence } from './entries/entry-sentence.ts';
export { type CsvTable, CsvTables } from './exchange/csv-tables.ts';
export { type CsvSheet, csvRecord, parseCsv, plainCell } from './exchange/csv-text.ts';
export { type ImportAct, idsOfImport, importActs, importName } from './exchange/import-name.ts';
export { readJsonLines, readLogbook, type ReadEntry, type ReadOptions, writeJsonLines } from './exchange/json-lines.ts';
export { type DateOrder, dateOrders } from './exchange/sheet-dates.ts';
export { type SheetField, sheetFields } from './exchange/sheet-fields.ts';
export {
  previewSheet,
  proposeMatching,
  readSheet,
  type Sheet,
  type SheetMatching,
  type SheetPreview,
  undoDrafts,
} from './exchange/sheet-import.ts';
export { checkBatch } from './fold/batch-check.ts';
export { checkStream, type PlacedEntry, type Reread, type StreamCheckOptions } from './fold/stream-check.ts';
export { containerDefaults, homePlace, householdDefaults } from './fold/defaults.ts';
export {
  type AbsenceFact,
  type AmountWord,
  amountWords,
  type BatchFacts,
  type ContainerFacts,
  type CultureFacts,
  type EndReason,
  endReasons,
  type Facts,
  type FeedingFact,
  type GroupFacts,
  type GroupPeriod,
  type HarvestFact,
  type HouseholdFacts,
  type LoggerFacts,
  type OrderFact,
  type PurchaseFact,
  type PlaceFacts,
  type RecipeFacts,
  type SeenFact,
  type SeenStage,
  seenStages,
  type StockFact,
  type StrainFacts,
  type WeighingFact,
} from './fold/facts.ts';
export { fold, type FoldOptions } from './fold/fold.ts';
