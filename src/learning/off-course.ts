/** A cup that strays: what was seen, how unlikely it was, why it may be, and what it does to the supply. */
import { bandOf } from '../foundation/index.ts';
import { likelyCauses, type PaceSign } from './causes.ts';
import type { CupPrior } from './cell-draw.ts';
import type { TableContext } from './cup-table.ts';
import type { CupEvidence, OffCourse } from './evidence.ts';
import type { KeeperSetting } from './keeper-settings.ts';
import { quickCdf } from './normal-quick.ts';
import { meanAndSd } from './summary.ts';
import { type Surprise, surprises } from './surprise.ts';
import { emergedBetween, runningTotal } from './warped-emergence.ts';

/** Notes rarer than this are pointed at. */
const pointedAtBelow = 0.025;
const supplyDays = 14;

/** Draws of log pace and log yield. */
export interface PaceAndYield {
  logPace: Float64Array;
  logYield: Float64Array;
}

/**
 * Null while every note is as likely as 2.5 % or more (allowing for their number).
 * @param believed draws of this cup; `ordinary` draws of a cup like it of which nothing was seen.
 */
export function offCourse(
  cup: CupEvidence,
  context: TableContext,
  setting: KeeperSetting,
  expected: CupPrior,
  draws: Compared,
): OffCourse | null {
  const surprise = mostSurprising(surprises(cup, context, setting, expected), wholeCup(expected, draws.believed));
  if (surprise === null || surprise.chance >= pointedAtBelow) return null;
  const pace = paceSign(cup, draws);
  return {
    ...surprise,
    causes: likelyCauses(cup, surprise.direction, pace),
    ...supplyEffect(cup, draws),
    daysLate: daysLate(cup, draws),
    asIfWarmerByC: pace.asIfWarmerByC,
  };
}

/** Notes that move a belief by less than this share of its sd say too little together. */
const leastMove = 0.4;

type SideChances = Record<OffCourse['direction'], number>;

/**
 * The note that strays most. A single note's chance allows for the number of notes (their square root, as
 * they hang together); where all notes of a side together say more, the chance is theirs.
 */
function mostSurprising(notes: readonly Surprise[], together: SideChances): Surprise | null {
  const worst = (side: readonly Surprise[]) =>
    side.reduce<Surprise | null>((a, b) => (a === null || b.chance < a.chance ? b : a), null);
  const sides = (['late', 'early', 'few', 'many'] as const).flatMap((direction) => {
    const note = worst(notes.filter((n) => n.direction === direction));
    if (note === null) return [];
    const chance = Math.min(1, note.chance * Math.sqrt(notes.length), 4 * together[direction]);
    return [{ ...note, chance }];
  });
  return worst(sides);
}

/**
 * Chances that an ordinary cup's notes would move what is believed of its pace or yield as far: beliefs move
 * by a normal amount whose variance is what the notes took off the expected one.
 */
function wholeCup(expected: CupPrior, believed: PaceAndYield): SideChances {
  const side = (draws: Float64Array, mean: number, sd: number) => {
    const now = meanAndSd(draws);
    const moved = Math.sqrt(Math.max(0, sd * sd - now.sd * now.sd));
    return moved < leastMove * sd ? 0.5 : quickCdf((now.mean - mean) / moved);
  };
  const pace = side(believed.logPace, expected.paceMean, expected.paceSd);
  const yields = side(believed.logYield, expected.yieldMean, expected.yieldSd);
  return { late: pace, early: 1 - pace, few: yields, many: 1 - yields };
}

interface Compared {
  believed: PaceAndYield;
  ordinary: PaceAndYield;
}

/** Flies of the coming fortnight against an ordinary cup's, scenario by scenario. */
function supplyEffect(cup: CupEvidence, { believed, ordinary }: Compared) {
  const total = runningTotal(cup.emergedByAge);
  const flies = ({ logPace, logYield }: PaceAndYield, s: number) =>
    Math.exp(logYield[s] as number) *
    emergedBetween(total, cup.ageDays, cup.ageDays + supplyDays, logPace[s] as number);
  const change = believed.logPace.map((_, s) => flies(believed, s) - flies(ordinary, s));
  const { p05, p50, p95 } = bandOf(change);
  const suppliedFlies = { p05: Math.round(p05), p50: Math.round(p50), p95: Math.round(p95) };
  return { suppliedFliesIn14Days: Math.round(meanAndSd(change).mean), suppliedFlies };
}

/** Days between its first flies and an ordinary cup's, to a tenth. */
function daysLate(cup: CupEvidence, { believed, ordinary }: Compared): OffCourse['daysLate'] {
  const firstFlies = (logPace: number) => cup.firstSeenAge.adults * Math.exp(-logPace);
  const { p05, p50, p95 } = bandOf(
    believed.logPace.map((pace, s) => firstFlies(pace) - firstFlies(ordinary.logPace[s] as number)),
  );
  const tenth = (days: number) => Math.round(10 * days) / 10;
  return { p05: tenth(p05), p50: tenth(p50), p95: tenth(p95) };
}

/** What the pace says of warmth: its difference from an ordinary cup's over the change a degree makes. */
function paceSign(cup: CupEvidence, { believed, ordinary }: Compared): PaceSign {
  const change = believed.logPace.map((pace, s) => pace - (ordinary.logPace[s] as number));
  const perC = cup.signs?.logPacePerC ?? null;
  return {
    asIfWarmerByC: perC === null || perC <= 0 ? null : Math.round((10 * meanAndSd(change).mean) / perC) / 10,
    chanceSlower: change.filter((d) => d < 0).length / change.length,
  };
}
