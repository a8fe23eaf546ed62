/**
 * What happened to the flies in one cup, in order: counts, words, takes. Compiled once, so that the
 * filter can run over them for every cell of the grid.
 */
import type { CupEvidence, CupLook } from './evidence.ts';
import type { FliesPerTap } from './flies-per-tap.ts';
import { wordBeginsAtFlies } from './priors.ts';
import { foundersUntilShare } from './sightings.ts';

/** An event with the entry that it was written in, where there is one. */
export type StockEvent = {
  entryId?: string | undefined;
} /** The keeper's number of flies in the cup; log of (flies + 1). */ & (
  | { kind: 'count'; age: number; logFlies: number; flies: number }
  /** A word: the log of (flies + 1) as the keeper sees it lies between. */
  | { kind: 'word'; age: number; low: number; high: number; word: string }
  /** A known number was taken; `logSd` is the taps' error beyond a count's. The cup may be left empty. */
  | { kind: 'take'; age: number; flies: number; logSd: number; emptied: boolean }
  /** An unknown number was taken, or all of them. */
  | { kind: 'unknown'; age: number; emptied: boolean }
  /** Planned and not recorded; `share` of its chance stands here. */
  | { kind: 'presumed'; age: number; flies: number; share?: number }
);

/**
 * Events in the order of age; on one day in the order in which they were written, and where that is not
 * known looks before takes. A presumed feeding may have come before or after that day's look: half of its
 * chance stands on either side. Founders' days are left out.
 */
export function stockEvents(cup: CupEvidence, taps: FliesPerTap): StockEvent[] {
  const fromAge = foundersUntilShare * cup.firstSeenAge.adults;
  const looks = cup.looks.flatMap(lookEvents);
  const takes = cup.takes.map((take) => takeEvent(take, taps));
  return [...looks, ...takes]
    .filter((e) => e.age >= fromAge && e.age <= cup.ageDays && !(numberOf(e) < 0))
    .sort((a, b) => a.age - b.age || order(a) - order(b) || written(a, b))
    .flatMap(splitPresumed);
}

/** Entries' ids grow with the moment of writing. */
function written(a: StockEvent, b: StockEvent): number {
  const [first, second] = [a.entryId ?? '', b.entryId ?? ''];
  return first < second ? -1 : first > second ? 1 : 0;
}

function splitPresumed(event: StockEvent, i: number, all: readonly StockEvent[]): StockEvent[] {
  if (event.kind !== 'presumed') {
    const presumed = all.filter((e) => e.kind === 'presumed' && e.age === event.age);
    const isFirst = all.findIndex((e) => e.age === event.age) === i;
    return isFirst && isLook(event) ? [...presumed.map(halved), event] : [event];
  }
  return [all.some((e) => e.age === event.age && isLook(e)) ? halved(event) : event];
}

function halved(event: StockEvent): StockEvent {
  return event.kind === 'presumed' ? { ...event, share: 0.5 } : event;
}

function isLook(event: StockEvent): boolean {
  return event.kind === 'count' || event.kind === 'word';
}

/** The number that an event carries; 0 when it has none. */
function numberOf(event: StockEvent): number {
  return 'flies' in event ? event.flies : 0;
}

function order(event: StockEvent): number {
  if (event.kind === 'presumed') return 3;
  if (event.entryId !== undefined) return 1;
  return isLook(event) ? 0 : 2;
}

/** A count says more than a word beside it, so the word is left out then. */
function lookEvents(look: CupLook): StockEvent[] {
  const { ageDays: age, entryId } = look;
  if (look.count !== null)
    return [{ kind: 'count', entryId, age, flies: look.count, logFlies: Math.log(look.count + 1) }];
  if (look.amount === null) return [];
  const words = Object.keys(wordBeginsAtFlies) as (keyof typeof wordBeginsAtFlies)[];
  const next = words[words.indexOf(look.amount) + 1];
  return [
    {
      kind: 'word',
      entryId,
      age,
      word: look.amount,
      low: look.amount === 'none' ? -Infinity : Math.log(wordBeginsAtFlies[look.amount]),
      high: next === undefined ? Infinity : Math.log(wordBeginsAtFlies[next]),
    },
  ];
}

function takeEvent(take: CupEvidence['takes'][number], taps: FliesPerTap): StockEvent {
  const { ageDays: age, entryId } = take;
  if (take.presumed) return { kind: 'presumed', age, flies: take.flies ?? 0 };
  // Nothing came although flies were wanted: the cup was empty, and that is a count like any other.
  if (take.flies !== null) {
    return { kind: 'take', entryId, age, flies: take.flies, logSd: 0, emptied: take.emptied || take.flies === 0 };
  }
  if (take.taps !== null && take.taps > 0) {
    return { kind: 'take', entryId, age, flies: take.taps * taps.median, logSd: taps.logSd, emptied: take.emptied };
  }
  return { kind: 'unknown', entryId, age, emptied: take.emptied };
}
