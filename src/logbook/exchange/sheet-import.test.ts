import { describe, expect, it } from 'vitest';
import { day } from '../../foundation/index.ts';
import { dateOrderOf, sheetDay } from './sheet-dates.ts';
import { previewSheet, proposeMatching, readSheet, type Sheet, undoDrafts } from './sheet-import.ts';

function sheet(text: string): Sheet {
  const read = readSheet(text, 'cups.csv');
  if (!read.ok) throw new RangeError(JSON.stringify(read.problems));
  return read.value;
}

const oneLineACup = `Cup,Species,Date started,Founders,Shelf,First flies,Tossed on,Why,Comments
M1,D. melanogaster,3/4/2026,50,top,3/16/2026,4/2/2026,mold,
M2,mel,3/25/2026,,top,,,,"sticky, too wet"
Giant 1,D. hydei,3/25/2026,40,,,,,
`;

describe('a sheet whose headings were matched by hand', () => {
  const rooms = sheet('Box;Made;Which;Room;Adults put in\nA1;02.08.2026;D. hydei;Room 2 (warm);ca. 40\n');
  const proposed = proposeMatching(rooms);
  const matching = { ...proposed, fields: ['culture', 'startedOn', 'strain', 'place', 'founders'] as never };

  it('reads the strains of a column that was not proposed, numbers that are about, and places by name', () => {
    expect(proposed.fields).toEqual([null, 'startedOn', null, 'place', 'founders']);
    const { drafts, problems } = previewSheet(rooms, matching);
    expect(problems).toEqual([]);
    expect(drafts.map((d) => d.draft)).toEqual([
      { kind: 'place', on: '2026-08-02', place: 'Room-2-warm', name: 'Room 2 (warm)' },
      { kind: 'started', culture: 'A1', on: '2026-08-02', strain: 'hydei', founders: 40, place: 'Room-2-warm' },
    ]);
  });

  it('reads the cups that gave the founders, and a place by the name that the logbook has for it', () => {
    const notebook = sheet(
      'Cup;Species;Made;From;Where\nM6;hydei;11.10.2026;M3, M4;kitchen shelf\nM7;hydei;11.10.2026;-;\n',
    );
    const { drafts, problems } = previewSheet(notebook, {
      ...proposeMatching(notebook),
      knownPlaces: [{ place: 'shelf', name: 'Kitchen shelf' }],
    });
    expect(problems).toEqual([]);
    expect(drafts.map((d) => d.draft)).toEqual([
      {
        kind: 'started',
        culture: 'M6',
        on: '2026-10-11',
        strain: 'hydei',
        founders: 50,
        fromCultures: ['M3', 'M4'],
        place: 'shelf',
      },
      { kind: 'started', culture: 'M7', on: '2026-10-11', strain: 'hydei', founders: 50 },
    ]);
  });

  it('says one mistake of many lines once', () => {
    const many = sheet(`Cup;Made\n${Array.from({ length: 3000 }, (_, i) => `A${i};02.08.2026`).join('\n')}\n`);
    const { problems } = previewSheet(many, proposeMatching(many));
    expect(problems).toEqual([
      {
        where: 'cups.csv, line 2 and 2999 more lines, strain',
        found: 'nothing',
        expected: 'a strain: a column of it, or one for all lines that name none',
      },
    ]);
  });

  it('takes the temperature of a line with a cup for that of its first day', () => {
    const warm = sheet('Cup;Species;Made;Temp °C\nA1;hydei;02.08.2026;22,5\n');
    const { drafts } = previewSheet(warm, proposeMatching(warm));
    expect(drafts[0]?.draft).toEqual({ kind: 'temperature', on: '2026-08-02', place: 'home', meanC: 22.5 });
  });
});

