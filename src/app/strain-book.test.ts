import { describe, expect, it } from 'vitest';
import { factsWritten } from '../../tests/fixtures/facts-written.ts';
import { addDays, day } from '../foundation/index.ts';
import { lines } from './lines.ts';
import { lineWarning } from './lines/line-answer.ts';
import { strainBookAnswer } from './lines/strain-book-answer.ts';
import { mixing } from './mixing.ts';
import { strainBook } from './strain-book.ts';
import { winged } from './winged.ts';

const on = day('2026-11-25');
const facts = (drafts: object[]) => factsWritten(drafts, addDays(on, -40));
const settings = [
  { kind: 'place', place: 'shelf', name: 'Shelf', temperatureC: 25 },
  { kind: 'strain', strain: 'stubs', name: 'Stubs', base: 'melanogaster-vestigial' },
  { kind: 'strain', strain: 'bare', name: 'Bare', base: 'melanogaster-apterous' },
  { kind: 'strain', strain: 'quick', name: 'Quick', base: 'melanogaster', paceFactor: 1.25, mutation: 'wild' },
  { kind: 'strain', strain: 'big', name: 'Big', base: 'hydei' },
];
const started = (culture: string, strain: string, daysAgo: number, fromCultures: string[] = []) => ({
  kind: 'started',
  culture,
  strain,
  place: 'shelf',
  founders: 20,
  on: addDays(on, -daysAgo),
  fromCultures,
});
const household = facts([
  ...settings,
  started('a', 'stubs', 30),
  started('b', 'bare', 30),
  started('mixed', 'stubs', 10, ['a', 'b']),
]);
const value = <T>(result: { ok: true; value: T } | { ok: false; problems: unknown }): T => {
  if (!result.ok) throw new Error(JSON.stringify(result.problems));
  return result.value;
};

describe('strains', () => {
  const book = strainBook(household, { on });
  const of = (strain: string) => book.strains.find((each) => each.strain === strain);
  it('have dates, yield and mass where they stand, in the shape of every door', () => {
    expect(strainBookAnswer.parse(book)).toEqual(book);
    // Egg to adult at 25 C: 8.5 to 9.6 days over published tables; first flies of a cup a day or so later.
    expect(of('stubs')?.firstFliesDays).toBeGreaterThan(8.5);
    expect(of('stubs')?.firstFliesDays).toBeLessThan(12);
    expect(of('stubs')?.livingCups).toBe(2);
    expect(of('big')?.flyMassMg?.middle).toBeGreaterThan(of('stubs')?.flyMassMg?.middle ?? 9);
  });
  it('follow the keeper’s own pace', () =>
    expect((of('stubs')?.firstFliesDays ?? 0) - (of('quick')?.firstFliesDays ?? 0)).toBeGreaterThan(1.5));
  it('take the mutation of the published base where none was written', () =>
    expect([of('stubs')?.mutation, of('bare')?.mutation, of('big')?.mutation]).toEqual(['vg', 'ap', 'unknown']));
});

describe('two strains of one species', () => {
  it('are crossed, whatever they are based on: vestigial with apterous gives fliers', () => {
    const answer = value(mixing(household, { first: 'stubs', second: 'bare' }));
    expect(answer.verdict).toBe('fliers');
    expect(answer.outlooks[0]?.wingedShare[0]).toBeCloseTo(0.5, 12);
    expect(value(mixing(household, { first: 'stubs', second: 'big' })).verdict).toBe('two species');
  });
  it('in one cup are brought back by test-crosses, with dates', () => {
    const [warning] = lines(household, { on }).warnings;
    expect(warning?.kind).toBe('mixed strains');
    expect(warning?.steps.map(({ generation }) => generation)).toEqual([0, 1, 2]);
    const dates = warning?.steps.map(({ date }) => date) ?? [];
    // The second generation's flies: two times 9 to 10 days of growing and a few of laying, from the start on.
    expect((dates[0] ?? '') >= addDays(on, -10 + 2 * 11)).toBe(true);
    expect((dates[0] ?? '') <= addDays(on, -10 + 2 * 14)).toBe(true);
    expect([...dates].sort()).toEqual(dates);
  });
  it('are spoken of in German as well', () => {
    const answer = value(mixing(household, { first: 'stubs', second: 'bare', language: 'de' }));
    expect(answer.why).toMatch(/^Stubs und Bare .*fliegen/);
    expect(answer.todo.join(' ')).toMatch(/getrennten Bechern/);
    expect(lines(household, { on, language: 'de' }).warnings[0]?.steps[0]?.act).toMatch(/jungfräuliches Weibchen/);
  });
});

describe('a winged fly that is about to be written down', () => {
  it('is answered before it is in the log', () => {
    const answer = value(winged(household, { on, culture: 'a' }));
    expect(lineWarning.parse(answer)).toEqual(answer);
    expect(answer.kind).toBe('winged flies');
    expect(answer.steps.length).toBeGreaterThan(2);
    expect(lines(household, { on }).warnings.map(({ kind }) => kind)).toEqual(['mixed strains']);
  });
  it('waits for the cool where warmth lengthens the wings, with the day to look again', () => {
    const warm = facts([{ ...settings[0], temperatureC: 30 }, ...settings.slice(1), started('a', 'stubs', 20)]);
    const answer = value(winged(warm, { on, culture: 'a' }));
    expect(answer.steps).toEqual([]);
    expect((answer.lookAgainOn ?? '') > on).toBe(true);
  });
  it('knows the medium that the cup was filled from: methylparaben lengthens the wings of vestigial too', () => {
    // Pierce: nipagin at 0.05 to 0.4 % enlarges vestigial wings; 1.2 g in about 0.96 l are 0.12 %.
    const batch = { kind: 'batch', batch: 'b1', recipe: 'maize-and-molasses', massG: 1000 };
    const filled = facts([...settings, batch, { ...started('a', 'stubs', 20), batch: 'b1' }]);
    const answer = value(winged(filled, { on, culture: 'a' }));
    expect(answer.why).toMatch(/Methylparaben in its medium/);
    expect(answer.steps).toEqual([]);
    expect(value(winged(household, { on, culture: 'a' })).wingedLookingShare).toBe(0);
  });
  it('is refused for a cup that is not there', () =>
    expect(winged(household, { on, culture: 'zz' })).toMatchObject({ ok: false }));
});
