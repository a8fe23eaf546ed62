/**
 * A keeper's own spreadsheet (one line a cup, or one line an event) as drafts of entries: first what
 * each column means is proposed and shown, then the lines are read by what the keeper confirmed.
 */
import { type Day, failed, gatheredProblems, ok, type Problem, type Result } from '../../foundation/index.ts';
import type { EntryDraft } from '../entries/entry.ts';
import { checkDraft } from '../entries/entry-check.ts';
import { type EndReason, endReasons } from '../fold/facts.ts';
import { type CsvRecord, parseCsv, plainCell } from './csv-text.ts';
import { type DateOrder, dateOrderOf, sheetDay } from './sheet-dates.ts';
import { proposedFields, type SheetField } from './sheet-fields.ts';

export interface Sheet {
  file: string;
  headings: string[];
  /** The lines below the headings. */
  records: CsvRecord[];
}

export interface SheetMatching {
  /** What each column means; null leaves it out. */
  fields: (SheetField | null)[];
  dateOrder: DateOrder;
  /** For lines that name none. */
  strain: string | null;
  /** Keys of strains by the words that the sheet uses for them; others are read as the words suggest. */
  strainWords: Record<string, string>;
  /** Places that the logbook knows already, which a line may call by key or name; others get an entry of their own. */
  knownPlaces: { place: string; name: string }[];
}

export interface SheetPreview {
  drafts: { line: number; draft: EntryDraft }[];
  problems: Problem[];
}

export function readSheet(text: string, file: string): Result<Sheet> {
  const csv = parseCsv(text, file);
  if (!csv.ok) return csv;
  const [head, ...records] = csv.value.records;
  if (!head || records.length === 0) {
    return failed({
      where: file,
      found: 'no lines below the headings',
      expected: 'a line of headings, then one line a cup or event',
    });
  }
  return ok({ file, headings: head.cells.map((c) => c.trim()), records });
}

/** What the headings and cells suggest; `dateOrderIsCertain` false asks the keeper which way round. */
export function proposeMatching(sheet: Sheet): SheetMatching & { dateOrderIsCertain: boolean } {
  const fields = proposedFields(sheet.headings);
  const dates = sheet.records.flatMap((r) =>
    fields.flatMap((f, i) => (f && isDate(f) && r.cells[i]?.trim() ? [r.cells[i]] : [])),
  );
  const { order, certain } = dateOrderOf(dates as string[]);
  const strains = sheet.records.map((r) => (r.cells[fields.indexOf('strain')] ?? '').trim()).filter((s) => s !== '');
  const strainWords = Object.fromEntries([...new Set(strains)].map((s) => [s, strainKey(s)]));
  return { fields, dateOrder: order, dateOrderIsCertain: certain, strain: null, strainWords, knownPlaces: [] };
}

/** Every draft that the lines give under this matching, and what is wrong with the others. */
export function previewSheet(sheet: Sheet, matching: SheetMatching): SheetPreview {
  const preview: SheetPreview = { drafts: [], problems: [] };
  for (const record of sheet.records) {
    const line = new SheetLine(record, sheet, matching, preview.problems);
    const values = line.drafts();
    if (values.length === 0 && !line.hasProblem)
      line.refuse('a line', 'nothing to record', 'a cup with its start, end or flies, or a temperature');
    for (const value of values) {
      const draft = checkDraft(value, line.where);
      if (draft.ok) preview.drafts.push({ line: record.line, draft: draft.value });
      else preview.problems.push(...draft.problems);
    }
  }
  return {
    drafts: [...newPlaces(preview.drafts, matching.knownPlaces, placeNames(sheet, matching)), ...preview.drafts],
    problems: gatheredProblems(preview.problems),
  };
}

/** How the sheet writes each place, by its key. */
function placeNames({ records }: Sheet, { fields }: SheetMatching): Map<string, string> {
  const column = fields.indexOf('place');
  return new Map(
    records.map(({ cells }) => plainCell((cells[column] ?? '').trim())).map((name) => [keyOf(name), name]),
  );
}