describe('a sheet with a line a cup', () => {
  const cups = sheet(oneLineACup);
  const matching = proposeMatching(cups);

  it('proposes what the columns mean', () => {
    const expected = [
      'culture',
      'strain',
      'startedOn',
      'founders',
      'place',
      'firstAdultsOn',
      'endedOn',
      'reason',
      'note',
    ];
    expect(matching.fields).toEqual(expected);
    expect(matching).toMatchObject({ dateOrder: 'mdy', dateOrderIsCertain: true });
    expect(matching.strainWords).toEqual({ 'D. melanogaster': 'melanogaster', mel: 'mel', 'D. hydei': 'hydei' });
  });

  it('gives starts, sightings and ends, and new places first', () => {
    const { drafts, problems } = previewSheet(cups, {
      ...matching,
      strainWords: { ...matching.strainWords, mel: 'melanogaster' },
    });
    expect(problems).toEqual([]);
    expect(drafts.map((d) => [d.line, d.draft])).toEqual([
      [2, { kind: 'place', on: '2026-03-04', place: 'top' }],
      [2, { kind: 'started', culture: 'M1', on: '2026-03-04', strain: 'melanogaster', founders: 50, place: 'top' }],
      [2, { kind: 'seen', culture: 'M1', on: '2026-03-16', present: ['adults'] }],
      [2, { kind: 'ended', culture: 'M1', on: '2026-04-02', reason: 'mould' }],
      [
        3,
        {
          kind: 'started',
          culture: 'M2',
          on: '2026-03-25',
          strain: 'melanogaster',
          founders: 50,
          place: 'top',
          note: 'sticky, too wet',
        },
      ],
      [4, { kind: 'started', culture: 'Giant-1', on: '2026-03-25', strain: 'hydei', founders: 40, label: 'Giant 1' }],
    ]);
  });
});

describe('a sheet with a line an event', () => {
  it('gives harvests, temperatures and notes', () => {
    const log = sheet(
      'Datum;Becher;Fliegen;Temp;Notiz\n1.4.2026;M1;120;;gut\n2.4.2026;;;21,5 °C;\n3.4.2026;M1;;;klebrig\n',
    );
    const { drafts, problems } = previewSheet(log, proposeMatching(log));
    expect(problems).toEqual([]);
    expect(drafts.map((d) => d.draft)).toEqual([
      { kind: 'harvested', culture: 'M1', on: '2026-04-01', flies: 120, note: 'gut' },
      { kind: 'temperature', on: '2026-04-02', place: 'home', meanC: 21.5 },
      { kind: 'note', culture: 'M1', on: '2026-04-03', text: 'klebrig' },
    ]);
  });
});

describe('lines that cannot be read', () => {
  const bad = sheet(
    'cup,strain,started,founders\nM1,hydei,31/02/2026,50\nM2,hydei,1/3/2026,many\nM3,,1/3/2026,50\nM4,hydei,,\nM5,hydei,1/3/2026,-2\n',
  );
  it('are named with line, column, what was found and what would be right', () => {
    const { problems } = previewSheet(bad, { ...proposeMatching(bad), dateOrder: 'dmy' });
    expect(problems.map((p) => [p.where, p.found])).toEqual([
      ['cups.csv, line 2, started', '"31/02/2026"'],
      ['cups.csv, line 3, founders', '"many"'],
      ['cups.csv, line 4, strain', 'nothing'],
      ['cups.csv, line 5, a line', 'nothing to record'],
      ['cups.csv, line 6, founders', '-2'],
    ]);
    expect(problems[0]?.expected).toBe('a day such as 25.11.2026 or 2026-11-25');
  });
  it('headings alone are no sheet', () => {
    expect(readSheet('cup,date\n', 'cups.csv').ok).toBe(false);
    expect(readSheet('', 'cups.csv').ok).toBe(false);
  });
});

describe('days of spreadsheets', () => {
  it('in every order, with two figures for the year, and as serial numbers', () => {
    expect(sheetDay('2026-3-4', 'mdy')).toBe('2026-03-04');
    expect(sheetDay('04.03.2026', 'dmy')).toBe('2026-03-04');
    expect(sheetDay('3/4/26', 'mdy')).toBe('2026-03-04');
    expect(sheetDay('4/3/26 18:00', 'dmy')).toBe('2026-03-04');
    // Published: serial 45658 is 2025-01-01 in the 1900 date system.
    expect(sheetDay('45658', 'dmy')).toBe('2025-01-01');
    expect([sheetDay('soon', 'dmy'), sheetDay('30.2.2026', 'dmy'), sheetDay('123', 'dmy')]).toEqual([null, null, null]);
  });
  it('asks when day and month could be either', () => {
    expect(dateOrderOf(['3/4/2026', '5/6/2026'])).toEqual({ order: 'dmy', certain: false });
    expect(dateOrderOf(['3/4/2026', '5/26/2026'])).toEqual({ order: 'mdy', certain: true });
    expect(dateOrderOf(['4/4/2026'])).toEqual({ order: 'dmy', certain: true });
  });
});

it('an import is undone as one act', () => {
  expect(undoDrafts(['a', 'b'], day('2026-06-01'))).toEqual([
    { kind: 'amended', on: '2026-06-01', amends: 'a', void: true },
    { kind: 'amended', on: '2026-06-01', amends: 'b', void: true },
  ]);
});
