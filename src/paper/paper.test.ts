import { describe, expect, it } from 'vitest';
import { addDays, day } from '../foundation/index.ts';
import { endingSteps, rescues, startingSteps, touches } from '../media/index.ts';
import {
  adviceKeys,
  cautionKeys,
  checkLabelSheet,
  jobKeys,
  labelSheets,
  languages,
  layOutLabel,
  labelPages,
  monthSheet,
  qrMatrix,
  shelfCard,
  singleLabel,
  sitterSheet,
  spokenSteps,
  stepKeys,
  texts,
} from './index.ts';
import { publishedCautions } from '../reference/cautions.ts';

const content = {
  label: 'H7',
  strain: 'D. hydei',
  startedOn: day('2026-11-25'),
  firstFliesOn: day('2026-12-18'),
  throwOutOn: day('2027-01-12'),
  link: 'http://192.168.178.20:8080/c/H7',
};
const where = (result: { ok: boolean; problems?: { where: string; found: string }[] }) =>
  result.ok ? 'accepted' : (result.problems ?? []).map((p) => `${p.where}: ${p.found}`).join('; ');

describe('texts', () => {
  it('name every step, advice and caution that the kitchen knows', () => {
    expect([...stepKeys].sort()).toEqual([...startingSteps, ...endingSteps].sort());
    expect([...adviceKeys].sort()).toEqual([...touches, ...rescues].sort());
    expect([...cautionKeys].sort()).toEqual(publishedCautions.map((c) => c.caution).sort());
  });
  it.each([...languages])('%s: no sentence is empty or shows a hole where a figure should be', (language) => {
    const t = texts(language);
    const values = {
      cups: 2,
      strain: 'S',
      group: 'G',
      flies: 9,
      cultures: 'C',
      minutes: 5,
      day: 'D',
      temperatureC: 22.5,
      order: 'A',
      founders: 40,
      hours: 48,
      atC: -18,
      amount: 1.5,
      unit: 'g',
      preservative: 'P',
      belowC: 60,
      boilMinutes: 10,
      soakMinutes: 10,
      mediumMassG: 120,
      coolToC: 25,
      grains: 25,
      holeMm: 0.5,
      warmestC: 28,
    };
    const sentences = [
      ...stepKeys.map((k) => t.steps[k](values)),
      ...jobKeys.map((k) => t.jobs[k](values)),
      ...cautionKeys.map((k) => t.cautions[k]),
      ...adviceKeys.map((k) => t.advice[k]),
      t.given.title(values),
      t.given.what(values),
      t.given.datesTitle(values),
    ];
    for (const sentence of sentences) {
      expect(sentence.length).toBeGreaterThan(3);
      expect(sentence).not.toMatch(/undefined|NaN|\$\{/);
    }
  });
  it('dates in the language’s own way', () => {
    const d = day('2026-03-04');
    expect([
      texts('en').dayLong(d),
      texts('en').dayWithWeekday(d),
      texts('de').dayLong(d),
      texts('de').dayWithWeekday(d),
    ]).toEqual(['4 March 2026', 'Wed 4 Mar', '4. März 2026', 'Mi 4.3.']);
  });
  it('decimals with a comma in German', () => {
    const step = {
      step: 'add-preservative' as const,
      afterMinutes: 0,
      takesMinutes: 1,
      values: { amount: 1.5, unit: 'g', preservative: 'nipagin', belowC: 60 },
      cautions: [],
    };
    expect(spokenSteps([step], 'de')[0]?.text).toContain('1,5 g');
    expect(spokenSteps([step], 'en')[0]?.text).toContain('1.5 g');
  });
});

describe('label sheets', () => {
  it('all common sheets fit their page', () => {
    for (const [name, sheet] of Object.entries(labelSheets))
      expect(where(checkLabelSheet(sheet)), name).toBe('accepted');
  });
  it('refuses labels beyond the page, parts of labels, and no size', () => {
    const sheet = labelSheets['a4-70x37-24'];
    if (!sheet) throw new Error('no sheet');
    expect(where(checkLabelSheet({ ...sheet, columns: 4 }))).toContain('280.0 mm across');
    expect(where(checkLabelSheet({ ...sheet, rows: 2.5 }))).toContain('rows: 2.5');
    expect(where(checkLabelSheet({ ...sheet, labelWidthMm: Number.NaN }))).toContain('labelWidthMm: NaN');
  });
  it('places row by row, and skips used places', () => {
    const sheet = labelSheets['a4-70x37-24'];
    if (!sheet) throw new Error('no sheet');
    const pages = labelPages({ contents: [content, content, content], sheet, language: 'en', skip: 2 });
    expect(pages.ok && pages.value[0]?.labels.map((l) => [l.xMm, l.yMm])).toEqual([
      [140, 0.5],
      [0, 37.5],
      [70, 37.5],
    ]);
    expect(where(labelPages({ contents: [content], sheet, language: 'en', skip: 24 }))).toBe('skip: 24');
  });
});

describe('one label', () => {
  it('at 25 mm: squares of a third of a millimetre or more, type of 5.4 points or more, the number largest', () => {
    const label = layOutLabel(content, 25, 25, 'en');
    if (!label.ok) throw new Error(where(label));
    const { qr, lines } = label.value;
    expect(qr.sideMm / qr.matrix.size).toBeGreaterThanOrEqual(0.37);
    for (const line of lines) expect(line.sizeMm, line.text).toBeGreaterThanOrEqual(1.9);
    expect(Math.max(...lines.map((l) => l.sizeMm))).toBe(lines.find((l) => l.text === 'H7')?.sizeMm);
    expect(lines.map((l) => l.text)).toEqual(['H7', 'D. hydei', 'started 25 Nov', 'flies 18 Dec', 'out 12 Jan']);
  });
  it('leaves out a date that is not known', () => {
    const label = layOutLabel({ ...content, firstFliesOn: null }, 25, 25, 'de');
    expect(label.ok && label.value.lines.map((l) => l.text)).toEqual(['H7', 'D. hydei', 'Start 25.11.', 'weg 12.1.']);
  });
  it('refuses what could not be read, and says why', () => {
    expect(where(layOutLabel(content, 12, 12, 'en'))).toMatch(/QR code with squares of 0\.\d\d mm/);
    expect(where(layOutLabel({ ...content, label: 'The cup at the very left' }, 25, 25, 'en'))).toMatch(/in type of/);
    expect(where(layOutLabel({ ...content, link: `http://x/${'y'.repeat(400)}` }, 70, 37, 'en'))).toContain('bytes');
  });
  it('breaks a long name of a strain, and cuts short one that even two lines cannot hold', () => {
    const strainOn = (strain: string, widthMm: number) => {
      const label = layOutLabel({ ...content, strain }, widthMm, 25, 'en');
      return label.ok ? label.value.lines.slice(1, -3).map((l) => l.text) : where(label);
    };
    expect(strainOn('Stub-winged melanogaster', 100)).toEqual(['Stub-winged melanogaster']);
    expect(strainOn('Stub-winged melanogaster', 60)).toEqual(['Stub-winged', 'melanogaster']);
    expect(strainOn('Stub-winged melanogaster', 25)).toEqual(['Stub-winged', 'melanogaster']);
    expect(strainOn('Drosophila-melanogaster-vestigial-brown', 25)).toEqual(['Drosophila-me…']);
  });
  it('keeps the quiet zone of four squares inside the label', () => {
    const label = layOutLabel(content, 70, 37, 'en');
    if (!label.ok) throw new Error(where(label));
    const { qr } = label.value;
    const quiet = 4 * (qr.sideMm / qr.matrix.size);
    expect(qr.xMm).toBeGreaterThanOrEqual(quiet - 1e-9);
    for (const line of label.value.lines) expect(line.xMm).toBeGreaterThanOrEqual(qr.xMm + qr.sideMm + quiet - 1e-9);
  });
});

describe('QR code', () => {
  it('is a square of an allowed size with its three finder patterns', () => {
    const code = qrMatrix('https://example.org/c/H7');
    if (!code.ok) throw new Error('refused');
    const { size, dark } = code.value;
    expect((size - 17) % 4).toBe(0);
    expect(singleLabel(10, 10).columns).toBe(1);
    for (const [y, x] of [
      [0, 0],
      [0, size - 7],
      [size - 7, 0],
    ] as const) {
      expect(
        dark.slice(y, y + 7).map((row) =>
          row
            .slice(x, x + 7)
            .map((d) => (d ? 1 : 0))
            .join(''),
        ),
      ).toEqual(['1111111', '1000001', '1011101', '1011101', '1011101', '1000001', '1111111']);
    }
  });
  it('refuses nothing and too much', () => {
    expect(where(qrMatrix(''))).toContain('0 bytes');
    expect(where(qrMatrix('ä'.repeat(100)))).toContain('400 bytes');
  });
});

describe('sheets', () => {
  it('a month has its days under their weekdays: 1 November 2026 is a Sunday', () => {
    const sheet = monthSheet({
      language: 'en',
      household: 'H',
      year: 2026,
      month: 11,
      jobs: [{ on: day('2026-11-30'), title: 'Mix' }],
    });
    if (!sheet.ok) throw new Error(where(sheet));
    const [table] = sheet.value.blocks;
    if (table?.kind !== 'table') throw new Error('no table');
    expect(table.rows).toHaveLength(6);
    expect(table.rows[0]?.map((c) => c[0]?.text ?? '')).toEqual(['', '', '', '', '', '', '1']);
    expect(table.rows[5]?.[0]).toEqual([
      { text: '30', isStrong: true },
      { text: 'Mix', hasBox: true },
    ]);
  });
  it('February 2027 begins on a Monday and has four weeks', () => {
    const sheet = monthSheet({ language: 'de', household: 'H', year: 2027, month: 2, jobs: [] });
    const table = sheet.ok ? sheet.value.blocks[0] : undefined;
    expect(table?.kind === 'table' && table.rows.length).toBe(4);
  });
  it('refuses month 13, an absence without days, days out of order, an empty shelf', () => {
    expect(where(monthSheet({ language: 'en', household: 'H', year: 2026, month: 13, jobs: [] }))).toBe('month: 13');
    const sitter = {
      language: 'en' as const,
      household: 'H',
      contact: null,
      days: [] as { on: ReturnType<typeof day>; feedings: []; look: [] }[],
    };
    expect(where(sitterSheet(sitter))).toBe('days: none');
    const on = day('2026-11-25');
    const days = [on, addDays(on, 2), addDays(on, 1)].map((d) => ({ on: d, feedings: [] as [], look: [] as [] }));
    expect(where(sitterSheet({ ...sitter, days }))).toContain('2026-11-26 out of order');
    expect(where(shelfCard({ language: 'en', place: 'Shelf', on, cups: [] }))).toBe('Shelf: no cup');
  });
  it('a day without work says so', () => {
    const sheet = sitterSheet({
      language: 'en',
      household: 'H',
      contact: null,
      days: [{ on: day('2026-11-25'), feedings: [], look: [] }],
    });
    expect(JSON.stringify(sheet)).toContain('Nothing to do');
  });
});