/** One entry for each place that is named for the first time, on the day it is. */
function newPlaces(
  drafts: SheetPreview['drafts'],
  known: SheetMatching['knownPlaces'],
  names: Map<string, string>,
): SheetPreview['drafts'] {
  const first = new Map<string, { line: number; draft: EntryDraft }>();
  for (const { line, draft } of drafts) {
    const place = 'place' in draft ? draft.place : undefined;
    if (place === undefined || place === 'home' || known.some((k) => k.place === place)) continue;
    const before = first.get(place);
    const name = names.get(place);
    const named = name === undefined || name === place ? {} : { name };
    if (!before || draft.on < before.draft.on)
      first.set(place, { line, draft: { kind: 'place', on: draft.on, place, ...named } });
  }
  return [...first.values()];
}

/** Undoes an import as one act: each of its entries is voided. */
export function undoDrafts(ids: readonly string[], on: Day): EntryDraft[] {
  return ids.map((amends) => ({ kind: 'amended', on, amends, void: true }));
}

function isDate(field: SheetField): boolean {
  return field === 'on' || field.endsWith('On');
}

/** A word of the sheet as a key: `D. hydei (giant)` is hydei. */
function strainKey(words: string): string {
  if (/hydei/i.test(words)) return 'hydei';
  if (/melano/i.test(words)) return 'melanogaster';
  return keyOf(words);
}

function keyOf(text: string): string {
  return text
    .normalize('NFC')
    .trim()
    .replaceAll(/[^\p{L}\p{N}._-]+/gu, '-')
    .replaceAll(/^[._-]+|-+$/g, '')
    .slice(0, 64);
}

class SheetLine {
  readonly where: string;
  hasProblem = false;
  private readonly record: CsvRecord;
  private readonly sheet: Sheet;
  private readonly matching: SheetMatching;
  private readonly problems: Problem[];

  constructor(record: CsvRecord, sheet: Sheet, matching: SheetMatching, problems: Problem[]) {
    this.where = `${sheet.file}, line ${record.line}`;
    this.record = record;
    this.sheet = sheet;
    this.matching = matching;
    this.problems = problems;
  }

  refuse(what: string, found: string, expected: string): void {
    this.hasProblem = true;
    this.problems.push({ where: `${this.where}, ${what}`, found, expected });
  }

  drafts(): object[] {
    const culture = keyOf(this.text('culture'));
    const on = this.day('on');
    // A line of a cup that names no day of its own was written when the cup was started.
    const values = [
      this.temperature(on ?? this.day('startedOn')),
      ...(culture === '' ? [this.looseNote(on)] : this.ofCulture(culture, on)),
    ];
    return values
      .filter((v) => v !== null)
      .map((v) => Object.fromEntries(Object.entries(v).filter(([, x]) => x !== undefined)));
  }

  private ofCulture(culture: string, on: Day | null): (object | null)[] {
    const [startedOn, firstAdultsOn, endedOn] = [this.day('startedOn'), this.day('firstAdultsOn'), this.day('endedOn')];
    const flies = this.number('flies');
    const note = this.text('note') || undefined;
    return [
      startedOn && this.start(culture, startedOn, note),
      firstAdultsOn && { kind: 'seen', culture, on: firstAdultsOn, present: ['adults'] },
      flies !== undefined && on ? { kind: 'harvested', culture, on, flies, note: startedOn ? undefined : note } : null,
      endedOn && { kind: 'ended', culture, on: endedOn, reason: endReason(this.text('reason')) },
      note && !startedOn && on && flies === undefined ? { kind: 'note', culture, on, text: note } : null,
    ];
  }

