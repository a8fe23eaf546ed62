import { describe, expect, it } from 'vitest';
import { entryKindNames } from './entry.ts';
import { checkDraft, checkEntry } from './entry-check.ts';

const good = {
  id: '019f0000-0000-7000-8000-000000000001',
  kind: 'started',
  on: '2026-06-01',
  recordedAt: '2026-06-01T18:30:00.000Z',
  by: 'Ana',
  culture: 'M1',
  strain: 'melanogaster',
  founders: 50,
};
const envelope = { id: good.id, on: good.on, recordedAt: good.recordedAt, by: 'Ana' };

it('takes a good entry as it is', () => expect(checkEntry(good)).toEqual({ ok: true, value: good }));

describe('refuses, naming the field, what was found and what would be right', () => {
  const cases: [name: string, value: unknown, where: string, found: RegExp, expected: RegExp][] = [
    ['no object', 7, 'here', /^7$/, /object/],
    ['a list', [good], 'here', /./, /object/],
    ['null', null, 'here', /null/, /object/],
    ['an unknown kind', { ...good, kind: 'hatched' }, 'here, kind', /"hatched"/, /started/],
    ['a kind that only objects have', { ...good, kind: 'constructor' }, 'here, kind', /constructor/, /started/],
    ['no kind', { ...envelope }, 'here, kind', /nothing/, /started/],
    ['a day that does not exist', { ...good, on: '2026-02-30' }, 'here, on', /2026-02-30/, /real calendar day/],
    ['a day in another notation', { ...good, on: '1/6/2026' }, 'here, on', /1\/6\/2026/, /2026-11-25/],
    ['a day after tomorrow', { ...good, on: '2026-06-03' }, 'here, on', /2026-06-03/, /not after 2026-06-02/],
    ['a time that does not exist', { ...good, time: '25:00' }, 'here, time', /25:00/, /18:30/],
    [
      'an instant that does not exist',
      { ...good, recordedAt: '2026-02-30T00:00:00Z' },
      'here, recordedAt',
      /02-30/,
      /UTC/,
    ],
    ['an instant outside UTC', { ...good, recordedAt: '2026-06-01T00:00:00+02:00' }, 'here, recordedAt', /\+02/, /UTC/],
    [
      'an id of another version',
      { ...good, id: '1b4e28ba-2fa1-41d2-883f-0016d3cca427' },
      'here, id',
      /1b4e28ba/,
      /version 7/,
    ],
    ['no founders', { ...good, founders: 0 }, 'here, founders', /^0$/, /1 to 5000/],
    ['negative founders', { ...good, founders: -3 }, 'here, founders', /-3/, /1 to 5000/],
    ['absurd founders', { ...good, founders: 5001 }, 'here, founders', /5001/, /1 to 5000/],
    ['part of a founder', { ...good, founders: 2.5 }, 'here, founders', /2.5/, /whole number/],
    ['founders in words', { ...good, founders: '50' }, 'here, founders', /"50"/, /whole number/],
    ['founders missing', { ...good, founders: undefined }, 'here, founders', /nothing/, /whole number/],
    ['an unknown field', { ...good, colour: 'red' }, 'here, colour', /unknown/, /fields of "started"/],
    ['a key with a blank', { ...good, culture: 'M 1' }, 'here, culture', /M 1/, /letters, digits/],
    ['a key of 65 characters', { ...good, culture: 'M'.repeat(65) }, 'here, culture', /MMM/, /64/],
    ['a blank author', { ...good, by: '  ' }, 'here, by', / /, /80 characters/],
    ['a zero character', { ...good, label: 'a\0b' }, 'here, label', /u0000/, /control characters/],
    ['half a surrogate pair', { ...good, label: 'a\ud83e' }, 'here, label', /ud83e/, /control characters/],
    ['a cup from itself', { ...good, fromCultures: ['M1'] }, 'here, fromCultures', /M1 itself/, /cups that gave/],
    ['a cup named twice', { ...good, fromCultures: ['M2', 'M2'] }, 'here, fromCultures', /M2/, /twice/],
    [
      'flies beyond a million',
      { ...envelope, kind: 'harvested', culture: 'M1', flies: 1_000_001 },
      'here, flies',
      /1000001/,
      /1000000/,
    ],
    ['a room at 61 C', { ...envelope, kind: 'temperature', place: 'p', meanC: 61 }, 'here, meanC', /61/, /-20 to 60/],
    [
      'a room at not a number',
      { ...envelope, kind: 'temperature', place: 'p', meanC: Number.NaN },
      'here, meanC',
      /null|NaN/,
      /-20 to 60/,
    ],
    [
      'half a reading',
      { ...envelope, kind: 'temperature', place: 'p', minC: 20 },
      'here, meanC',
      /no complete/,
      /minC and maxC/,
    ],
    [
      'a minimum above the maximum',
      { ...envelope, kind: 'temperature', place: 'p', minC: 25, maxC: 20 },
      'here, minC',
      /25/,
      /at most/,
    ],
    [
      'an unknown weekday',
      { ...envelope, kind: 'household', workWeekdays: ['Sunday'] },
      'here, workWeekdays.0',
      /Sunday/,
      /mon, tue/,
    ],
    ['certainty', { ...envelope, kind: 'household', serviceLevel: 1 }, 'here, serviceLevel', /^1$/, /0.9999/],
    [
      'a field deep inside',
      { ...envelope, kind: 'household', purchase: { lead: 3 } },
      'here, purchase.lead',
      /unknown/,
      /format/,
    ],
    [
      'a stage seen and not seen',
      { ...envelope, kind: 'seen', culture: 'M1', present: ['pupae'], absent: ['pupae'] },
      'here, absent',
      /pupae/,
      /one of the two/,
    ],
    [
      'a reason of its own',
      { ...envelope, kind: 'ended', culture: 'M1', reason: 'bored' },
      'here, reason',
      /bored/,
      /mould/,
    ],
    [
      'an absence that ends before it begins',
      { ...envelope, kind: 'absence', until: '2026-05-01' },
      'here, until',
      /2026-05-01/,
      /not before/,
    ],
    [
      'an amendment without content',
      { ...envelope, kind: 'amended', amends: good.id },
      'here, replacement',
      /neither/,
      /one of the two/,
    ],
    [
      'an amendment with a bad field',
      { ...envelope, kind: 'amended', amends: good.id, replacement: { kind: 'moved', culture: 'M1' } },
      'here, replacement.place',
      /nothing/,
      /key/,
    ],
    [
      'an amendment that contradicts itself',
      { ...envelope, kind: 'amended', amends: good.id, replacement: { kind: 'temperature', place: 'p' } },
      'here, replacement.meanC',
      /reading/,
      /meanC/,
    ],
    [
      'an amendment by an amendment',
      { ...envelope, kind: 'amended', amends: good.id, replacement: { kind: 'amended', amends: good.id, void: true } },
      'here, replacement.kind',
      /"amended"/,
      /kind among/,
    ],
  ];
  for (const [name, value, where, found, expected] of cases) {
    it(name, () => {
      const result = checkEntry(value, 'here');
      expect(result.ok).toBe(false);
      const problems = result.ok ? [] : result.problems;
      expect(problems.map((p) => p.where)).toContain(where);
      const problem = problems.find((p) => p.where === where);
      expect(problem?.found).toMatch(found);
      expect(problem?.expected).toMatch(expected);
    });
  }

  it('a field called __proto__', () => {
    const value: unknown = JSON.parse(JSON.stringify(good).replace('{', '{"__proto__":{"flies":3},'));
    expect(checkEntry(value).ok).toBe(false);
  });

  it('every kind but an amendment can stand in the place of another', () => {
    for (const kind of entryKindNames.filter((name) => name !== 'amended')) {
      const result = checkEntry({ ...envelope, kind: 'amended', amends: good.id, replacement: { kind, surprise: 1 } });
      expect(result.ok ? [] : result.problems.map((p) => p.where)).toContain('entry, replacement.surprise');
    }
  });

  it('every kind refuses a field that it does not know', () => {
    for (const kind of entryKindNames) {
      const result = checkDraft({ kind, on: '2026-06-01', surprise: 1 }, kind);
      expect(result.ok ? [] : result.problems.map((p) => p.where)).toContain(`${kind}, surprise`);
    }
  });
});

it('a draft is an entry without what a device adds', () => {
  const { id: _id, recordedAt: _at, by: _by, ...draft } = good;
  expect(checkDraft(draft)).toEqual({ ok: true, value: draft });
  expect(checkDraft(good).ok).toBe(false);
});
