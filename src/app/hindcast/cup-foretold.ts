/** One cup's forecast of a past day, and the notes of the week after held against it. */
import { addDays, type Day, type RandomStream, randomStream } from '../../foundation/index.ts';
import {
  bookOutlook,
  type CupBelief,
  type CupEvidence,
  type CupOutlook,
  foretoldNotes,
  foretoldSights,
  ordinaryPrior,
  type StrainBelief,
} from '../../learning/index.ts';
import type { CultureFacts } from '../../logbook/index.ts';
import { type LaterNote, type LaterSight, laterFlies, laterSights, partHarvests } from './later-notes.ts';
import { harvestScore, noteScore, type ScoredNote } from './note-scoring.ts';

interface Given {
  culture: Pick<CultureFacts, 'culture' | 'label' | 'strain' | 'startedOn'>;
  /** The cup as it was known then, and as it is known now. */
  earlier: CupEvidence;
  later: CupEvidence;
  belief: CupBelief;
  household: StrainBelief;
  survival: number;
  madeOn: Day;
  seed: number;
}

/** A stage is forecast while at least this chance is left that it is yet to come. */
const leastChanceAwaited = 0.05;

export class CupForetold {
  private readonly random: RandomStream;
  private readonly believed: CupOutlook;
  private readonly books: CupOutlook;

  constructor(private readonly given: Given) {
    const { earlier, belief, household, survival, madeOn, seed } = given;
    this.random = randomStream(seed, 'hindcast', earlier.id, madeOn);
    const curve = { emergedByAge: earlier.emergedByAge, adultDailySurvival: survival };
    const { logPace, logYield, fliesNow } = belief.draws;
    const { countSd, wordOffset } = household.draws;
    this.believed = { ...curve, fromAge: earlier.ageDays, logPace, logYield, fliesNow, countSd, wordOffset };
    this.books = bookOutlook(curve, ordinaryPrior, logPace.length, this.random);
  }

  notes(leadDays: number): ScoredNote[] {
    const { earlier, later, madeOn } = this.given;
    const until = earlier.ageDays + leadDays;
    return [
      ...laterSights(earlier, later, until).flatMap((note) => this.sight(note)),
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

  /** A stage that was as good as sure to have come before the forecast was made was not forecast. */
  private sight(note: LaterSight): ScoredNote[] {
    const { earlier } = this.given;
    const ages = (logPace: ArrayLike<number>) =>
      foretoldSights(note.kind, earlier.firstSeenAge[note.kind], note.notYetAge, logPace, this.random);
    const believed = ages(this.believed.logPace);
    const yetToCome = believed.filter((age) => age > earlier.ageDays).length / believed.length;
    if (yetToCome < leastChanceAwaited) return [];
    return [noteScore(note, this.labels(note), believed, ages(this.books.logPace), this.random)];
  }

  private counts(outlook: CupOutlook, note: { ageDays: number; entryId: string | undefined; kind?: string }) {
    // Takes of the day itself were known to the beliefs, but for feeding that is presumed only afterwards.
    const takes = this.given.later.takes.filter(
      (t) => t.ageDays > outlook.fromAge || (t.ageDays === outlook.fromAge && t.presumed),
    );
    return foretoldNotes(outlook, takes, { ...note, isWord: note.kind === 'word' }, ordinaryPrior, this.random);
  }

  private labels({ ageDays }: LaterNote) {
    const { culture, label, strain, startedOn } = this.given.culture;
    return { madeOn: this.given.madeOn, seenOn: addDays(startedOn, ageDays), strain, culture, label };
  }
}
