import { describe, expect, it } from 'vitest';
import { checkDraft, type EntryDraft, entryKindNames } from '../logbook/index.ts';
import { entryInWords } from './entry-in-words.ts';

const amends = '019f0000-0000-7000-8000-000000000001';
const seasonsC = { winter: 18, spring: 20, summer: 25, autumn: 20 };
const group = { kind: 'group', group: 'frogs', count: 3, fliesPerFeeding: 20, strain: 'hydei' };

/** At least one entry of every kind, with its line in each language. */
const lines: [fields: Record<string, unknown>, english: string, german: string][] = [
  [
    { kind: 'household', name: 'Home', workWeekdays: ['mon', 'thu'], serviceLevel: 0.95 },
    'Household set up: Home, fly work on Monday, Thursday, every day at least 95 % sure.',
    'Haushalt eingerichtet: Home, Fliegenarbeit am Montag, Donnerstag, jeder Tag zu mindestens 95 % sicher.',
  ],
  [
    { kind: 'place', place: 'attic', seasonsC, cupOffsetC: -1 },
    'Place attic: winter 18, spring 20, summer 25, autumn 20 °C, cups 1 °C cooler than the room.',
    'Platz attic: Winter 18, Frühling 20, Sommer 25, Herbst 20 °C, Becher 1 °C kühler als der Raum.',
  ],
  [
    { kind: 'temperature', place: 'shelf', minC: 20.5, maxC: 24, humidityPercent: 60 },
    'shelf: 20.5 to 24 °C and 60 % humidity read.',
    'shelf: 20,5 bis 24 °C und 60 % Luftfeuchte gemessen.',
  ],
  [
    { kind: 'strain', strain: 'gold', base: 'melanogaster' },
    'Strain gold, based on melanogaster.',
    'Stamm gold, auf der Grundlage von melanogaster.',
  ],
  [
    { kind: 'container', container: 'cup', volumeMl: 950, founders: 1 },
    'Container cup: 950 ml, 1 founder.',
    'Gefäß cup: 950 ml, 1 Gründer.',
  ],
  [
    { kind: 'recipe', recipe: 'own', ingredients: [{ ingredient: 'agar', massG: 8 }], waterMl: 1000 },
    'Recipe own, 1 ingredient, 1,000 ml of water.',
    'Rezept own, 1 Zutat, 1.000 ml Wasser.',
  ],
  [
    { kind: 'batch', batch: 'b1', massG: 500, goodUntil: '2026-12-03' },
    'Batch b1 of medium mixed: 500 g, good until Thu 3 Dec.',
    'Ansatz b1 Nährbrei gemischt: 500 g, haltbar bis Do 3. Dez.',
  ],
  [
    { kind: 'started', culture: 'M1', strain: 'hydei', founders: 50, fromCultures: ['A', 'B'], place: 'shelf' },
    'M1 started: hydei, 50 founders from A and B, in shelf.',
    'M1 angesetzt: hydei, 50 Gründer aus A und B, Platz: shelf.',
  ],
  [
    { kind: 'purchase', purchase: 'p1', strain: 'hydei', cups: 2, arrives: '2026-12-03' },
    '2 cups of hydei ordered, expected on Thu 3 Dec.',
    '2 Becher hydei bestellt, erwartet am Do 3. Dez.',
  ],
  [
    { kind: 'bought', culture: 'K1', strain: 'hydei', ageDays: 12, quarantineUntil: '2026-12-03' },
    'K1 bought: hydei, 12 days old; it starts no other cup until Thu 3 Dec.',
    'K1 gekauft: hydei, 12 Tage alt; bis Do 3. Dez keinen Becher daraus ansetzen.',
  ],
  [
    { kind: 'seen', culture: 'M1', present: ['larvae'], absent: ['pupae', 'adults'], amount: 'few', mould: true },
    'M1 looked at: larvae there, no pupae and adults yet, a few flies, mould.',
    'M1 angesehen: Larven da, noch keine Puppen und Fliegen, wenige Fliegen, Schimmel.',
  ],
  [
    { kind: 'harvested', culture: 'M1', flies: 40, emptied: true, purpose: 'given' },
    'M1 harvested: 40 flies, emptied, for someone else.',
    'M1 geerntet: 40 Fliegen, geleert, für jemand anderen.',
  ],
  [{ kind: 'moved', culture: 'M1', place: 'attic' }, 'M1 moved to attic.', 'M1 umgestellt nach: attic.'],
  [{ kind: 'ended', culture: 'M1', reason: 'mites' }, 'M1 thrown out for mites.', 'M1 weggeworfen: Milben.'],
  [
    { ...group, until: '2026-12-03' },
    'Group frogs: 3 animals, 20 hydei each a feeding, until Thu 3 Dec.',
    'Gruppe frogs: 3 Tiere, je Fütterung und Tier 20 hydei, bis Do 3. Dez.',
  ],
  [{ ...group, count: 0 }, 'Group frogs ends.', 'Gruppe frogs endet.'],
  [
    { kind: 'headcount', group: 'frogs', change: -1, reason: 'died' },
    'frogs: 1 animal fewer (died).',
    'frogs: 1 Tier weniger (gestorben).',
  ],
  [
    { kind: 'fed', group: 'frogs', flies: 1, fromCultures: ['M1'], supplements: ['calcium'], leftOver: 'none' },
    'frogs fed 1 fly from M1, dusted with calcium, left over: no flies.',
    'frogs gefüttert: 1 Fliege aus M1, bestäubt mit calcium, übrig: keine Fliegen.',
  ],
  [{ kind: 'weighed', group: 'frogs', massG: 0.0123 }, 'frogs weighed: 0.012 g each.', 'frogs gewogen: je 0,012 g.'],
  [
    { kind: 'absence', until: '2026-12-03', sitterFeeds: true },
    'Away until Thu 3 Dec; someone else feeds.',
    'Fort bis Do 3. Dez; jemand anders füttert.',
  ],
  [
    { kind: 'order', order: 'o1', due: '2026-12-03', strain: 'hydei', flies: 100, cups: 1 },
    'Promised (o1): 100 flies and 1 cup of hydei for Thu 3 Dec.',
    'Versprochen (o1): 100 Fliegen und 1 Becher hydei für Do 3. Dez.',
  ],
  [{ kind: 'stock', item: 'yeast', amount: 250, unit: 'g' }, 'In stock: 250 g of yeast.', 'Im Vorrat: 250 g yeast.'],
  [{ kind: 'note', text: 'a {0} b', culture: 'M1' }, 'Note on M1: a {0} b', 'Notiz zu M1: a {0} b'],
  [
    { kind: 'logger', logger: 'l1', headings: ['a', 'b', 'c', 'd', 'e'] },
    "Files with the headings a, b, c, d, … are a logger's.",
    'Dateien mit den Spalten a, b, c, d, … stammen von einem Messgerät.',
  ],
  [
    { kind: 'amended', amends, replacement: { kind: 'moved', culture: 'M1', place: 'attic' } },
    'Corrected to: M1 moved to attic.',
    'Berichtigt: M1 umgestellt nach: attic.',
  ],
  [{ kind: 'amended', amends, void: true }, 'An entry taken back.', 'Ein Eintrag gestrichen.'],
];

