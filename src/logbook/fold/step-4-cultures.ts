/** Step 4: each culture's course, and the reports that contradict it, which are left out and listed. */
import { type CultureSettings, newCulture, type Start } from './culture-start.ts';
import type { Reports, ReportOf } from './draft-facts.ts';
import type { CultureFacts, SeenFact } from './facts.ts';
import { compare, type Reported } from './step-1-amendments.ts';

type Event = ReportOf<'seen' | 'harvested' | 'moved' | 'ended' | 'note'> & { culture: string };

export function cultureFacts(
  reports: Reports,
  ordered: readonly Reported[],
  settings: CultureSettings,
): CultureFacts[] {
  const cultures = new Map<string, CultureFacts>();
  const starts: Start[] = [];
  for (const report of ordered) if (isStart(report) && begin(cultures, report, reports, settings)) starts.push(report);
  for (const report of ordered) if (isEvent(report)) happen(cultures, report, reports, settings);
  for (const start of starts) if (start.kind === 'started') linkParents(cultures, start, reports);
  for (const start of starts) if (start.kind === 'bought') endNeedlessQuarantine(cultures, start);
  for (const c of cultures.values()) c.harvests.sort((a, b) => compare(a.on, b.on));
  return [...cultures.values()].sort((a, b) => compare(a.on, b.on) || compare(a.culture, b.culture));
}

function isStart(report: Reported): report is Start {
  return report.kind === 'started' || report.kind === 'bought';
}

function isEvent(report: Reported): report is Event {
  switch (report.kind) {
    case 'seen':
    case 'harvested':
    case 'moved':
    case 'ended':
      return true;
    case 'note':
      return report.culture !== undefined;
    default:
      return false;
  }
}

function begin(
  cultures: Map<string, CultureFacts>,
  start: Start,
  reports: Reports,
  settings: CultureSettings,
): boolean {
  const before = cultures.get(start.culture);
  if (before) {
    const found = `${start.culture}, ${before.origin} already on ${before.on}`;
    reports.problem(start, 'culture', found, 'a key that no other culture has');
    return false;
  }
  const culture = newCulture(start, reports, settings);
  if (culture) cultures.set(start.culture, culture);
  return culture !== null;
}

/**
 * The usual quarantine protects home-grown cups: a cup that came where none stood is free, unless its entry says
 * otherwise.
 */
function endNeedlessQuarantine(
  cultures: Map<string, CultureFacts>,
  { culture, on, quarantineUntil }: ReportOf<'bought'>,
) {
  const came = cultures.get(culture);
  if (!came || quarantineUntil !== undefined) return;
  const stands = (c: CultureFacts) => c.origin === 'started' && c.on < on && (c.ended === null || c.ended.on > on);
  if (![...cultures.values()].some(stands)) came.quarantinedUntil = null;
}

function happen(cultures: Map<string, CultureFacts>, event: Event, reports: Reports, settings: CultureSettings): void {
  const culture = cultures.get(event.culture);
  if (!culture) {
    reports.unknown(event, 'culture', event.culture, 'culture');
    return;
  }
  if (event.kind !== 'note' && !isDuring(culture, event, 'on', reports)) return;
  if (event.note !== undefined) culture.notes.push({ on: event.on, text: event.note });
  apply(culture, event, reports, settings);
}

function isDuring(culture: CultureFacts, report: Reported, field: string, reports: Reports): boolean {
  const { culture: key, origin, on, ended } = culture;
  if (report.on < on) {
    reports.problem(report, field, `${report.on}, before ${key} was ${origin}`, `a day not before ${on}`);
    return false;
  }
  if (ended && report.kind === 'ended') {
    reports.problem(report, field, `another end of ${key}, which had ended on ${ended.on}`, 'one end only');
    return false;
  }
  if (ended && report.on > ended.on) {
    reports.problem(report, field, `${report.on}, after ${key} had ended`, `a day not after ${ended.on}`);
    return false;
  }
  return true;
}

function apply(culture: CultureFacts, event: Event, reports: Reports, settings: CultureSettings): void {
  switch (event.kind) {
    case 'seen':
      culture.seen.push(seenFact(event));
      break;
    case 'harvested':
      culture.harvests.push({
        entryId: event.id,
        on: event.on,
        flies: event.flies ?? null,
        taps: event.taps ?? null,
        weightMg: event.weightMg ?? null,
        emptied: event.emptied ?? false,
        purpose: event.purpose ?? 'feeding',
      });
      break;
    case 'moved':
      move(culture, event, reports, settings);
      break;
    case 'ended':
      culture.ended = { on: event.on, reason: event.reason };
      break;
    case 'note':
      culture.notes.push({ on: event.on, text: event.text });
  }
}

function move(culture: CultureFacts, event: ReportOf<'moved'>, reports: Reports, settings: CultureSettings): void {
  if (!settings.places.has(event.place)) {
    reports.unknown(event, 'place', event.place, 'place');
    return;
  }
  // Two moves on one day: the cup spends the night where the last one took it.
  if (culture.places[culture.places.length - 1]?.from === event.on) culture.places.pop();
  culture.places.push({ from: event.on, place: event.place });
}

function seenFact(event: ReportOf<'seen'>): SeenFact {
  return {
    entryId: event.id,
    on: event.on,
    present: event.present ?? [],
    absent: event.absent ?? [],
    amount: event.amount ?? null,
    count: event.count ?? null,
    moisture: event.moisture ?? null,
    mould: event.mould ?? false,
    mites: event.mites ?? false,
    winged: event.winged ?? null,
  };
}

/** Founders leave the cups that they come from: that harvest is implied by the start. */
function linkParents(cultures: Map<string, CultureFacts>, start: ReportOf<'started'>, reports: Reports): void {
  const child = cultures.get(start.culture) as CultureFacts;
  for (const key of start.fromCultures ?? []) {
    const parent = cultures.get(key);
    if (!parent) {
      reports.unknown(start, 'fromCultures', key, 'culture');
    } else if (isDuring(parent, start, 'fromCultures', reports)) child.fromCultures.push(key);
  }
  const given = child.fromCultures.length;
  child.fromCultures.forEach((key, i) => {
    const flies = Math.floor(start.founders / given) + (i < start.founders % given ? 1 : 0);
    cultures.get(key)?.harvests.push({
      entryId: start.id,
      on: start.on,
      flies,
      taps: null,
      weightMg: null,
      emptied: false,
      purpose: 'founders',
    });
  });
}
