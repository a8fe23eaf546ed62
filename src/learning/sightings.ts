/**
 * Stages seen and not seen, as evidence about pace. A stage first shows at its nominal age divided by
 * pace, give or take the eye; a look brackets that day between the last "not there" and the first
 * "there". What nobody looked for says nothing.
 */
import type { CupEvidence, CupLook } from './evidence.ts';
import { quickCdf } from './normal-quick.ts';
import { sightingSdDays } from './priors.ts';

export type Stage = keyof typeof sightingSdDays;

/** The first sight of a stage lies after `notYetAge` (-Infinity = unknown) and by `seenAge` (Infinity). */
export interface Sighting {
  stage: Stage;
  nominalAge: number;
  notYetAge: number;
  seenAge: number;
  /** The entries that the two ends rest on. */
  notYetEntry?: string | undefined;
  seenEntry?: string | undefined;
}

/** Adults seen before this share of their nominal age are taken for founders still alive. */
export const foundersUntilShare = 0.8;
/** "Not there" after this multiple of the nominal age means that the stage is over, not to come. */
const overAfter = 1.6;

/** The brackets that the looks of one cup give; none for a stage that nobody noted. */
export function sightingsOf(cup: CupEvidence): Sighting[] {
  const looks = cup.looks.filter((l) => l.ageDays >= 0 && l.ageDays <= cup.ageDays);
  return (['larvae', 'pupae', 'adults'] as const)
    .map((stage) => bracket(looks, cup.firstSeenAge[stage], stage))
    .filter((s) => s.seenAge !== Infinity || s.notYetAge !== -Infinity);
}

function bracket(looks: readonly CupLook[], nominalAge: number, stage: Stage): Sighting {
  const earliest = stage === 'adults' ? foundersUntilShare * nominalAge : 0;
  const clear = looks.filter((l) => !(l.present.includes(stage) && l.absent.includes(stage)));
  const seen = clear.filter((l) => l.present.includes(stage) && l.ageDays >= earliest).map((l) => l.ageDays);
  const seenAge = Math.min(Infinity, ...seen);
  const notYet = clear
    .filter((l) => l.absent.includes(stage) && l.ageDays < seenAge && l.ageDays <= overAfter * nominalAge)
    .map((l) => l.ageDays);
  const notYetAge = Math.max(-Infinity, ...notYet);
  const entryOf = (age: number, list: 'present' | 'absent') =>
    clear.find((l) => l.ageDays === age && l[list].includes(stage))?.entryId;
  return {
    stage,
    nominalAge,
    notYetAge,
    seenAge,
    notYetEntry: entryOf(notYetAge, 'absent'),
    seenEntry: entryOf(seenAge, 'present'),
  };
}

/** Chance of one bracket at this log pace, were no note wrong. */
export function sightingChance(sighting: Sighting, logPace: number): number {
  const mean = sighting.nominalAge * Math.exp(-logPace);
  const sd = sightingSdDays[sighting.stage];
  return quickCdf((sighting.seenAge - mean) / sd) - quickCdf((sighting.notYetAge - mean) / sd);
}

/** Log likelihood of all brackets at this log pace; a share of notes is held to be wrong. */
export function sightingLogLikelihood(sightings: readonly Sighting[], logPace: number, wrongShare: number): number {
  let sum = 0;
  for (const s of sightings)
    sum += Math.log((1 - wrongShare) * sightingChance(s, logPace) + wrongMass * wrongShare + 1e-12);
  return sum;
}

/** What a wrong note of a stage gives any bracket: two yes-or-no answers at random. */
const wrongMass = 0.25;

/** Chance that a bracket rests on a wrong note, at this log pace. */
export function sightingWrongChance(sighting: Sighting, logPace: number, wrongShare: number): number {
  const wrong = wrongMass * wrongShare;
  return wrong / (wrong + (1 - wrongShare) * sightingChance(sighting, logPace));
}
