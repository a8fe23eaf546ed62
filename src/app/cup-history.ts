/** A cup's life so far and the flies taken out of it, as the models are asked about it. */
import type { DayNumber } from '../foundation/index.ts';
import type { CultureFacts } from '../logbook/index.ts';
import type { NominalCup } from './nominal-cup.ts';

export interface Take {
  day: DayNumber;
  /** Null when nobody counted. */
  flies: number | null;
  taps: number | null;
  emptied: boolean;
  presumed: boolean;
  /** Recorded flies that went to animals. */
  feeding: boolean;
  /** Presumed only: flies that were still wanted; a cup richer than the books gave more of them. */
  wanted?: number;
  /** The entry that it was written in; none when presumed. */
  entryId?: string;
}

export interface CupHistory {
  culture: CultureFacts;
  nominal: NominalCup;
  /** Of cups like it that fail, the share that has failed before each age. */
  failedBefore: Float64Array;
  start: DayNumber;
  /** Day it ended, or null while it lives. */
  end: DayNumber | null;
  takes: Take[];
}
