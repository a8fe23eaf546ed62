/**
 * Notes that can be held against an earlier forecast of their cup: those that say how many flies there
 * were in all (counts, words, cups emptied), and looks for stages that were awaited. A harvest that left flies behind
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

/** A stage that was awaited when the forecast was made. */
export interface LaterSight extends LaterNote {
  kind: 'larvae' | 'pupae' | 'adults';
  /** Last age at which it was known not to be there then; -Infinity when nobody had looked. */
  notYetAge: number;
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

/**
 * What the week's looks said of the stages that had not been seen by `fromAge`: the first sight lies between
 * the last "not there" and the first "there", or after the last "not there". The days before the forecast on
 * which nobody looked stay inside the bracket.
 */
export function laterSights(earlier: CupEvidence, later: CupEvidence, untilAge: number): LaterSight[] {
  const { ageDays: fromAge } = earlier;
  const known = new Map(sightingsOf(earlier).map((s) => [s.stage, s]));
  return sightingsOf({ ...later, ageDays: Math.min(later.ageDays, untilAge) }).flatMap((s) => {
    const before = known.get(s.stage);
    const isNews = s.seenAge === Infinity ? s.notYetAge > fromAge : s.seenAge > fromAge;
    if (!isNews || (before && before.seenAge !== Infinity)) return [];
    return [
      {
        kind: s.stage,
        ageDays: s.seenAge === Infinity ? s.notYetAge : s.seenAge,
        entryId: s.seenAge === Infinity ? s.notYetEntry : s.seenEntry,
        low: s.notYetAge,
        high: s.seenAge,
        notYetAge: before?.notYetAge ?? -Infinity,
      },
    ];
  });
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
