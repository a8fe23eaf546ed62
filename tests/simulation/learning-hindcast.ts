/**
 * Forecasts of a past week made again in households whose truth is known: the log is cut off a week before
 * its end, learned from, and the last week's notes are held against what that foretold, as the page does it.
 */
import { CupForetold } from '../../src/app/hindcast/cup-foretold.ts';
import type { ScoredNote } from '../../src/app/hindcast/note-scoring.ts';
import { addDays, day } from '../../src/foundation/index.ts';
import { type CupEvidence, learn, ordinaryPrior } from '../../src/learning/index.ts';
import { simulateWorld, survival, type WorldOptions } from './learning-world.ts';

const leadDays = 7;
const draws = 250;
const today = day('2026-11-25');

/** Notes of the last week of one household at their places in their forecasts. */
export function hindcastOfWorld(options: WorldOptions, seed: number): ScoredNote[] {
  const { evidence } = simulateWorld(options, seed);
  const madeOn = addDays(today, -leadDays);
  const then = evidence.cups.flatMap((cup) => {
    const earlier = asOf(cup, agesToday(cup, options) - leadDays);
    return earlier === null ? [] : [{ later: cup, earlier }];
  });
  const known = { ...evidence, cups: then.map(({ earlier }) => earlier) };
  const beliefs = learn({ seed, draws, prior: ordinaryPrior, strains: [known] });
  const household = beliefs.byStrain.get(evidence.strain);
  return then.flatMap(({ earlier, later }) => {
    const belief = beliefs.cups.get(earlier.id);
    if (!belief || !household) return [];
    const startedOn = addDays(madeOn, -earlier.ageDays);
    const culture = { culture: earlier.id, label: earlier.id, strain: evidence.strain, startedOn };
    return new CupForetold({ culture, earlier, later, belief, household, survival, madeOn, seed }).notes(leadDays);
  });
}

/** Age that a cup has, or would have had, on the log's last day. */
function agesToday(cup: CupEvidence, options: WorldOptions): number {
  const sessions = Math.ceil(options.cups / options.cupsPerSession);
  return 10 + options.sessionEvery * (sessions - 1 - cup.session);
}

/** The cup as its log stood at an age; null before it was started. */
function asOf(cup: CupEvidence, ageDays: number): CupEvidence | null {
  if (ageDays < 0) return null;
  if (cup.ended && cup.ended.ageDays <= ageDays) return cup;
  const by = ({ ageDays: age }: { ageDays: number }) => age <= ageDays;
  return { ...cup, ageDays, looks: cup.looks.filter(by), takes: cup.takes.filter(by), ended: null };
}
