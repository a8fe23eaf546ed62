/**
 * Logbooks drawn by seed for fuzzing: every kind of entry, plausible and contradictory ones mixed,
 * amendments of amendments, several devices with clocks of their own.
 */
import { addDays, day, type RandomStream, randomStream, weekdays } from '../../src/foundation/index.ts';
import { checkEntry, type Entry, type EntryDraft, endReasons, seenStages } from '../../src/logbook/index.ts';

const firstDay = day('2026-03-01');
const strains = ['melanogaster', 'hydei', 'curly', 'nobody'];
const places = ['shelf', 'cellar', 'nowhere'];
const words = ['none', 'few', 'some', 'plenty', 'swarming'] as const;

/** `size` entries of `devices` devices; the same for the same arguments. */
export function randomLogbook(seed: number, size: number, devices = 3): Entry[] {
  const draw = drawing(randomStream(seed, 'logbook'));
  const entries: Entry[] = [];
  for (let n = 0; n < size; n++) entries.push(randomEntry(draw, n, draw.r.below(devices), entries));
  return entries;
}

/** The `n`th entry of a device; may amend one of `earlier`. */
export function randomEntry(draw: Drawing, n: number, device: number, earlier: readonly Entry[]): Entry {
  const on = addDays(firstDay, Math.floor(n / 4) + draw.r.below(9));
  const hour = String(draw.r.below(24)).padStart(2, '0');
  const draft = earlier.length > 3 && draw.chance(0.2) ? amendment(draw, earlier) : report(draw);
  const value = {
    ...draft,
    id: randomId(draw.r, n, device),
    on,
    recordedAt: `${addDays(on, draw.r.below(3))}T${hour}:00:0${draw.r.below(10)}${draw.pick(['', '.5', '.500'])}Z`,
    by: `device ${device}`,
    ...(draw.chance(0.3) ? { note: draw.pick(['späť', 'two\nlines', '"']) } : {}),
  };
  const checked = checkEntry(value);
  if (!checked.ok) throw new RangeError(`randomEntry: ${JSON.stringify(checked.problems)} of ${JSON.stringify(value)}`);
  return checked.value;
}

export interface Drawing {
  r: RandomStream;
  chance(p: number): boolean;
  pick<T>(items: readonly T[]): T;
}

export function drawing(r: RandomStream): Drawing {
  return { r, chance: (p) => r.uniform() < p, pick: (items) => items[r.below(items.length)] as never };
}

/** The items in an order drawn by seed. */
export function shuffled<T>(items: readonly T[], seed: number): T[] {
  const r = randomStream(seed, 'shuffle');
  const result = [...items];
  for (let i = result.length - 1; i > 0; i--) {
    const j = r.below(i + 1);
    [result[i], result[j]] = [result[j] as T, result[i] as T];
  }
  return result;
}

function randomId(r: RandomStream, n: number, device: number): string {
  const hex = (value: number, digits: number) => value.toString(16).padStart(digits, '0');
  const clock = hex(1_772_000_000_000 + n * 60_000 + r.below(60_000), 12);
  return `${clock.slice(0, 8)}-${clock.slice(8)}-7${hex(r.below(4096), 3)}-8${hex(n % 4096, 3)}-${hex(device, 4)}${hex(r.below(2 ** 32), 8)}`;
}

/** Fields of a report, without its day. */
type Fields = { kind: EntryDraft['kind'] } & Record<string, unknown>;

function amendment(d: Drawing, earlier: readonly Entry[]): Fields {
  const amends = d.chance(0.05) ? randomId(d.r, 999_999, 9) : d.pick(earlier.slice(-30)).id;
  return d.chance(0.4)
    ? { kind: 'amended', amends, void: true }
    : {
        kind: 'amended',
        amends,
        replacement: { ...report(d), ...(d.chance(0.5) ? { on: addDays(firstDay, d.r.below(40)) } : {}) },
      };
}

function report(d: Drawing): Fields {
  const make = d.pick([...settings, ...needs, ...cultureEvents, ...cultureEvents]);
  return make(d);
}

const culture = (d: Drawing) => `M${1 + d.r.below(9)}`;
const cultures = (d: Drawing) => (d.chance(0.5) ? { fromCultures: [`M${10 + d.r.below(3)}`, 'M1'] } : {});

