/**
 * Ten weeks of an invented keeper's logbook, ending on the demo's today: a cool spell, a failed cup,
 * days on which nobody wrote anything down, and a hatch of new mouths in about six weeks.
 */
import { addDays, type Day, daysBetween, type RandomStream, randomStream, weekdayOf } from '../../foundation/index.ts';
import type { Language } from '../../paper/index.ts';
import type { AmountWord, EntryDraft, SeenStage } from '../../logbook/index.ts';
import { demoKeys, demoMouths, demoSettings, demoWorkWeekdays } from './demo-household.ts';
import { type DemoCup, demoCups, trulyEmerged, trulyFirst } from './demo-shelf.ts';

const weeksOfLog = 10;
/** Cups were running before the logbook began; their starts are written from memory. */
const runningBeforeDays = 28;
const rations = [
  [demoKeys.stub, demoMouths.froglets.count * demoMouths.froglets.fliesPerFeeding],
  [demoKeys.hydei, demoMouths.geckos.count * demoMouths.geckos.fliesPerFeeding],
] as const;
const coolSpell = { fromDaysAgo: 34, untilDaysAgo: 27 };

/** @param on the day that counts as today; the log ends on the evening before. */
export function demoLogbook(on: Day, language?: Language): EntryDraft[] {
  const began = addDays(on, -7 * weeksOfLog);
  const running = addDays(began, -runningBeforeDays);
  const settings = demoSettings(began, running, on, language);
  const readings = temperatures(began, on);
  const cups = demoCups([...settings, ...readings], running, addDays(on, -1));
  const started = cups.map(startedEntry);
  return [...settings, ...started, ...readings, ...weighings(on), ...days(cups, began, on)];
}

function startedEntry(cup: DemoCup): EntryDraft {
  const from = cup.fromCultures.length > 0 ? { fromCultures: cup.fromCultures } : {};
  return {
    kind: 'started',
    on: cup.start,
    culture: cup.culture,
    label: cup.culture,
    strain: cup.strain,
    place: cup.place,
    container: 'tall',
    founders: 50,
    ...from,
  } as EntryDraft;
}

/** The juveniles on the kitchen scale every three weeks: they grow as they should. */
function weighings(on: Day): EntryDraft[] {
  const masses: [daysAgo: number, massG: number][] = [
    [63, 0.53],
    [42, 0.62],
    [21, 0.74],
    [4, 0.83],
  ];
  return masses.map(([daysAgo, massG]) => ({
    kind: 'weighed',
    on: addDays(on, -daysAgo),
    group: 'froglets',
    massG,
    animals: demoMouths.froglets.count,
  }));
}

/** A thermometer read every few days, and daily while it was cool. */
function temperatures(began: Day, on: Day): EntryDraft[] {
  const stream = randomStream(21, 'demo', 'temperature');
  const entries: EntryDraft[] = [];
  for (let d = began; d < on; d = addDays(d, 1)) {
    const ago = daysBetween(d, on);
    const cool = ago <= coolSpell.fromDaysAgo && ago >= coolSpell.untilDaysAgo;
    const meanC = round((cool ? 18.6 : 22.4) + 0.5 * stream.normal(), 1);
    if (cool || ago % 3 === 0) {
      const fields = { place: demoKeys.pantry, meanC, minC: round(meanC - 1.4, 1), maxC: round(meanC + 1.5, 1) };
      entries.push({ kind: 'temperature', on: d, ...fields } as EntryDraft);
    }
  }
  return entries;
}

