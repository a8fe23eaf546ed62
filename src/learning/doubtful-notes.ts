/**
 * Notes that cannot be, or that contradict the rest of a cup's log. Impossible ones are left out of all
 * reckoning; unlikely ones count for little (the likelihood holds a share of notes to be wrong). Either
 * way the keeper is shown them.
 */
import { type Said, said } from '../foundation/index.ts';
import { stageSaid, wordSaid } from './note-said.ts';
import type { KeeperSetting } from './keeper-settings.ts';
import type { TableContext } from './cup-table.ts';
import type { CupEvidence, DoubtfulNote } from './evidence.ts';
import { sightingsOf, sightingWrongChance } from './sightings.ts';
import { type StockEvent, stockEvents } from './stock-events.ts';
import { gapsBetween, StockFilter } from './stock-filter.ts';
import { warpedEmergence } from './warped-emergence.ts';

/** Only what cannot be is wrong for certain. */
const mostUnlikely = 0.999;
/** Notes at least this likely to be wrong are shown. */
const shownFrom = 0.8;

/** The doubtful notes of one cup, by age; `logPace` and `logYield` are what is believed of it. */
export function doubtfulNotes(
  cup: CupEvidence,
  context: TableContext,
  setting: KeeperSetting,
  believed: { logPace: number; logYield: number },
): DoubtfulNote[] {
  return [
    ...impossibleNotes(cup),
    ...unlikelySightings(cup, believed.logPace, context.prior.wrongEntryShare),
    ...unlikelyNumbers(cup, context, setting, believed),
  ].sort((a, b) => a.ageDays - b.ageDays);
}

/** What no cup can show, whatever its pace and yield. */
export function impossibleNotes(cup: CupEvidence): DoubtfulNote[] {
  const out: DoubtfulNote[] = [];
  const add = (note: { ageDays: number; entryId?: string }, found: Said, expected: Said) =>
    out.push({ ageDays: note.ageDays, entryId: note.entryId, found, expected, chanceWrong: 1 });
  for (const note of [...cup.looks, ...cup.takes]) {
    if (note.ageDays < 0) add(note, said`a note from before the cup was started`, said`a day on or after its start`);
    if (note.ageDays > cup.ageDays) add(note, said`a note from after the cup ended`, said`a day before its end`);
  }
  for (const look of cup.looks) {
    const both = look.present.filter((stage) => look.absent.includes(stage));
    for (const stage of both) add(look, said`${stageSaid[stage]} both seen and not seen`, said`one of the two`);
    if ((look.count ?? 0) < 0) add(look, said`a count of ${look.count ?? 0}`, said`0 or more`);
  }
  for (const take of cup.takes)
    if ((take.flies ?? 0) < 0) add(take, said`${take.flies ?? 0} flies taken`, said`0 or more`);
  return out;
}

function unlikelySightings(cup: CupEvidence, logPace: number, wrongShare: number): DoubtfulNote[] {
  return sightingsOf(cup).flatMap((s) => {
    const chanceWrong = sightingWrongChance(s, logPace, wrongShare);
    if (chanceWrong < shownFrom) return [];
    const expected = said`${stageSaid[s.stage]} from about day ${Math.round(s.nominalAge * Math.exp(-logPace))}`;
    const late = s.notYetAge > s.nominalAge * Math.exp(-logPace);
    return late
      ? [
          {
            ageDays: s.notYetAge,
            entryId: s.notYetEntry,
            found: said`no ${stageSaid[s.stage]} yet on day ${s.notYetAge}`,
            expected,
            chanceWrong,
          },
        ]
      : [
          {
            ageDays: s.seenAge,
            entryId: s.seenEntry,
            found: said`${stageSaid[s.stage]} seen on day ${s.seenAge}`,
            expected,
            chanceWrong,
          },
        ];
  });
}

function unlikelyNumbers(
  cup: CupEvidence,
  context: TableContext,
  setting: KeeperSetting,
  believed: { logPace: number; logYield: number },
): DoubtfulNote[] {
  const events = stockEvents(cup, context.taps);
  const emerged = warpedEmergence(cup.emergedByAge, believed.logPace, cup.ageDays);
  const gaps = gapsBetween(events, emerged, context.survival, cup.ageDays);
  const traced = new StockFilter(context.prior, setting).retrace(events, gaps, Math.exp(believed.logYield));
  return events.flatMap((event, i) => {
    const { metFlies, trust } = traced[i] as { metFlies: number; trust: number };
    if (1 - trust < shownFrom) return [];
    const expected = said`about ${Math.round(metFlies)} flies in the cup`;
    const { entryId } = event;
    return [
      {
        ageDays: event.age,
        entryId,
        found: foundText(event),
        expected,
        chanceWrong: Math.min(mostUnlikely, 1 - trust),
      },
    ];
  });
}

function foundText(event: StockEvent): Said {
  switch (event.kind) {
    case 'count':
      return said`a count of ${event.flies} on day ${event.age}`;
    case 'word':
      return said`${wordSaid(event.word)} on day ${event.age}`;
    default:
      return said`${Math.round('flies' in event ? event.flies : 0)} flies taken on day ${event.age}`;
  }
}
