/** Where mites or mould were seen, which other cups are one contact away, and how. */
import type { DayNumber } from '../foundation/index.ts';

export interface TracedCup {
  cup: string;
  parents: readonly string[];
  startedOn: DayNumber;
  /** Null while it lives. */
  endedOn: DayNumber | null;
  /** Where it stood, in order; each stay lasts until the next begins. */
  places: readonly { from: DayNumber; place: string }[];
  batch: string | null;
}

export type ContactKind = 'parent' | 'offspring' | 'same session' | 'same place' | 'same batch';

export interface Contact {
  cup: string;
  /** Closest first. */
  kinds: ContactKind[];
  /** First day of contact. */
  sinceDay: DayNumber;
}

/**
 * Cups one contact away from `seenIn`, living or ended since `backDays` before it was seen (mites are
 * usually noticed at 3 to 4 weeks, so 28): parents and offspring share flies, a session shares tools,
 * a place shares air and shelf. Closest contacts first. Throws RangeError when the cup is not listed.
 */
export function contactsOf(cups: readonly TracedCup[], seenIn: string, seenOn: DayNumber, backDays = 28): Contact[] {
  const sick = cups.find((cup) => cup.cup === seenIn);
  if (!sick) throw new RangeError(`contactsOf: ${seenIn} is not among the cups`);
  const window = { from: Math.max(sick.startedOn, seenOn - backDays), until: seenOn };
  return cups
    .filter((cup) => cup !== sick && cup.startedOn <= seenOn && (cup.endedOn ?? seenOn) >= window.from)
    .flatMap((cup) => {
      const found = contactsBetween(sick, cup, window);
      if (found.length === 0) return [];
      return [{ cup: cup.cup, kinds: found.map(([kind]) => kind), sinceDay: Math.min(...found.map(([, day]) => day)) }];
    })
    .sort((a, b) => rank(a) - rank(b) || b.kinds.length - a.kinds.length || (a.cup < b.cup ? -1 : 1));
}

const closeness: ContactKind[] = ['parent', 'offspring', 'same session', 'same place', 'same batch'];

function rank({ kinds: [closest] }: Contact): number {
  return closest ? closeness.indexOf(closest) : closeness.length;
}

function contactsBetween(
  sick: TracedCup,
  other: TracedCup,
  window: { from: DayNumber; until: DayNumber },
): [ContactKind, DayNumber][] {
  const found: [ContactKind, DayNumber][] = [];
  if (sick.parents.includes(other.cup)) found.push(['parent', sick.startedOn]);
  if (other.parents.includes(sick.cup)) found.push(['offspring', other.startedOn]);
  if (other.startedOn === sick.startedOn) found.push(['same session', sick.startedOn]);
  const together = firstDayTogether(sick, other, window);
  if (together !== null) found.push(['same place', together]);
  if (sick.batch !== null && sick.batch === other.batch)
    found.push(['same batch', Math.max(sick.startedOn, other.startedOn)]);
  return found;
}

interface Stay {
  place: string;
  from: DayNumber;
  until: DayNumber;
}

function firstDayTogether(a: TracedCup, b: TracedCup, window: { from: DayNumber; until: DayNumber }): DayNumber | null {
  const days = stays(a, window).flatMap((mine) =>
    stays(b, window).flatMap((theirs) => {
      const from = Math.max(mine.from, theirs.from);
      return mine.place === theirs.place && from <= Math.min(mine.until, theirs.until) ? [from] : [];
    }),
  );
  return days.length > 0 ? Math.min(...days) : null;
}

function stays({ places, endedOn }: TracedCup, window: { from: DayNumber; until: DayNumber }): Stay[] {
  return places.map(({ from, place }, i) => {
    const next = places[i + 1];
    const until = next ? next.from - 1 : (endedOn ?? window.until);
    return { place, from: Math.max(from, window.from), until: Math.min(until, window.until) };
  });
}