const settings: ((d: Drawing) => Fields)[] = [
  (d) => ({ kind: 'household', name: d.pick(['Reed', 'Pond']), purchase: { leadDays: d.r.below(9) } }),
  (d) => ({ kind: 'household', serviceLevel: 0.9 + d.r.below(9) / 100, workWeekdays: [d.pick(weekdays)] }),
  (d) => ({ kind: 'place', place: d.pick(places.slice(0, 2)), temperatureC: 18 + d.r.below(8) }),
  (d) => ({
    kind: 'place',
    place: 'shelf',
    seasonsC: { winter: 18, spring: 20, summer: 25 + d.r.below(3), autumn: 21 },
  }),
  (d) => ({ kind: 'temperature', place: d.pick(places), minC: 17.3, maxC: 20 + d.r.uniform() }),
  (d) => ({ kind: 'temperature', place: d.pick(places), meanC: 17 + d.r.uniform() * 9 }),
  (d) => ({ kind: 'temperature', place: d.pick(places), cupC: 24 + d.r.uniform(), shelfC: 23 }),
  (d) => ({ kind: 'logger', logger: d.pick(['l1', 'l2']), headings: ['t', 'c'], place: d.pick(places) }),
  (d) => ({ kind: 'strain', strain: 'curly', base: 'melanogaster', paceFactor: 0.9 + d.r.below(3) / 10 }),
  (d) => ({ kind: 'container', container: 'jar', founders: 20 + d.r.below(40) }),
  (d) => ({ kind: 'recipe', recipe: 'oat', waterMl: d.r.below(900), ingredients: [{ ingredient: 'oats', massG: 90 }] }),
  (d) => ({ kind: 'batch', batch: `B${d.r.below(3)}`, recipe: 'oat', massG: d.r.below(2000) }),
];

const needs: ((d: Drawing) => Fields)[] = [
  (d) => ({
    kind: 'group',
    group: d.pick(['frogs', 'mantids']),
    count: d.r.below(20),
    fliesPerFeeding: 12,
    strain: d.pick(strains),
  }),
  () => ({
    kind: 'group',
    group: 'frogs',
    count: 3,
    fliesPerFeeding: 9.5,
    strain: 'hydei',
    feedingWeekdays: ['mon', 'fri'],
  }),
  (d) => ({ kind: 'fed', group: d.pick(['frogs', 'newts']), flies: d.r.below(200), ...cultures(d) }),
  (d) => ({ kind: 'headcount', group: d.pick(['frogs', 'newts']), change: -1 - d.r.below(9), reason: 'died' }),
  (d) => ({ kind: 'headcount', group: 'mantids', change: d.pick([-2, 3]), reason: 'counted' }),
  (d) => ({ kind: 'weighed', group: d.pick(['frogs', 'newts']), massG: (1 + d.r.below(40)) / 16 }),
  (d) => ({ kind: 'absence', until: addDays(firstDay, 90 + d.r.below(9)), sitterFeeds: d.chance(0.5) }),
  (d) => ({
    kind: 'order',
    order: `O${d.r.below(3)}`,
    due: '2026-08-01',
    strain: d.pick(strains),
    flies: d.r.below(500),
  }),
  (d) => ({ kind: 'stock', item: d.pick(['agar', 'lids']), amount: d.r.below(1000) / 8, unit: 'g' }),
  () => ({ kind: 'note', text: 'The heating failed.' }),
];

const cultureEvents: ((d: Drawing) => Fields)[] = [
  (d) => ({
    kind: 'started',
    culture: `M${2 + d.r.below(8)}`,
    strain: d.pick(strains),
    founders: 1 + d.r.below(80),
    ...cultures(d),
  }),
  (d) => ({
    kind: 'started',
    culture: culture(d),
    strain: 'curly',
    founders: 50,
    container: 'jar',
    batch: 'B1',
    place: d.pick(places),
  }),
  (d) => ({ kind: 'bought', culture: `M${10 + d.r.below(3)}`, strain: d.pick(strains), ageDays: d.r.below(30) }),
  (d) => ({
    kind: 'seen',
    culture: culture(d),
    present: [d.pick(seenStages)],
    amount: d.pick(words),
    mould: d.chance(0.1),
  }),
  (d) => ({ kind: 'seen', culture: culture(d), absent: [d.pick(seenStages)], count: d.r.below(400) }),
  (d) => ({ kind: 'harvested', culture: culture(d), flies: d.r.below(200) }),
  (d) => ({ kind: 'harvested', culture: culture(d), taps: d.r.below(9), emptied: d.chance(0.2), purpose: 'given' }),
  (d) => ({ kind: 'moved', culture: culture(d), place: d.pick(places) }),
  (d) => ({ kind: 'ended', culture: culture(d), reason: d.pick(endReasons) }),
  (d) => ({ kind: 'note', culture: culture(d), text: 'Pale larvae.' }),
];