describe('an entry in words', () => {
  it.each(lines)('%j', (fields, english, german) => {
    const draft = checkDraft({ on: '2026-11-25', ...fields });
    expect(draft).toMatchObject({ ok: true });
    const entry = (draft as { value: EntryDraft }).value;
    expect([entryInWords(entry), entryInWords(entry, { language: 'de' })]).toEqual([english, german]);
  });

  it('is there for every kind', () => {
    expect(new Set(lines.map(([{ kind }]) => kind))).toEqual(new Set(entryKindNames));
  });

  it.each([
    [{ kind: 'place', place: 'attic', temperatureC: 22.5, cupOffsetC: -1 }, 'about 72.5 °F, cups 1.8 °F cooler'],
    [{ kind: 'place', place: 'attic', limitsC: { low: 17, high: 28 } }, 'warned below 62.6 and above 82.4 °F'],
    [{ kind: 'temperature', place: 'attic', minC: -40, maxC: 100 / 3 }, '-40 to 92 °F read'],
    [{ kind: 'temperature', place: 'attic', cupC: 25, shelfC: 23 }, '77 °F in a cup with 73.4 °F beside it'],
  ])('tells %j in degrees Fahrenheit to whoever reads those', (fields, text) => {
    const draft = { on: '2026-11-25', ...fields } as EntryDraft;
    expect(entryInWords(draft, { degrees: 'F' })).toContain(text);
    expect(entryInWords(draft, { language: 'de', degrees: 'F' })).toMatch(/\d °F/);
  });

  it('calls things by the names that the keeper gave', () => {
    const names = { culture: new Map([['M1', 'Cup one']]), place: new Map([['attic', 'Attic']]) };
    const moved = { kind: 'moved', on: '2026-11-25', culture: 'M1', place: 'attic' } as EntryDraft;
    expect(entryInWords(moved, {}, names)).toBe('Cup one moved to Attic.');
  });
});