/** The days in turn: flies emerge and are fed, some of it is written down. */
function days(cups: DemoCup[], began: Day, on: Day): EntryDraft[] {
  const stream = randomStream(22, 'demo', 'days');
  const stock = new Map<string, number>();
  const entries: EntryDraft[] = [];
  for (let d = cups[0]?.start ?? began; d < on; d = addDays(d, 1)) {
    const living = cups.filter((c) => c.start <= d && d < c.end);
    for (const cup of living) {
      stock.set(cup.culture, (stock.get(cup.culture) ?? 0) * 0.93 + trulyEmerged(cup, daysBetween(cup.start, d)));
    }
    const written = d >= began && stream.uniform() < 0.6;
    for (const [strain, wanted] of rations) {
      entries.push(...feed(living, strain, wanted, stock, d, written, stream));
    }
    if (d >= began && demoWorkWeekdays.includes(weekdayOf(d))) entries.push(...looks(living, stock, d, stream));
    if (d >= began) entries.push(...ends(cups, d));
  }
  return entries;
}

/** Feeds from the oldest cups; founders for the evening's new cups come out of their givers. */
function feed(
  living: DemoCup[],
  strain: string,
  wanted: number,
  stock: Map<string, number>,
  on: Day,
  written: boolean,
  stream: RandomStream,
): EntryDraft[] {
  for (const cup of living) {
    if (cup.strain !== strain || cup.start !== on) continue;
    for (const giver of cup.fromCultures) stock.set(giver, Math.max(0, (stock.get(giver) ?? 0) - 50));
  }
  const entries: EntryDraft[] = [];
  let missing = wanted;
  for (const cup of living.filter((c) => c.strain === strain)) {
    const flies = Math.min(missing, stock.get(cup.culture) ?? 0);
    if (flies < 5) continue;
    stock.set(cup.culture, (stock.get(cup.culture) ?? 0) - flies);
    missing -= flies;
    const guessed = Math.max(5, 5 * Math.round((flies * Math.exp(0.15 * stream.normal())) / 5));
    const emptied = (stock.get(cup.culture) as number) < 3 ? { emptied: true } : {};
    if (written)
      entries.push({ kind: 'harvested', on, culture: cup.culture, flies: guessed, ...emptied } as EntryDraft);
  }
  return entries;
}

/** A look at some of the shelf on work evenings. */
function looks(living: DemoCup[], stock: Map<string, number>, on: Day, stream: RandomStream): EntryDraft[] {
  const entries: EntryDraft[] = [];
  for (const cup of living) {
    const age = daysBetween(cup.start, on);
    if (age < 3 || stream.uniform() < 0.35) continue;
    const stages = (['larvae', 'pupae', 'adults'] as const).filter((stage) => stage !== 'adults' || age > 6);
    const present = stages.filter((stage) => trulyFirst(cup, stage) <= age);
    const absent = stages.filter((stage) => trulyFirst(cup, stage) > age).slice(0, 1);
    entries.push(look(cup, on, present, absent, stock.get(cup.culture) ?? 0, stream));
  }
  return entries;
}

function look(
  cup: DemoCup,
  on: Day,
  present: SeenStage[],
  absent: SeenStage[],
  flies: number,
  stream: RandomStream,
): EntryDraft {
  const emerged = present.includes('adults');
  const counted = emerged && flies > 20 && stream.uniform() < 0.3;
  const count = Math.round((flies * Math.exp(0.25 * stream.normal())) / 10) * 10;
  return {
    kind: 'seen',
    on,
    culture: cup.culture,
    ...(present.length > 0 ? { present } : {}),
    ...(absent.length > 0 ? { absent } : {}),
    ...(counted ? { count } : emerged ? { amount: amountWord(flies) } : {}),
  } as EntryDraft;
}

function amountWord(flies: number): AmountWord {
  if (flies < 3) return 'none';
  if (flies < 20) return 'few';
  if (flies < 80) return 'some';
  return flies < 260 ? 'plenty' : 'swarming';
}

function ends(cups: DemoCup[], on: Day): EntryDraft[] {
  return cups
    .filter((c) => c.end === on)
    .map((c) => ({ kind: 'ended', on, culture: c.culture, reason: c.reason }) as EntryDraft);
}

function round(value: number, decimals: number): number {
  return Number(value.toFixed(decimals));
}
