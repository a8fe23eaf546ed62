/** One cup's forecast of a past day, and the notes of the week after held against it. */
import { addDays, type Day, type RandomStream, randomStream } from '../../foundation/index.ts';
import {
  bookOutlook,
  type CupBelief,
  type CupEvidence,
  type CupOutlook,
  foretoldCounts,
  foretoldSights,
  ordinaryPrior,
  type StrainBelief,
} from '../../learning/index.ts';
import type { CupHistory } from '../takes.ts';
import { type LaterNote, laterFlies, laterSights, partHarvests } from './later-notes.ts';
import { harvestScore, noteScore, type ScoredNote } from './note-scoring.ts';

interface Given {
  cup: CupHistory;
  /** The cup as it was known then, and as it is known now. */
  earlier: CupEvidence;
  later: CupEvidence;
  belief: CupBelief;
  household: StrainBelief;
  survival: number;
  madeOn: Day;
  seed: number;
}

export class CupForetold {
  private readonly random: RandomStream;
  private readonly believed: CupOutlook;
  private readonly books: CupOutlook;

  constructor(private readonly given: Given) {
    const { earlier, belief, survival, madeOn, seed } = given;
    this.random = randomStream(seed, 'hindcast', earlier.id, madeOn);
    const curve = { emergedByAge: earlier.emergedByAge, adultDailySurvival: survival };
    const { logPace, logYield, fliesNow } = belief.draws;
    this.believed = { ...curve, fromAge: earlier.ageDays, logPace, logYield, fliesNow };
    this.books = bookOutlook(curve, ordinaryPrior, logPace.length, this.random);
  }

  notes(leadDays: number): ScoredNote[] {
    const { earlier, later, madeOn } = this.given;
    const until = earlier.ageDays + leadDays;
    return [
      ...laterSights(later, earlier.ageDays, until).map((note) => this.sight(note)),
      ...laterFlies(later, earlier.ageDays, until).map((note) => this.flies(note)),
      ...partHarvests(later, earlier.ageDays, until).map((harvest) =>
        harvestScore(this.counts(this.believed, harvest), harvest.flies, madeOn),
      ),
    ];
  }

  private flies(note: LaterNote): ScoredNote {
    const counts = (outlook: CupOutlook) => this.counts(outlook, note);
    return noteScore(note, this.labels(note), counts(this.believed), counts(this.books), this.random);
  }

  private sight(note: LaterNote): ScoredNote {
    const stage = note.kind as 'larvae' | 'pupae' | 'adults';
    const nominal = this.given.earlier.firstSeenAge[stage];
    const ages = (logPace: ArrayLike<number>) => foretoldSights(stage, nominal, logPace, this.random);
    return noteScore(note, this.labels(note), ages(this.believed.logPace), ages(this.books.logPace), this.random);
  }

  private counts(outlook: CupOutlook, note: { ageDays: number; entryId: string | undefined }): Float64Array {
    const { countSd } = outlook === this.books ? ordinaryPrior : this.given.household;
    // Takes of the day itself were known to the beliefs, but for feeding that is presumed only afterwards.
    const takes = this.given.later.takes.filter(
      (t) => t.ageDays > outlook.fromAge || (t.ageDays === outlook.fromAge && t.presumed),
    );
    return foretoldCounts(outlook, takes, note, { countSd, presumedDone: ordinaryPrior.presumedDone }, this.random);
  }

  private labels({ ageDays }: LaterNote) {
    const { culture } = this.given.cup;
    return {
      madeOn: this.given.madeOn,
      seenOn: addDays(culture.startedOn, ageDays),
      strain: culture.strain,
      culture: culture.culture,
      label: culture.label,
    };
  }
}
