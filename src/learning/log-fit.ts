/**
 * Whether a log can be read with this model at all. When the world is as the model says, few notes are
 * doubtful; when many are, the bands cannot be relied on and the keeper is told so.
 */
import type { TableContext } from './cup-table.ts';
import { doubtfulNotes } from './doubtful-notes.ts';
import type { CupEvidence } from './evidence.ts';
import type { KeeperSetting } from './keeper-settings.ts';
import { quickCdf } from './normal-quick.ts';
import { sightingsOf } from './sightings.ts';
import { stockEvents } from './stock-events.ts';

/** A log fails to fit when so many doubtful notes would come with less than this chance. */
const failsBelow = 0.001;

/** Counts the notes of all cups; `believedOf(i)` is what is believed of cup `i`. */
export function logFit(
  cups: readonly CupEvidence[],
  context: TableContext,
  setting: KeeperSetting,
  believedOf: (i: number) => { logPace: number; logYield: number },
): { notes: number; doubted: number; fits: boolean } {
  let notes = 0;
  let doubted = 0;
  cups.forEach((cup, i) => {
    notes += sightingsOf(cup).length + stockEvents(cup, context.taps).length;
    doubted += doubtfulNotes(cup, context, setting, believedOf(i)).length;
  });
  return { notes, doubted, fits: chanceOfAsMany(notes, doubted, context.prior.wrongEntryShare) >= failsBelow };
}

/** Chance of at least `doubted` wrong notes among `notes` (normal approximation with half a note off). */
function chanceOfAsMany(notes: number, doubted: number, share: number): number {
  if (doubted <= 1) return 1;
  const mean = notes * share;
  return 1 - quickCdf((doubted - 0.5 - mean) / Math.sqrt(mean * (1 - share) + 0.25));
}