  private start(culture: string, on: Day, note: string | undefined): object | null {
    const strain = this.strain();
    if (strain === null) {
      this.refuse('strain', 'nothing', 'a strain: a column of it, or one for all lines that name none');
      return null;
    }
    const label = this.text('culture');
    const founders = this.number('founders') ?? usualFounders;
    return {
      kind: 'started',
      culture,
      on,
      strain,
      founders,
      fromCultures: this.cups('fromCultures'),
      place: this.place(),
      label: label === culture ? undefined : label,
      note,
    };
  }

  private strain(): string | null {
    const word = this.text('strain');
    return word === '' ? this.matching.strain : (this.matching.strainWords[word] ?? strainKey(word));
  }

  private temperature(on: Day | null): object | null {
    const meanC = this.number('temperatureC');
    return meanC === undefined || !on ? null : { kind: 'temperature', on, place: this.place() ?? 'home', meanC };
  }

  /** The key of a place that the logbook knows by this name, or the name as a key. */
  private place(): string | undefined {
    const name = this.text('place').toLowerCase();
    const known = this.matching.knownPlaces.find(
      (k) => k.place.toLowerCase() === name || k.name.toLowerCase() === name,
    );
    return known?.place ?? (keyOf(this.text('place')) || undefined);
  }

  /** Keys of cups that stand in one cell: `M3, M4` or `M3 + M4`. */
  private cups(field: SheetField): string[] | undefined {
    const keys = this.text(field)
      .split(/[,;/&+]|\s(?:and|und)\s/)
      .map(keyOf)
      .filter((key) => key !== '');
    return keys.length > 0 ? keys : undefined;
  }

  private looseNote(on: Day | null): object | null {
    const text = this.text('note');
    return text === '' || !on ? null : { kind: 'note', on, text };
  }

  private text(field: SheetField): string {
    const column = this.matching.fields.indexOf(field);
    return column < 0 ? '' : plainCell((this.record.cells[column] ?? '').trim());
  }

  private day(field: SheetField): Day | null {
    const text = this.text(field);
    if (text === '' || /^[-–—?]$/.test(text)) return null;
    const day = sheetDay(text, this.matching.dateOrder);
    if (day === null)
      this.refuse(
        this.heading(field),
        `"${text}"`,
        `a day such as ${dayExamples[this.matching.dateOrder]} or 2026-11-25`,
      );
    return day;
  }

  /** A comma may be the decimal sign; "about 40" is 40. */
  private number(field: SheetField): number | undefined {
    const text = this.text(field)
      .replace(/\s*(°?\s*C|g|flies)$/i, '')
      .replace(/^(ca\.?|circa|about|approx\.?|etwa|rund|[~≈])\s*/i, '');
    if (text === '' || /^[-–—?]$/.test(text)) return undefined;
    const value = Number(text.replace(',', '.'));
    if (!Number.isNaN(value)) return value;
    this.refuse(this.heading(field), `"${text}"`, 'a number');
    return undefined;
  }

  private heading(field: SheetField): string {
    return this.sheet.headings[this.matching.fields.indexOf(field)] ?? field;
  }
}

const dayExamples: Record<DateOrder, string> = { dmy: '25.11.2026', mdy: '11/25/2026', ymd: '2026/11/25' };

/** Common practice, without a source: what a cup usually gets when the sheet does not say. */
const usualFounders = 50;

const reasonWords: [pattern: RegExp, reason: EndReason][] = [
  [/mou?ld|schimmel/i, 'mould'],
  [/mite|milbe/i, 'mites'],
  [/dry|dried|trocken/i, 'dry'],
  [/wet|nass|soup/i, 'wet'],
  [/crash|collaps/i, 'crashed'],
  [/winged|contamin|flug/i, 'contaminated'],
  [/gave|given|sold|gift|verschenkt|verkauft/i, 'given'],
  [/spent|old|done|empty|finished|alt|leer|^$/i, 'spent'],
];

function endReason(text: string): EndReason {
  return endReasons.find((r) => r === text) ?? reasonWords.find(([pattern]) => pattern.test(text))?.[1] ?? 'other';
}
