/** Small pieces of evidence for tests of learning. */
import type { CupEvidence, CupLook, StrainEvidence } from '../../src/learning/index.ts';
import { firstSeenAge, nominalCurve, spentAge } from './learning-world.ts';

/** A living cup of 20 days, of which nothing was noted. */
export function bareCup(more: Partial<CupEvidence> = {}): CupEvidence {
  return {
    id: 'cup',
    ageDays: 20,
    session: 0,
    recipe: null,
    place: 'shelf',
    generation: null,
    emergedByAge: nominalCurve(),
    firstSeenAge,
    spentAge,
    looks: [],
    takes: [],
    ended: null,
    ...more,
  };
}

export function look(ageDays: number, more: Partial<CupLook>): CupLook {
  return { ageDays, present: [], absent: [], amount: null, count: null, ...more };
}

export function take(ageDays: number, more: Partial<CupEvidence['takes'][number]>): CupEvidence['takes'][number] {
  return { ageDays, flies: null, taps: null, emptied: false, presumed: false, ...more };
}

export function strainOf(cups: CupEvidence[], adultDailySurvival = 0.92): StrainEvidence {
  return { strain: 'melanogaster', adultDailySurvival, cups };
}
