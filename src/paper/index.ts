export {
  type AdviceKey,
  adviceKeys,
  type Catalogue,
  type CautionKey,
  cautionKeys,
  type JobKey,
  jobKeys,
  type Language,
  languages,
  type StepKey,
  stepKeys,
} from './text/catalogue.ts';
export { texts } from './text/texts.ts';
export { type QrMatrix, qrMatrix, qrPath, quietModules } from './qr.ts';
export { checkLabelSheet, type LabelSheet, labelSheets, singleLabel } from './labels/label-size.ts';
export { type Label, type LabelContent, layOutLabel } from './labels/label.ts';
export { type LabelPage, type LabelRequest, labelPageSvg, labelPages, labelPagesHtml } from './labels/label-pages.ts';
export { type CalendarEvent, type CalendarRequest, calendarText } from './calendar/calendar.ts';
export { type CodedEvent, eventCode } from './calendar/event-code.ts';
export type { Block, Cell, Sheet } from './sheets/sheet.ts';
export { sheetHtml } from './render/sheet-html.ts';
export { type SitterDay, type SitterRequest, sitterSheet } from './sheets/sitter-sheet.ts';
export { type GivenRequest, givenSheet } from './sheets/given-sheet.ts';
export { type MonthRequest, monthSheet } from './sheets/month-sheet.ts';
export { type ShelfCup, shelfCard } from './sheets/shelf-card.ts';
export { type SpokenStep, spokenSteps, type WorkStep } from './sheets/work-steps.ts';
