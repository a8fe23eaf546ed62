/**
 * Why a cup may be off course, likeliest first. The order is common practice (no source); what was
 * noted of the cup moves a cause up, what was looked at and found in order moves it down.
 */
import { type Said, said } from '../foundation/index.ts';
import type { CupEvidence, CupSigns, OffCourse } from './evidence.ts';

/** What the cup's pace says of its warmth. */
export interface PaceSign {
  /** Warmth that would explain its pace, C; null when unknown. */
  asIfWarmerByC: number | null;
  /** Chance that it is slower than an ordinary cup of its household. */
  chanceSlower: number;
}

interface Candidate {
  cause: Said;
  check: Said;
  /** How often it is the reason, against the others of the list, before anything is noted. */
  weight: number;
  /** True: noted. False: looked at and in order. Null: nobody looked. */
  sign: (cup: CupEvidence, signs: CupSigns, pace: PaceSign) => boolean | null;
}

const notedTimes = 10;
const inOrderTimes = 0.3;

/** Readings a degree off are a sign. */
const noticedC = 1;
/** No room is off by more without being noticed. */
const incredibleC = 6;
/** Readings on this share of a cup's days speak for all of them. */
const measuredEnough = 0.6;

/**
 * Whether warmth (`side` 1) or cold (-1) is the reason. Readings off by a degree speak for it, most days
 * measured and in order speak against it; so does a pace that points to the other side, or to so much
 * warmth or cold that the keeper would feel it.
 */
function warmthSign(signs: CupSigns, pace: PaceSign, side: 1 | -1): boolean | null {
  const chance = side < 0 ? pace.chanceSlower : 1 - pace.chanceSlower;
  if (signs.warmerByC !== null && side * signs.warmerByC >= noticedC && chance >= 0.5) return true;
  if (chance < 0.5 || side * (pace.asIfWarmerByC ?? 0) > incredibleC) return false;
  return signs.warmerByC !== null && signs.measuredShare >= measuredEnough ? false : null;
}

const tooCool: Candidate = {
  cause: said`too cool`,
  check: said`Measure the temperature beside the cup, at night too.`,
  weight: 5,
  sign: (_, s, pace) => warmthSign(s, pace, -1),
};
const tooWarm: Candidate = {
  cause: said`warmer than the log says`,
  check: said`Measure the temperature beside the cup; above ${{ degreesC: 28, whole: true }} flies become sterile.`,
  weight: 5,
  sign: (_, s, pace) => warmthSign(s, pace, 1),
};
const tooDry: Candidate = {
  cause: said`too dry`,
  check: said`Touch the medium: if it has shrunk from the wall, drip a little water on it.`,
  weight: 4,
  sign: (_, s) => (s.moisture === null ? null : s.moisture === 'dry'),
};
const tooWet: Candidate = {
  cause: said`too wet`,
  check: said`Look for standing water and drowned flies; add climbing material or blot it.`,
  weight: 2,
  sign: (_, s) => (s.moisture === null ? null : s.moisture === 'wet'),
};
const fewFounders: Candidate = {
  cause: said`too few founders`,
  check: said`Compare the founders with what the container takes; start the next cup with more.`,
  weight: 3,
  sign: (cup, s) => (cup.founders && s.usualFounders ? cup.founders < 0.6 * s.usualFounders : null),
};
const oldFounders: Candidate = {
  cause: said`old founders`,
  check: said`Take founders that emerged within the last ten days.`,
  weight: 2,
  sign: (_, s) => (s.founderAgeDays === null ? null : s.founderAgeDays > 14),
};
const mould: Candidate = {
  cause: said`mould`,
  check: said`Look for green, grey or black patches; take a mouldy cup away from the others, closed.`,
  weight: 2,
  sign: (_, s) => s.mould || null,
};
const mites: Candidate = {
  cause: said`mites`,
  check: said`Look at the lid and the rim with a lens for pale moving specks; take the cup away from the others.`,
  weight: 2,
  sign: (_, s) => s.mites || null,
};
const overcrowded: Candidate = {
  cause: said`overcrowded`,
  check: said`Many small flies and soupy medium: start the next cup with fewer founders.`,
  weight: 2,
  sign: (cup, s) => (cup.founders && s.usualFounders ? cup.founders > 1.7 * s.usualFounders : null),
};
const unwrittenTakes: Candidate = {
  cause: said`flies taken that nobody wrote down`,
  check: said`Add the harvests that are missing in the log.`,
  weight: 3,
  sign: () => null,
};
const presumedNotDone: Candidate = {
  cause: said`planned feedings that were not done`,
  check: said`Strike the feedings that did not happen.`,
  weight: 5,
  sign: (cup) => (cup.takes.some((t) => t.presumed) ? true : null),
};
const manyFounders: Candidate = {
  cause: said`founders counted with the new flies`,
  check: said`Look whether the flies are old and dark or fresh and pale.`,
  weight: 2,
  sign: () => null,
};

const candidates: Record<OffCourse['direction'], Candidate[]> = {
  late: [tooCool, tooDry, fewFounders, oldFounders, mould, mites, overcrowded, tooWet],
  early: [tooWarm, manyFounders],
  few: [tooDry, fewFounders, unwrittenTakes, oldFounders, mould, mites, overcrowded, tooWet, tooCool],
  many: [presumedNotDone, manyFounders],
};

const nothingNoted: CupSigns = {
  moisture: null,
  mould: false,
  mites: false,
  founderAgeDays: null,
  usualFounders: null,
  warmerByC: null,
  measuredShare: 0,
  logPacePerC: null,
};

/** Nothing is known of its pace. */
const anyPace: PaceSign = { asIfWarmerByC: null, chanceSlower: 0.5 };

/** Causes of a cup that strays in this direction, likeliest first; `noted` = the log speaks for it. */
export function likelyCauses(
  cup: CupEvidence,
  direction: OffCourse['direction'],
  pace: PaceSign = anyPace,
): OffCourse['causes'] {
  const signs = cup.signs ?? nothingNoted;
  return candidates[direction]
    .map((c) => ({ c, sign: c.sign(cup, signs, pace) }))
    .map(({ c, sign }) => ({ c, sign, score: c.weight * (sign === null ? 1 : sign ? notedTimes : inOrderTimes) }))
    .sort((a, b) => b.score - a.score)
    .map(({ c, sign }) => ({ cause: c.cause, check: c.check, noted: sign === true }));
}
