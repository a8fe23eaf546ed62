/** What a keeper's own spreadsheet would be read as, as text. */
import { entryInWords } from '../../app/index.ts';
import { type Sheet, sheetFields, type SheetMatching, type SheetPreview } from '../../logbook/index.ts';
import { given } from '../given-options.ts';
import type { Options } from '../options.ts';
import { counted, table, wrapped } from './layout.ts';

const mostShown = 12;

export function previewText(
  sheet: Sheet,
  matching: SheetMatching,
  { drafts, problems }: SheetPreview,
  language: Options['language'],
): string[] {
  const first = sheet.records[0]?.cells ?? [];
  const rows = sheet.headings.map((heading, i) => {
    const field = matching.fields[i];
    return [heading, field ? sheetFields[field] : 'left out', field ?? '', first[i]?.slice(0, 24) ?? ''];
  });
  return [
    ...table(['column', 'is taken for', 'field', 'first line'], rows),
    '',
    `Days are read as ${dateWords[matching.dateOrder]} (--date-order).`,
    '',
    `${counted(drafts.length, 'entry', 'entries')} would be written:`,
    ...drafts
      .slice(0, mostShown)
      .flatMap(({ draft }) => wrapped(entryInWords(draft, given({ language })), `  ${draft.on}  `)),
    ...(drafts.length > mostShown ? [`  and ${drafts.length - mostShown} more`] : []),
    '',
    problems.length > 0
      ? 'Nothing was written: some lines cannot be read.'
      : 'Nothing was written. Add --yes to write it.',
  ];
}

const dateWords = { dmy: 'day, month, year', mdy: 'month, day, year', ymd: 'year, month, day' };
