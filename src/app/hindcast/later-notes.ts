/**
 * Notes that can be held against an earlier forecast of their cup: those that say how many flies there
 * were in all (counts, words, cups emptied), and first sights of stages. A harvest that left flies behind
 * says only that there were at least so many.
 */
import { type CupEvidence, foundersUntilShare, sightingsOf, wordBeginsAtFlies } from '../../learning/index.ts';
import type { HindcastNote } from './hindcast-answer.ts';

export interface LaterNote {
  kind: HindcastNote['kind'];
  ageDays: number;
  entryId: string | undefined;
  /** Flies, or days of age: the note lies between; a count is both. */
  low: number;
  high: number;
}

/** The notes of flies after day `fromAge` of a cup's age, up to `untilAge`: the first of each kind of day. */
export function laterFlies(cup: CupEvidence, fromAge: number, untilAge: number): LaterNote[] {
  const from = Math.max(fromAge + 1, Math.ceil(foundersUntilShare * cup.firstSeenAge.adults));
  const within = (age: number) => age >= from && age <= untilAge && age <= cup.ageDays;
  const looks = cup.looks.filter((l) => within(l.ageDays)).flatMap(lookNote);
  const emptied = cup.takes
    .filter((t) => within(t.ageDays) && !t.presumed && t.flies !== null && (t.emptied || t.flies === 0))
    .map(
      (t): LaterNote => ({
        kind: 'emptied',
        ageDays: t.ageDays,
        entryId: t.entryId,
        low: t.flies as number,
        high: t.flies as number,
      }),
    );
  return [...looks, ...emptied].sort((a, b) => a.ageDays - b.ageDays);
}

function lookNote({ ageDays, entryId, count, amount }: CupEvidence['looks'][number]): LaterNote[] {
  if (count !== null) return [{ kind: 'count', ageDays, entryId, low: count, high: count }];
  if (amount === null) return [];
  const words = Object.keys(wordBeginsAtFlies) as (keyof typeof wordBeginsAtFlies)[];
  const next = words[words.indexOf(amount) + 1];
  const high = next === undefined ? Number.POSITIVE_INFINITY : wordBeginsAtFlies[next] - 1;
  return [{ kind: 'word', ageDays, entryId, low: wordBeginsAtFlies[amount], high }];
}

/** First sights that fell after `fromAge`, of stages that had not been seen by then. */
export function laterSights(cup: CupEvidence, fromAge: number, untilAge: number): LaterNote[] {
  return sightingsOf(cup)
    .filter((s) => s.seenAge > fromAge && s.seenAge <= untilAge)
    .map((s) => ({
      kind: s.stage,
      ageDays: s.seenAge,
      entryId: s.seenEntry,
      low: Math.max(fromAge, s.notYetAge),
      high: s.seenAge,
    }));
}

/** Harvests that left flies behind. */
export function partHarvests(
  cup: CupEvidence,
  fromAge: number,
  untilAge: number,
): { ageDays: number; entryId: string | undefined; flies: number }[] {
  return cup.takes.flatMap(({ ageDays, entryId, flies, emptied, presumed }) =>
    ageDays > fromAge && ageDays <= untilAge && !presumed && !emptied && flies !== null && flies > 0
      ? [{ ageDays, entryId, flies }]
      : [],
  );
}
